package fifthform.monitor.setup;

import fifthform.curves.check.Parsed;
import fifthform.monitor.model.Key;
import fifthform.monitor.model.KeyMap;
import fifthform.monitor.settings.Hearing;
import fifthform.monitor.settings.Motion;
import fifthform.monitor.settings.ScreenScale;
import fifthform.monitor.settings.ScreenSizes;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.settings.Settings.Theme;
import fifthform.monitor.settings.Stroke;
import fifthform.monitor.settings.Units;
import fifthform.monitor.settings.Volume;
import fifthform.monitor.texts.DidYouMean;
import fifthform.monitor.texts.FileText;
import fifthform.monitor.texts.Language;
import fifthform.monitor.texts.SetupText;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;

/** Everything that can be set, each with its words. */
public final class SettingTable {
    /** The value of what is not set. */
    public static final String NONE = "none";

    /** The language that the computer has. */
    private static final String COMPUTER = "computer";

    public static final String THEME = "theme";
    public static final String MOTION = "motion";
    public static final String UNITS = "units";
    public static final String VOLUME = "volume";
    public static final String HEARD = "heard";
    public static final String DISTANCE = "distance";
    public static final String SESSIONS = "sessions";
    public static final String LANGUAGE = "language";
    public static final String CHOCOLATE = "chocolate";
    public static final String PROBE = "probe";

    /** What the names of screens and of keys begin with; behind it a size, or the name of an act. */
    public static final String SCREEN = "screen-";

    public static final String KEY = "key-";

    private static final String SIZE = "[1-9][0-9]{1,4}x[1-9][0-9]{1,4}";

    private final InstantSource clock;

    /** @param clock dates the answer of the hearing test */
    public SettingTable(InstantSource clock) {
        this.clock = clock;
    }

    /** All of them, with those screens that were measured. */
    public List<Setting> all(Settings now) {
        List<Setting> all = new ArrayList<>();
        all.add(choice(THEME, SetupText.WHAT_THEME, Theme.values(), Theme::word, Settings::theme, Settings::withTheme));
        all.add(choice(
                MOTION, SetupText.WHAT_MOTION, Motion.values(), Motion::word, Settings::motion, Settings::withMotion));
        all.add(choice(UNITS, SetupText.WHAT_UNITS, Units.values(), Units::word, Settings::units, Settings::withUnits));
        all.add(choice(
                VOLUME, SetupText.WHAT_VOLUME, Volume.values(), Volume::word, Settings::volume, Settings::withVolume));
        all.add(heard());
        all.add(distance());
        now.sizes().scales().keySet().forEach(size -> all.add(screen(size)));
        for (Key key : Key.values()) all.add(key(key));
        all.add(sessions());
        all.add(language());
        all.add(remembered(
                CHOCOLATE,
                SetupText.WHAT_CHOCOLATE,
                Settings::lastChocolate,
                (kept, id) -> kept.withLastChocolate(id)));
        all.add(remembered(PROBE, SetupText.WHAT_PROBE, Settings::lastProbe, (kept, port) -> kept.withLastProbe(port)));
        return all;
    }

    /** The setting of this name, also of a screen that was not measured yet. */
    public Parsed<Setting> named(String name, Settings now) {
        Optional<Setting> known =
                all(now).stream().filter(each -> each.name().equals(name)).findFirst();
        if (known.isPresent()) return Parsed.accepted(known.get());
        if (name.matches(SCREEN + SIZE)) return Parsed.accepted(screen(name.substring(SCREEN.length())));
        List<String> names = all(now).stream().map(Setting::name).toList();
        return Parsed.refused(
                name,
                SetupText.NOTHING_OF_THIS_NAME_CAN_BE.say(),
                FileText.POSSIBLE.say(DidYouMean.oneOf(names, name), String.join(", ", names)));
    }

    private static <T> Setting choice(
            String name,
            SetupText what,
            T[] values,
            Function<T, String> word,
            Function<Settings, T> reads,
            BiFunction<Settings, T, Settings> sets) {
        List<String> words = Stream.of(values).map(word).toList();
        return new Setting(name, what.say(), words, settings -> word.apply(reads.apply(settings)), (settings, said) -> {
            // "c" for celsius: whoever types may be brief where only one word begins so.
            List<T> meant = Stream.of(values)
                    .filter(value -> !said.isEmpty() && word.apply(value).startsWith(said))
                    .toList();
            return meant.size() == 1
                    ? Parsed.accepted(sets.apply(settings, meant.get(0)))
                    : Parsed.refused(
                            name,
                            SetupText.IS_NONE_OF_ITS_VALUES.say(said),
                            SetupText.SAY_ONE_OF.say(String.join(", ", words)));
        });
    }

    private Setting heard() {
        List<String> words = List.of("yes", "no", NONE);
        return new Setting(
                HEARD,
                SetupText.WHAT_HEARD.say(),
                words,
                settings -> settings.hearing()
                        .map(hearing -> hearing.heard() ? "yes" : "no")
                        .orElse(NONE),
                (settings, said) -> words.contains(said)
                        ? Parsed.accepted(settings.withHearing(
                                said.equals(NONE)
                                        ? Optional.empty()
                                        : Optional.of(
                                                new Hearing(clock.instant(), said.equals("yes"), settings.volume()))))
                        : Parsed.refused(HEARD, SetupText.IS_NO_ANSWER.say(said), SetupText.SAY_YES_NO_OR_NONE.say()));
    }

