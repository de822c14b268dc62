package fifthform.monitor.settings;

import fifthform.curves.check.Problem;
import fifthform.curves.setup.Bowl;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.settings.Settings.Theme;
import fifthform.monitor.texts.DidYouMean;
import fifthform.monitor.texts.FileText;
import fifthform.monitor.texts.Language;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** The settings on disk. Reading never fails: what cannot be used is said and replaced by what is usual. */
public final class SettingsFile {
    /** What the names of keys and screens begin with. */
    private static final String KEY = "key-";

    private static final String SCREEN = "screen-px-per-mm-";

    /** A lock on a file holds other programs off, not other threads of this one. */
    private static final Object IN_THIS_PROGRAM = new Object();

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

    /** The folder of new sessions, where one was chosen. Looks only: what is wrong with the file is said by {@link #load}. */
    public Optional<Path> sessions() {
        try {
            return JsonObject.parse(Files.readString(file))
                    .optionalText("sessions")
                    .map(Path::of)
                    .filter(Path::isAbsolute);
        } catch (IOException | UnreadableJson | InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** The language, where one was chosen that there are texts in. Looks only, as {@link #sessions} does. */
    public Optional<String> language() {
        try {
            String text = Files.readString(file);
            // Every start asks, and most files say nothing of it: they are not taken apart for that.
            return text.contains("\"language\"")
                    ? JsonObject.parse(text).optionalText("language").filter(Language::isKnown)
                    : Optional.empty();
        } catch (IOException | UnreadableJson e) {
            return Optional.empty();
        }
    }

    /**
     * Changes the settings as they are in the file now, so that what another window or command has changed meanwhile is
     * not lost. A new file is written and moved into place: a crash leaves the old settings or the new, never half.
     *
     * @return the settings as they are kept
     * @throws IOException it cannot be written; the old settings stand
     */
    public Settings change(UnaryOperator<Settings> change) throws IOException {
        synchronized (IN_THIS_PROGRAM) {
            Files.createDirectories(file.toAbsolutePath().getParent());
            Path guard = file.resolveSibling(file.getFileName() + ".lock");
            try (FileChannel channel = FileChannel.open(guard, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                    FileLock held = channel.lock()) {
                Objects.requireNonNull(held, "held");
                Settings changed = change.apply(load().settings());
                KeptFiles.replace(file, text(changed));
                return changed;
            }
        }
    }

    private static String text(Settings settings) {
        JsonLine line = new JsonLine()
                .whole("format", 1)
                .text("theme", settings.theme().word())
                .text("motion", settings.motion().word())
                .text("units", settings.units().word())
                .text("volume", settings.volume().word());
        settings.hearing()
                .ifPresent(hearing -> line.text("hearing-at", hearing.at().toString())
                        .raw("hearing-heard", Boolean.toString(hearing.heard()))
                        .text("hearing-volume", hearing.volume().word()));
        settings.keys().forEach((act, key) -> line.text(KEY + act, key));
        settings.sizes().scales().forEach((screen, scale) -> line.number(SCREEN + screen, scale.pixelsPerMillimetre()));
        line.number("distance-m", settings.sizes().metres());
        settings.sessions().ifPresent(folder -> line.text("sessions", folder));
        settings.language().ifPresent(code -> line.text("language", code));
        settings.lastProbe().ifPresent(port -> line.text("last-probe", port));
        settings.lastChocolate().ifPresent(id -> line.text("last-chocolate", id));
        settings.last().bowl().ifPresent(bowl -> line.text("last-bowl", bowl));
        settings.last().grams().ifPresent(grams -> line.number("last-grams", grams));
        return line.end() + "\n";
    }

    private Settings settings(JsonObject json, List<Problem> problems) {
        Settings usual = Settings.USUAL;
        return new Settings(
                choice(json, "theme", Theme.values(), Theme::word, usual.theme(), problems),
                choice(json, "motion", Motion.values(), Motion::word, usual.motion(), problems),
                choice(json, "units", Units.values(), Units::word, usual.units(), problems),
                choice(json, "volume", Volume.values(), Volume::word, usual.volume(), problems),
                hearing(json, problems),
                keys(json, problems),
                sizes(json, problems),
                text(json, "sessions", problems),
                language(json, problems),
                new LastStart(
                        text(json, "last-probe", problems),
                        text(json, "last-chocolate", problems),
                        text(json, "last-bowl", problems),
                        number(json, "last-grams", Bowl.LEAST_GRAMS, Bowl.MOST_GRAMS, problems)));
    }

    private Optional<String> language(JsonObject json, List<Problem> problems) {
        Optional<String> said = text(json, "language", problems);
        Optional<String> known = said.filter(Language::isKnown);
        if (said.isPresent() && known.isEmpty())
            problems.add(new Problem(
                    file.toString(),
                    FileText.LANGUAGE_IS_WITHOUT_TEXTS.say(said.get()),
                    FileText.POSSIBLE.say("", String.join(", ", Language.all()))));
        return known;
    }

    private Optional<Hearing> hearing(JsonObject json, List<Problem> problems) {
        if (!json.keys().contains("hearing-at")) return Optional.empty();
        try {
            return Optional.of(new Hearing(
                    Instant.parse(json.text("hearing-at")),
                    json.flag("hearing-heard"),
                    choice(json, "hearing-volume", Volume.values(), Volume::word, Settings.USUAL.volume(), problems)));
        } catch (UnreadableJson | DateTimeParseException e) {
            problems.add(new Problem(
                    file.toString(),
                    FileText.WHETHER_THE_SOUND_WAS_HEARD.say(e.getMessage()),
                    FileText.TRY_THE_SOUND_AGAIN_MONITOR.say()));
            return Optional.empty();
        }
    }

    private Map<String, String> keys(JsonObject json, List<Problem> problems) {
        Map<String, String> keys = new TreeMap<>();
        for (String name : json.keys()) {
            if (!name.startsWith(KEY)) continue;
            text(json, name, problems).ifPresent(key -> keys.put(name.substring(KEY.length()), key));
        }
        return keys;
    }

    private ScreenSizes sizes(JsonObject json, List<Problem> problems) {
        Map<String, ScreenScale> scales = new TreeMap<>();
        for (String name : json.keys()) {
            if (!name.startsWith(SCREEN)) continue;
            number(json, name, ScreenScale.LEAST, ScreenScale.MOST, problems)
                    .ifPresent(scale -> scales.put(name.substring(SCREEN.length()), new ScreenScale(scale)));
        }
        OptionalDouble metres = number(json, "distance-m", ScreenSizes.LEAST_METRES, ScreenSizes.MOST_METRES, problems);
        return new ScreenSizes(scales, metres.orElse(ScreenSizes.USUAL_METRES));
    }

    private OptionalDouble number(JsonObject json, String key, double least, double most, List<Problem> problems) {
        String what;
        try {
            OptionalDouble number = json.optionalNumber(key);
            if (number.isEmpty() || number.getAsDouble() >= least && number.getAsDouble() <= most) return number;
            what = FileText.IS.say(key, number.getAsDouble());
        } catch (UnreadableJson e) {
            what = e.getMessage();
        }
        problems.add(new Problem(
                file.toString(),
                FileText.IT_IS_LEFT_ASIDE.say(what),
                FileText.WRITE_A_NUMBER_FROM_TO.say(least, most)));
        return OptionalDouble.empty();
    }

    private <T> T choice(
            JsonObject json, String key, T[] choices, Function<T, String> word, T usual, List<Problem> problems) {
        Optional<String> said = text(json, key, problems);
        Optional<T> choice = said.flatMap(text ->
                Stream.of(choices).filter(c -> word.apply(c).equals(text)).findFirst());
        if (said.isPresent() && choice.isEmpty()) {
            List<String> words = Stream.of(choices).map(word).toList();
            problems.add(new Problem(
                    file.toString(),
                    FileText.IS_IS_USED.say(key, said.get(), word.apply(usual)),
                    FileText.POSSIBLE.say(DidYouMean.oneOf(words, said.get()), String.join(", ", words))));
        }
        return choice.orElse(usual);
    }

    private Optional<String> text(JsonObject json, String key, List<Problem> problems) {
        try {
            return json.optionalText(key);
        } catch (UnreadableJson e) {
            problems.add(new Problem(
                    file.toString(), FileText.IT_IS_LEFT_ASIDE.say(e.getMessage()), FileText.WRITE_IT_IN_QUOTES.say()));
            return Optional.empty();
        }
    }

    private Problem setAside(Exception why) {
        String what = FileText.THE_SETTINGS_CANNOT_BE_READ_SO.say(why.getMessage());
        return KeptFiles.aside(file, what, FileText.OLD_FILE.say());
    }
}
