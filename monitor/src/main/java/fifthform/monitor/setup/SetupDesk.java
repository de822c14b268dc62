package fifthform.monitor.setup;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.monitor.model.KeyMap;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.settings.SettingsFile;
import fifthform.monitor.texts.SetupText;
import java.io.IOException;
import java.time.InstantSource;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What the maker does in Setup, without a window. Every change is kept at once, into the file as it is at that moment,
 * and can be taken back one by one.
 */
public final class SetupDesk {
    private static final int TAKEN_BACK_AT_MOST = 100;

    private final Folders folders;
    private final SettingsFile file;
    private final SettingTable table;
    private final InstantSource clock;
    private final Deque<Before> before = new ArrayDeque<>();
    private Settings settings = Settings.USUAL;
    private List<String> problems = List.of();
    private String said = "";

    /** What one setting was before it was changed. */
    private record Before(Setting setting, Settings settings) {}

    public SetupDesk(Folders folders, InstantSource clock) {
        this.folders = Objects.requireNonNull(folders, "folders");
        this.clock = Objects.requireNonNull(clock, "clock");
        file = new SettingsFile(folders.settingsFile());
        table = new SettingTable(clock);
        load();
    }

    private void load() {
        SettingsFile.Loaded loaded = file.load();
        settings = loaded.settings();
        List<String> all = new ArrayList<>();
        for (Problem problem : loaded.problems()) all.add(problem.toString());
        all.addAll(KeyMap.read(settings.keys()).problems());
        problems = List.copyOf(all);
    }

    /** Looks at the file again: another window or command may have changed it. */
    public void refresh() {
        Settings known = settings;
        load();
        if (!settings.equals(known)) say(SetupText.SAID_CHANGED_ELSEWHERE.say());
    }

    public Folders folders() {
        return folders;
    }

    public Settings settings() {
        return settings;
    }

    /** Which key does what. */
    public KeyMap keys() {
        return KeyMap.read(settings.keys()).keys();
    }

    /** What of the settings cannot be used. */
    public List<String> problems() {
        return problems;
    }

    public List<Setting> all() {
        return table.all(settings);
    }

    public InstantSource clock() {
        return clock;
    }

    /** The value of a setting, as a word. */
    public String value(String name) {
        return named(name).value(settings);
    }

    public Setting named(String name) {
        return table.named(name, settings).fold(setting -> setting, problems -> {
            throw new IllegalArgumentException(problems.toString());
        });
    }

    /**
     * Changes a setting and keeps it.
     *
     * @return what is wrong with the value, or why it cannot be kept; nothing was done then
     */
    public List<Problem> set(String name, String value) {
        Parsed<Setting> setting = table.named(name, settings);
        return setting.fold(found -> set(found, value), problems -> problems);
    }

    private List<Problem> set(Setting setting, String value) {
        // Tried against what is known first, so that a word that cannot be is refused without touching the file.
        Optional<List<Problem>> refused = setting.set(settings, value)
                .fold(ok -> Optional.<List<Problem>>empty(), problems -> Optional.of(List.copyOf(problems)));
        if (refused.isPresent()) return tell(refused.get());
        try {
            Settings was = settings;
            List<Problem> late = new ArrayList<>();
            settings = file.change(now -> setting.set(now, value).fold(changed -> changed, problems -> {
                late.addAll(problems);
                return now;
            }));
            problems = KeyMap.read(settings.keys()).problems();
            if (!late.isEmpty()) return tell(late);
            if (setting.value(settings).equals(setting.value(was)) && settings.equals(was)) return List.of();
            before.push(new Before(setting, was));
            if (before.size() > TAKEN_BACK_AT_MOST) before.removeLast();
            say(SetupText.SAID_SET.say(setting.what(), SettingWords.of(setting.value(settings))));
            return List.of();
        } catch (IOException e) {
            return tell(List.of(new Problem(
                    folders.settingsFile().toString(),
                    SetupText.THE_SETTINGS_CANNOT_BE_KEPT.say(e.getMessage()),
                    SetupText.CHECK_THAT_YOU_MAY_WRITE_THERE.say())));
        }
    }

    private List<Problem> tell(List<Problem> problems) {
        Problem first = problems.get(0);
        say(first.what() + " " + first.whatToDo());
        return problems;
    }

    /** Gives a setting its usual value back. */
    public List<Problem> setUsual(String name) {
        return table.named(name, settings).fold(setting -> set(setting, setting.usual()), problems -> problems);
    }

    /**
     * Sets several at once, or none: these values, and those names to what is usual.
     *
     * @return what is wrong with the first that cannot be
     */
    public List<Problem> setAll(Map<String, String> values, List<String> usual) {
        Map<String, String> all = new LinkedHashMap<>();
        // The usual ones first: they may free the keys that others are to have.
        for (String name : usual) all.put(name, "");
        all.putAll(values);
        Settings tried = settings;
        for (Map.Entry<String, String> each : all.entrySet()) {
            Settings now = tried;
            Parsed<Settings> next = table.named(each.getKey(), now)
                    .fold(
                            setting -> setting.set(
                                    now, values.containsKey(each.getKey()) ? each.getValue() : setting.usual()),
                            Parsed::refused);
            List<Problem> problems = next.fold(ok -> List.<Problem>of(), refused -> List.copyOf(refused));
            if (!problems.isEmpty()) return problems;
            tried = next.fold(ok -> ok, refused -> now);
        }
        for (Map.Entry<String, String> each : all.entrySet()) {
            List<Problem> problems =
                    values.containsKey(each.getKey()) ? set(each.getKey(), each.getValue()) : setUsual(each.getKey());
            if (!problems.isEmpty()) return problems;
        }
        return List.of();
    }

    /** Whether a setting has its usual value. */
    public boolean isUsual(String name) {
        Setting setting = named(name);
        return setting.value(settings).equals(setting.usual());
    }

    /** Gives the setting that was changed last the value that it had before. */
    public void undo() {
        if (before.isEmpty()) {
            say(SetupText.SAID_NOTHING_TO_UNDO.say());
            return;
        }
        Before last = before.pop();
        String value = last.setting().value(last.settings());
        int kept = before.size();
        if (set(last.setting(), value).isEmpty()) {
            while (before.size() > kept) before.pop();
            say(SetupText.SAID_AS_IT_WAS.say(last.setting().what(), value));
        } else before.push(last);
    }

    /** The last thing that was said. */
    public String said() {
        return said;
    }

    public void say(String words) {
        said = words;
    }
}
