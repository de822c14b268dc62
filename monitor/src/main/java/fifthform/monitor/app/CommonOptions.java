package fifthform.monitor.app;

import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.settings.SettingsFile;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.CommandText;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** What every command understands. */
final class CommonOptions {
    @Option(names = "--data", paramLabel = "DIR", scope = ScopeType.INHERIT)
    private Path data;

    @Option(names = "--units", paramLabel = "c|f", scope = ScopeType.INHERIT)
    private String units;

    @Option(names = "--trace", scope = ScopeType.INHERIT)
    private boolean trace;

    /** Where everything lies that no option puts elsewhere. */
    static Folders ofTheComputer() {
        return Folders.of(System.getProperty("os.name"), System.getenv(), Path.of(System.getProperty("user.home")));
    }

    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    /** Where the answer of the command goes. */
    PrintWriter out() {
        return command.commandLine().getOut();
    }

    /** Where it says what is no part of the answer: remarks, questions, what cannot be read. */
    PrintWriter err() {
        return command.commandLine().getErr();
    }

    Folders folders() {
        Folders folders = ofTheComputer();
        // Who names another data folder means all that lies in it.
        if (data != null) return folders.withData(data);
        return new SettingsFile(folders.settingsFile())
                .sessions()
                .map(folders::withSessions)
                .orElse(folders);
    }

    /** The maker's choices; what of them cannot be used is said. */
    Settings settings() {
        SettingsFile.Loaded loaded = new SettingsFile(folders().settingsFile()).load();
        loaded.problems().forEach(err()::println);
        return loaded.settings();
    }

    /** The unit asked for, otherwise that of these choices. */
    Units units(Settings choices) throws Refusal {
        return asked().orElse(choices.units());
    }

    /** The unit asked for, otherwise the kept one; for commands that need no other choice, and say nothing of the rest. */
    Units units() throws Refusal {
        Optional<Units> asked = asked();
        return asked.orElseGet(() ->
                new SettingsFile(folders().settingsFile()).load().settings().units());
    }

    private Optional<Units> asked() throws Refusal {
        if (units == null) return Optional.empty();
        return switch (units) {
            case "c", "C", "celsius" -> Optional.of(Units.CELSIUS);
            case "f", "F", "fahrenheit" -> Optional.of(Units.FAHRENHEIT);
            default -> throw new Refusal(Exit.NOT_UNDERSTOOD, CommandText.UNITS_WAS_NOTHING_WAS_DONE_SAY.say(units));
        };
    }
}
