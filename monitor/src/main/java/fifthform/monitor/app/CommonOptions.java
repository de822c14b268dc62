package fifthform.monitor.app;

import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.SettingsFile;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.CommandText;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

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

    Folders folders() {
        Folders folders = ofTheComputer();
        // Who names another data folder means all that lies in it.
        if (data != null) return folders.withData(data);
        return new SettingsFile(folders.settingsFile())
                .sessions()
                .map(folders::withSessions)
                .orElse(folders);
    }

    /** The unit asked for; empty where the settings decide. */
    Optional<Units> units() throws Refusal {
        if (units == null) return Optional.empty();
        return switch (units) {
            case "c", "C", "celsius" -> Optional.of(Units.CELSIUS);
            case "f", "F", "fahrenheit" -> Optional.of(Units.FAHRENHEIT);
            default -> throw new Refusal(Exit.NOT_UNDERSTOOD, CommandText.UNITS_WAS_NOTHING_WAS_DONE_SAY.say(units));
        };
    }
}
