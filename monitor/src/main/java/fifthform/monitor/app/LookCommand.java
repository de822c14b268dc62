package fifthform.monitor.app;

import fifthform.curves.check.Problem;
import fifthform.curves.learning.BarLook;
import fifthform.curves.learning.LeftOut;
import fifthform.curves.learning.Outcome;
import fifthform.curves.learning.Sign;
import fifthform.curves.setup.Origin;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.looks.KeptLook;
import fifthform.monitor.looks.LookCalendar;
import fifthform.monitor.looks.LookFile;
import fifthform.monitor.looks.LookText;
import fifthform.monitor.looks.LookTime;
import fifthform.monitor.looks.LookWords;
import fifthform.monitor.looks.PhotoPath;
import fifthform.monitor.store.AddedLines;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.Session;
import fifthform.monitor.texts.LooksText;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** How the bars of a batch came out. */
@Command(name = "look", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class LookCommand implements Callable<Integer> {
    private static final Pattern AGE = Pattern.compile("(\\d{1,6}(?:[.,]\\d{1,3})?)\\s*(h|d|w)[a-z]*");
    private static final int LONGEST_NOTE = 2000;

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "SESSION")
    private String name;

    @Mixin
    private LookOptions options;

    @Option(names = "--age", paramLabel = "AGE")
    private String age;

    @Option(names = "--photo", paramLabel = "PATH")
    private List<String> photos = new ArrayList<>();

    @Option(names = "--note", paramLabel = "TEXT")
    private String note;

    @Option(names = "--show")
    private boolean show;

    @Option(names = "--undo", paramLabel = "N")
    private Integer undo;

    @Option(names = "--reminders")
    private boolean reminders;

    @Option(names = "--at", paramLabel = "HH:MM")
    private String at;

    @Option(names = "--ask")
    private boolean ask;

    @Option(names = "--json")
    private boolean json;

    @Override
    public Integer call() throws Refusal {
        Path file = SessionNames.find(name, common.folders());
        Session session = Answers.orRefuse(JournalReader.read(file), Exit.FILE);
        LookFile looks = LookFile.beside(file, session.header().session());
        LookFile.Loaded loaded = looks.load();
        loaded.problems().stream().map(Problem::toString).forEach(common.err()::println);
        boolean damaged = !loaded.problems().isEmpty();
        if (reminders || at != null) return remind(session).code();
        if (undo != null) takeBack(looks, loaded, session);
        else if (show) show(loaded, session);
        else if (!add(looks, session)) return Exit.DONE.code();
        return (damaged ? Exit.ANSWER_IS_NO : Exit.DONE).code();
    }

    private Exit remind(Session session) throws Refusal {
        if (!reminders) throw new Refusal(Exit.NOT_UNDERSTOOD, LooksText.AT_BELONGS_TO_REMINDERS.say());
        if (options.isSaid() || show || undo != null)
            throw new Refusal(Exit.NOT_UNDERSTOOD, LooksText.REMINDERS_STANDS_ALONE_NOTHING.say());
        LookCalendar calendar = LookCalendar.of(session, timeOfDay());
        Instant now = Instant.now();
        List<LookTime> left = calendar.toCome(now);
        if (left.isEmpty()) {
            common.err().println(LooksText.THESE_BARS_ARE_OLDER_THAN_FOUR.say());
            return Exit.ANSWER_IS_NO;
        }
        common.out().print(calendar.text(now));
        common.out().flush();
        common.err().println(LooksText.STILL_TO_COME_SEND_THIS_TO.say(left.size()));
        return Exit.DONE;
    }

    private Optional<LocalTime> timeOfDay() throws Refusal {
        if (at == null) return Optional.empty();
        try {
            return Optional.of(LocalTime.parse(at.strip(), DateTimeFormatter.ofPattern("H:mm", Locale.ROOT)));
        } catch (DateTimeParseException e) {
            throw new Refusal(Exit.NOT_UNDERSTOOD, LooksText.AT_WAS_NOTHING_WAS_DONE_SAY.say(at));
        }
    }

    private void takeBack(LookFile looks, LookFile.Loaded loaded, Session session) throws Refusal {
        if (options.isSaid() || show) {
            throw new Refusal(Exit.NOT_UNDERSTOOD, LooksText.UNDO_STANDS_ALONE_NOTHING_WAS.say());
        }
        KeptLook look = loaded.find(undo).orElseThrow(() -> noSuchLook(loaded));
        try {
            looks.takeBack(look, Instant.now());
        } catch (IOException e) {
            throw notWritten(looks, e);
        }
        if (json)
            common.out()
                    .println(new JsonLine()
                            .text("session", session.header().session())
                            .whole("taken_back", undo)
                            .end());
        else common.out().println(LooksText.TAKEN_BACK_ITS_LINE_STAYS_IN.say(LookWords.line(look)));
    }

    private Refusal noSuchLook(LookFile.Loaded loaded) {
        String known = loaded.looks().isEmpty()
                ? LooksText.NONE_IS_KEPT.say()
                : LooksText.KEPT.say(String.join(
                        ", ",
                        loaded.looks().stream()
                                .map(l -> Integer.toString(l.number()))
                                .toList()));
        String twice = loaded.takenBack().contains(undo) ? LooksText.IT_WAS_TAKEN_BACK_BEFORE.say() : "";
        return new Refusal(Exit.NOT_UNDERSTOOD, LooksText.THERE_IS_NO_LOOK_NOTHING_WAS.say(undo, twice, known));
    }

    private void show(LookFile.Loaded loaded, Session session) {
        String of = session.header().session();
        if (loaded.looks().isEmpty() && !json) {
            common.out().println(LooksText.NO_LOOK_AT_IS_KEPT_YET.say(of, of));
        }
        for (KeptLook look : loaded.looks()) {
            if (json) common.out().println(answer(of, look));
            else common.out().println(capital(LookWords.line(look)) + ". " + LookWords.sign(look.look()));
        }
    }

    /** Whether anything was kept. */
    private boolean add(LookFile looks, Session session) throws Refusal {
        double ageHours = ageHours(session);
        checkNote();
        Optional<BarLook> look = seen(ageHours);
        if (look.isEmpty()) {
            common.out().println(LooksText.NOTHING_WAS_KEPT.say());
            return false;
        }
        List<PhotoPath> pictures =
                photos.stream().map(photo -> PhotoPath.of(photo, looks.path())).toList();
        KeptLook kept;
        try {
            List<String> paths = pictures.stream().map(PhotoPath::kept).toList();
            kept = looks.add(Instant.now(), look.get(), paths, Optional.ofNullable(note));
        } catch (IOException e) {
            throw notWritten(looks, e);
        }
        pictures.stream()
                .filter(picture -> !picture.isThere())
                .map(PhotoPath::missing)
                .forEach(common.err()::println);
        answer(session, looks, kept);
        return true;
    }

    private Optional<BarLook> seen(double ageHours) throws Refusal {
        if (options.isSaid()) return Optional.of(options.look(ageHours));
        if (!ask && !Screens.hasTerminal()) {
            throw new Refusal(Exit.NOT_UNDERSTOOD, LooksText.NOTHING_WAS_SAID_OF_THE_BARS.say());
        }
        try {
            BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
            // Scripts read the answer; the questions are for eyes.
            BarLook look = new LookQuestions(in, json ? common.err() : common.out()).ask(ageHours);
            return look.saysNothing() ? Optional.empty() : Optional.of(look);
        } catch (LookQuestions.Quit e) {
            return Optional.empty();
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, LooksText.YOUR_ANSWERS_CANNOT_BE_READ.say(e.getMessage()));
        }
    }

    private void answer(Session session, LookFile looks, KeptLook kept) {
        String of = session.header().session();
        if (json) {
            common.out().println(answer(of, kept));
            return;
        }
        boolean practice = session.header().setup().origin() == Origin.SIMULATED;
        Sign sign = kept.look().sign();
        common.out().println((practice ? LooksText.KEPT_AS_PRACTICE : LooksText.KEPT_ALONE).say(LookWords.line(kept)));
        common.out().println(LookWords.sign(kept.look()));
        LookWords.toDo(sign).ifPresent(common.out()::println);
        if (sign != Sign.FUZZY) LookWords.next(kept.look().ageHours()).ifPresent(common.out()::println);
        boolean contradicts = Outcome.of(looks.load().seen())
                .leftOut()
                .filter(LeftOut.CONTRADICTS::equals)
                .isPresent();
        if (contradicts) {
            common.out().println(LooksText.ONE_LOOK_FOUND_MARKS_AND_A.say(of));
        } else if (sign == Sign.CLEAN || sign == Sign.LOST_TEMPER)
            common.out()
                    .println(LooksText.WHAT_YOUR_BATCHES_SAY_TOGETHER.say(practice ? LooksText.PRACTICE.say() : ""));
    }

    private static String answer(String session, KeptLook look) {
        return LookText.line(session, look)
                .text("sign", look.look().sign().word())
                .end();
    }

    private void checkNote() throws Refusal {
        if (note == null || note.length() <= LONGEST_NOTE) return;
        throw new Refusal(Exit.NOT_UNDERSTOOD, LooksText.NOTE_HAS_CHARACTERS_NOTHING.say(note.length(), LONGEST_NOTE));
    }

    private double ageHours(Session session) throws Refusal {
        if (age == null) {
            double hours = Duration.between(session.lastWall(), Instant.now()).toMillis() / 3.6e6;
            if (hours >= 0 && hours <= BarLook.OLDEST_HOURS) return hours;
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    LooksText.BY_THIS_COMPUTERS_CLOCK_THE.say(
                            LookWords.age(Math.abs(hours)),
                            hours < 0 ? LooksText.FROM_NOW.say() : LooksText.AGO.say()));
        }
        Matcher said = AGE.matcher(age.strip().toLowerCase(Locale.ROOT));
        double hours = said.matches() ? hours(said) : -1;
        if (hours >= 0 && hours <= BarLook.OLDEST_HOURS) return hours;
        throw new Refusal(Exit.NOT_UNDERSTOOD, LooksText.AGE_WAS_NOTHING_WAS_KEPT_SAY.say(age));
    }

    private static double hours(Matcher said) {
        double number = Double.parseDouble(said.group(1).replace(',', '.'));
        return switch (said.group(2)) {
            case "h" -> number;
            case "d" -> 24 * number;
            default -> 7 * 24 * number;
        };
    }

    private static Refusal notWritten(LookFile looks, IOException e) {
        return new Refusal(
                Exit.FILE, LooksText.CANNOT_BE_WRITTEN_THIS_LOOK.say(looks.path(), AddedLines.why(looks.path(), e)));
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
