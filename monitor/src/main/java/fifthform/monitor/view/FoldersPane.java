package fifthform.monitor.view;

import fifthform.monitor.setup.SettingTable;
import fifthform.monitor.setup.SetupDesk;
import fifthform.monitor.texts.SetupText;
import javafx.scene.control.Label;

/** Where files are, and that nothing goes over the network. */
final class FoldersPane extends SetupPane {
    private final SettingRow row;
    private final Label sessions = DeskParts.words("");

    FoldersPane(SetupDesk desk, Runnable changed) {
        super(desk, changed);
        row = new SettingRow(desk, SettingTable.SESSIONS, changed);
        getChildren()
                .addAll(
                        heading(SetupText.FOLDERS_TITLE),
                        sessions,
                        DeskParts.words(SetupText.FOLDER_DATA.say(desk.folders().data())),
                        DeskParts.words(
                                SetupText.FOLDER_SETTINGS.say(desk.folders().settingsFile())),
                        row,
                        DeskParts.words(SetupText.FOLDER_SESSIONS_WORDS.say()),
                        heading(SetupText.NETWORK_TITLE),
                        DeskParts.words(SetupText.NETWORK.say()));
        show();
    }

    @Override
    void show() {
        row.show();
        sessions.setText(SetupText.FOLDER_SESSIONS.say(desk().settings()
                .sessions()
                .orElseGet(() -> desk().folders().data().resolve("sessions").toString())));
    }
}