    private static Setting distance() {
        return new Setting(
                DISTANCE,
                SetupText.WHAT_DISTANCE.say(),
                List.of(),
                settings -> number(settings.sizes().metres()),
                (settings, said) -> {
                    OptionalDouble metres = between(said, ScreenSizes.LEAST_METRES, ScreenSizes.MOST_METRES);
                    return metres.isPresent()
                            ? Parsed.accepted(
                                    settings.withSizes(settings.sizes().withMetres(metres.getAsDouble())))
                            : Parsed.refused(
                                    DISTANCE,
                                    SetupText.IS_NO_DISTANCE_FOR_READING.say(said),
                                    SetupText.GIVE_METRES_FROM_TO.say(
                                            number(ScreenSizes.LEAST_METRES), number(ScreenSizes.MOST_METRES)));
                });
    }

    private static Setting screen(String size) {
        return new Setting(
                SCREEN + size,
                SetupText.WHAT_SCREEN.say(size),
                List.of(),
                settings -> Optional.ofNullable(settings.sizes().scales().get(size))
                        .map(scale -> number(scale.pixelsPerMillimetre()))
                        .orElse(NONE),
                (settings, said) -> {
                    if (said.equals(NONE))
                        return Parsed.accepted(
                                settings.withSizes(settings.sizes().without(size)));
                    OptionalDouble scale = between(said, ScreenScale.LEAST, ScreenScale.MOST);
                    return scale.isPresent()
                            ? Parsed.accepted(settings.withSizes(
                                    settings.sizes().with(size, new ScreenScale(scale.getAsDouble()))))
                            : Parsed.refused(
                                    SCREEN + size,
                                    SetupText.IS_NO_NUMBER_OF_PIXELS_PER.say(said),
                                    SetupText.GIVE_TO_OR_NONE_HOW_MANY.say(
                                            number(ScreenScale.LEAST),
                                            number(ScreenScale.MOST),
                                            number(ScreenScale.CARD_MILLIMETRES)));
                });
    }

    private static Setting key(Key key) {
        String name = KEY + key.id();
        return new Setting(
                name,
                SetupText.WHAT_KEY.say(key.word()),
                List.of(),
                settings -> KeyMap.read(settings.keys()).keys().of(key).word(),
                (settings, said) -> {
                    Optional<Stroke> stroke = Stroke.parse(said);
                    if (stroke.isEmpty())
                        return Parsed.refused(
                                name,
                                SetupText.IS_NO_SINGLE_KEY.say(said),
                                SetupText.GIVE_ONE_CHARACTER_OR_ONE_OF.say(Stroke.names()));
                    KeyMap.Given given = KeyMap.read(settings.keys()).keys().with(key, stroke.get());
                    if (given instanceof KeyMap.Taken taken)
                        return Parsed.refused(
                                name,
                                SetupText.ALREADY_MEANS.say(
                                        stroke.get().cap(), taken.by().word()),
                                SetupText.GIVE_THAT_ANOTHER_KEY_FIRST_OR.say());
                    Map<String, String> keys = new TreeMap<>(settings.keys());
                    keys.keySet().removeIf(act -> Key.named(act).isPresent());
                    keys.putAll(((KeyMap.Changed) given).keys().kept());
                    return Parsed.accepted(settings.withKeys(keys));
                });
    }

    private static Setting sessions() {
        return new Setting(
                SESSIONS,
                SetupText.WHAT_SESSIONS.say(),
                List.of(),
                settings -> settings.sessions().orElse(NONE),
                (settings, said) -> {
                    if (said.equals(NONE) || said.isEmpty())
                        return Parsed.accepted(settings.withSessions(Optional.empty()));
                    try {
                        Path folder = Path.of(said);
                        if (folder.isAbsolute())
                            return Parsed.accepted(settings.withSessions(
                                    Optional.of(folder.normalize().toString())));
                    } catch (InvalidPathException e) {
                        // Said below: it is no whole path either.
                    }
                    return Parsed.refused(
                            SESSIONS,
                            SetupText.IS_NO_WHOLE_PATH_OF_A.say(said),
                            SetupText.GIVE_ONE_FROM_THE_TOP_AS.say());
                });
    }

    private static Setting language() {
        List<String> words = new ArrayList<>(List.of(COMPUTER));
        words.addAll(Language.all());
        return new Setting(
                LANGUAGE,
                SetupText.WHAT_LANGUAGE.say(),
                words,
                settings -> settings.language().orElse(COMPUTER),
                (settings, said) -> {
                    if (said.equals(COMPUTER)) return Parsed.accepted(settings.withLanguage(Optional.empty()));
                    return Language.isKnown(said)
                            ? Parsed.accepted(settings.withLanguage(Optional.of(said)))
                            : Parsed.refused(
                                    LANGUAGE,
                                    SetupText.THERE_ARE_NO_TEXTS_IN.say(said),
                                    SetupText.SAY_ONE_OF.say(String.join(", ", words)));
                });
    }

    private static Setting remembered(
            String name,
            SetupText what,
            Function<Settings, Optional<String>> reads,
            BiFunction<Settings, Optional<String>, Settings> sets) {
        return new Setting(
                name,
                what.say(),
                List.of(),
                settings -> reads.apply(settings).orElse(NONE),
                (settings, said) -> Parsed.accepted(
                        sets.apply(settings, Optional.of(said).filter(text -> !text.isEmpty() && !text.equals(NONE)))));
    }

    private static OptionalDouble between(String said, double least, double most) {
        try {
            double number = Double.parseDouble(said.replace(',', '.'));
            return number >= least && number <= most ? OptionalDouble.of(number) : OptionalDouble.empty();
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value)
                .setScale(3, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
