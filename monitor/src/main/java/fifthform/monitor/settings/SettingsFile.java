package fifthform.monitor.settings;

import fifthform.curves.check.Nearest;
import fifthform.curves.check.Problem;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.settings.Settings.Theme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** The settings on disk. Reading never fails: what cannot be used is said and replaced by what is usual. */
public final class SettingsFile {
    private final Path file;

    public SettingsFile(Path file) {
        this.file = file;
    }

    /** What was read, and what had to be left aside. */
    public record Loaded(Settings settings, List<Problem> problems) {
        public Loaded {
            problems = List.copyOf(problems);
        }
    }

    /** Reads the settings; a missing file is no problem, an unreadable one is kept under another name. */
    public Loaded load() {
        List<Problem> problems = new ArrayList<>();
        try {
            return new Loaded(settings(JsonObject.parse(Files.readString(file)), problems), problems);
        } catch (NoSuchFileException e) {
            return new Loaded(Settings.USUAL, List.of());
        } catch (IOException | UnreadableJson e) {
            return new Loaded(Settings.USUAL, List.of(setAside(e)));
        }
    }

    /**
     * Writes a new file and moves it into place, so that a crash leaves the old settings or the new, never half.
     *
     * @throws IOException it cannot be written; the old settings stand
     */
    public void save(Settings settings) throws IOException {
        KeptFiles.replace(file, text(settings));
    }

    private static String text(Settings settings) {
        JsonLine line = new JsonLine()
                .whole("format", 1)
                .text("theme", settings.theme().word())
                .text("units", settings.units().word());
        settings.lastProbe().ifPresent(port -> line.text("last-probe", port));
        settings.lastChocolate().ifPresent(id -> line.text("last-chocolate", id));
        return line.end() + "\n";
    }

    private Settings settings(JsonObject json, List<Problem> problems) {
        return new Settings(
                choice(json, "theme", Theme.values(), Theme::word, Settings.USUAL.theme(), problems),
                choice(json, "units", Units.values(), Units::word, Settings.USUAL.units(), problems),
                text(json, "last-probe", problems),
                text(json, "last-chocolate", problems));
    }

    private <T> T choice(
            JsonObject json, String key, T[] choices, Function<T, String> word, T usual, List<Problem> problems) {
        Optional<String> said = text(json, key, problems);
        Optional<T> choice = said.flatMap(text ->
                Stream.of(choices).filter(c -> word.apply(c).equals(text)).findFirst());
        if (said.isPresent() && choice.isEmpty()) {
            List<String> words = Stream.of(choices).map(word).toList();
            String meant = Nearest.to(said.get(), words)
                    .map(near -> "Did you mean \"" + near + "\"? ")
                    .orElse("");
            problems.add(new Problem(
                    file.toString(),
                    "\"" + key + "\" is \"" + said.get() + "\"; \"" + word.apply(usual) + "\" is used.",
                    meant + "Possible: " + String.join(", ", words) + "."));
        }
        return choice.orElse(usual);
    }

    private Optional<String> text(JsonObject json, String key, List<Problem> problems) {
        try {
            return json.optionalText(key);
        } catch (UnreadableJson e) {
            problems.add(new Problem(file.toString(), e.getMessage() + "; it is left aside.", "Write it in quotes."));
            return Optional.empty();
        }
    }

    private Problem setAside(Exception why) {
        String what = "The settings cannot be read (" + why.getMessage() + "), so the usual ones are used.";
        return KeptFiles.aside(file, what, "old file");
    }
}
