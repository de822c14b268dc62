package fifthform.monitor.view;

import fifthform.monitor.setup.SettingTable;
import fifthform.monitor.setup.SetupDesk;
import fifthform.monitor.texts.SetupText;
import java.util.List;
import javafx.scene.control.Label;

/** Where files are, what the next batch begins with, and that nothing goes over the network. */
final class FoldersPane extends SetupPane {
    private final List<SettingRow> rows;
    private final Label sessions = DeskParts.words("");

    FoldersPane(SetupDesk desk, Runnable changed) {
        super(desk, changed);
        rows = List.of(
                new SettingRow(desk, SettingTable.SESSIONS, changed),
                new SettingRow(desk, SettingTable.PROBE, changed));
        getChildren()
                .addAll(
                        heading(SetupText.FOLDERS_TITLE),
                        sessions,
                        DeskParts.words(SetupText.FOLDER_DATA.say(desk.folders().data())),
                        DeskParts.words(
                                SetupText.FOLDER_SETTINGS.say(desk.folders().settingsFile())),
                        rows.get(0),
                        DeskParts.words(SetupText.FOLDER_SESSIONS_WORDS.say()),
                        rows.get(1),
                        heading(SetupText.NETWORK_TITLE),
                        DeskParts.words(SetupText.NETWORK.say()));
        show();
    }

    @Override
    void show() {
        rows.forEach(SettingRow::show);
        sessions.setText(SetupText.FOLDER_SESSIONS.say(desk().settings()
                .sessions()
                .orElseGet(() -> desk().folders().data().resolve("sessions").toString())));
    }
}
