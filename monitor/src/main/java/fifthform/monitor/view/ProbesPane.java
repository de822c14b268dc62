package fifthform.monitor.view;

import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.adapters.KeptAdapter;
import fifthform.monitor.adapters.KeptCheck;
import fifthform.monitor.model.CheckAge;
import fifthform.monitor.setup.SettingTable;
import fifthform.monitor.setup.SetupDesk;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.SetupText;
import fifthform.probe.find.KnownProbe;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** The probes that are known, when and how they were checked, and which one the next batch begins with. */
final class ProbesPane extends SetupPane {
    private final Adapters adapters;
    private final ListView<KeptAdapter> list = new ListView<>();
    private final Label checks = DeskParts.words("");
    private final Label none = DeskParts.words(SetupText.PROBES_NONE.say());
    private final TextField command = new TextField();
    private final VBox one;
    private final SettingRow port;

    ProbesPane(SetupDesk desk, Runnable changed) {
        super(desk, changed);
        adapters = new Adapters(desk.folders().probes());
        list.setId("probes");
        list.setAccessibleText(SetupText.PROBES_TITLE.say());
        list.setCellFactory(made -> new ListCell<>() {
            @Override
            protected void updateItem(KeptAdapter adapter, boolean empty) {
                super.updateItem(adapter, empty);
                setText(empty || adapter == null ? "" : String.join(" · ", lines(adapter)));
            }
        });
        list.getSelectionModel().selectedItemProperty().addListener((property, was, is) -> one());
        command.setId("check-command");
        command.setEditable(false);
        command.setPrefColumnCount(40);
        command.setAccessibleText(SetupText.PROBE_CHECK.say());
        one = new VBox(
                checks,
                new Label(SetupText.PROBE_CHECK.say()),
                DeskParts.bar(command),
                DeskParts.bar(sure("probe-forget", SetupText.PROBE_FORGET, SetupText.SURE, button -> forget())));
        one.setSpacing(6);
        port = new SettingRow(desk, SettingTable.PROBE, changed);
        getChildren().addAll(heading(SetupText.PROBES_TITLE), none, list, one, port);
        show();
    }

    /** A line for each of its channels. */
    private List<String> lines(KeptAdapter adapter) {
        List<String> lines = new ArrayList<>();
        for (KnownProbe probe : adapter.known().probes()) {
            Instant now = desk().clock().instant();
            String check = probe.correction()
                    .checkedAt()
                    .map(at -> SetupText.PROBE_CHECKED.say(
                            CheckAge.ago(
                                    Duration.between(at, now).isNegative() ? Duration.ZERO : Duration.between(at, now)),
                            sigma(probe)))
                    .orElseGet(SetupText.PROBE_NOT_CHECKED::say);
            lines.add(SetupText.PROBE_LINE.say(adapter.known().place(), InWords.of(probe.role()), check));
        }
        return lines.isEmpty() ? List.of(adapter.known().place()) : lines;
    }

    /** Twice the standard deviation, as Watch says it beside the reading. */
    private String sigma(KnownProbe probe) {
        return desk().settings().units().difference(2 * probe.correction().sigmaKelvin());
    }

    private Optional<KeptAdapter> chosen() {
        return Optional.ofNullable(list.getSelectionModel().getSelectedItem());
    }

    @Override
    void show() {
        int place = Math.max(0, list.getSelectionModel().getSelectedIndex());
        List<KeptAdapter> known = adapters.load().adapters();
        if (!known.equals(list.getItems())) {
            list.getItems().setAll(known);
            if (!known.isEmpty()) list.getSelectionModel().select(Math.min(place, known.size() - 1));
        }
        list.refresh();
        port.show();
        shown(none, known.isEmpty());
        shown(list, !known.isEmpty());
        shown(one, !known.isEmpty());
        one();
    }

    private void one() {
        chosen().ifPresent(adapter -> {
            command.setText("monitor/run check-probe --probe " + adapter.known().place());
            List<String> said = new ArrayList<>();
            for (KeptCheck check : adapter.checks()) {
                String day =
                        check.at().atZone(ZoneId.systemDefault()).toLocalDate().toString();
                said.add(SetupText.PROBE_CHECK_LINE.say(day, words(check)));
            }
            checks.setText(String.join("\n", said.isEmpty() ? List.of(SetupText.PROBE_NOT_CHECKED.say()) : said));
        });
    }

    /** Why one failed is kept as it was told; the two other words are those of files. */
    private static String words(KeptCheck check) {
        return switch (check.words()) {
            case "passed" -> SetupText.PROBE_CHECK_PASSED.say();
            case "plausible" -> SetupText.PROBE_CHECK_PLAUSIBLE.say();
            default -> check.words();
        };
    }

    private void forget() {
        chosen().ifPresent(adapter -> {
            try {
                say(SetupText.PROBE_FORGOTTEN.say(
                        adapter.known().place(), adapters.forget(adapter).getFileName()));
            } catch (IOException e) {
                say(SetupText.SAID_NOT_DONE.say(e.getMessage()));
            }
        });
    }
}
