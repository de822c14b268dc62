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
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.Session;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
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
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** How the bars of a batch came out. */
@Command(
        name = "look",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Keeps what you see on the bars of a batch: after 1, 2 and 7 days and 4 weeks, or whenever you look.",
            "Without options it asks, where there is a terminal. Every look is kept beside the session, none replaces"
                    + " another. What looks say of heat: monitor/run learn"
        },
        footer = {
            "",
            "Examples:",
            "  monitor/run look last --bloom none --snap clean --gloss bright",
            "  monitor/run look 2026-01-31-101500-dark --age 24h --bloom streaks --place edges --photo bars.jpg",
            "  monitor/run look last --show",
            "  monitor/run look last --reminders --at 18:30 > bars.ics",
            "  monitor/run look last --undo 2"
        })
final class LookCommand implements Callable<Integer> {
    private static final Pattern AGE = Pattern.compile("(\\d{1,6}(?:[.,]\\d{1,3})?)\\s*(h|d|w)[a-z]*");
    private static final int LONGEST_NOTE = 2000;

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "SESSION", description = "a session file, its name in the data folder, or last")
    private String name;

    @Mixin
    private LookOptions options;

    @Option(
            names = "--age",
            paramLabel = "AGE",
            description = "how long after the batch, as 24h, 7d or 4w; otherwise by the clock")
    private String age;

    @Option(
            names = "--photo",
            paramLabel = "PATH",
            description = "a picture; its path is kept, the picture stays where it is; more than one may be given;"
                    + " looked for here and in the session's folder")
    private List<String> photos = new ArrayList<>();

    @Option(names = "--note", paramLabel = "TEXT", description = "anything else, in your words")
    private String note;

    @Option(names = "--show", description = "show the looks that are kept")
    private boolean show;

    @Option(names = "--undo", paramLabel = "N", description = "take look N back; its line stays in the file")
    private Integer undo;

    @Option(names = "--reminders", description = "print a calendar file with the looks that are still to come")
    private boolean reminders;

    @Option(
            names = "--at",
            paramLabel = "HH:MM",
            description = "with --reminders: the time of day when you can look; otherwise when the batch ended")
    private String at;

    @Option(names = "--ask", description = "ask, also where there is no terminal")
    private boolean ask;

    @Option(names = "--json", description = "answer as JSON lines")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal {
        Path file = SessionNames.find(name, common.folders());
        Session session = Answers.orRefuse(JournalReader.read(file), Exit.FILE);
        LookFile looks = LookFile.beside(file, session.header().session());
        LookFile.Loaded loaded = looks.load();
        loaded.problems().stream().map(Problem::toString).forEach(err()::println);
        boolean damaged = !loaded.problems().isEmpty();
        if (reminders || at != null) return remind(session).code();
        if (undo != null) takeBack(looks, loaded, session);
        else if (show) show(loaded, session);
        else if (!add(looks, session)) return Exit.DONE.code();
        return (damaged ? Exit.ANSWER_IS_NO : Exit.DONE).code();
    }

    private Exit remind(Session session) throws Refusal {
        if (!reminders)
            throw new Refusal(Exit.NOT_UNDERSTOOD, "--at belongs to --reminders. Nothing was done. Say both.");
        if (options.isSaid() || show || undo != null)
            throw new Refusal(Exit.NOT_UNDERSTOOD, "--reminders stands alone. Nothing was done. Look apart from it.");
        LookCalendar calendar = LookCalendar.of(session, timeOfDay());
        Instant now = Instant.now();
        List<LookTime> left = calendar.toCome(now);
        if (left.isEmpty()) {
            err().println("These bars are older than four weeks: no look is still to come. Nothing was written.");
            return Exit.ANSWER_IS_NO;
        }
        out().print(calendar.text(now));
        out().flush();
        err().println(left.size() + (left.size() == 1 ? " look is" : " looks are")
                + " still to come. Send this to a file that ends in .ics and open it with your calendar.");
        return Exit.DONE;
    }

    private Optional<LocalTime> timeOfDay() throws Refusal {
        if (at == null) return Optional.empty();
        try {
            return Optional.of(LocalTime.parse(at.strip(), DateTimeFormatter.ofPattern("H:mm", Locale.ROOT)));
        } catch (DateTimeParseException e) {
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD, "--at was \"" + at + "\". Nothing was done. Say hours and minutes, as 18:30.");
        }
    }

    private void takeBack(LookFile looks, LookFile.Loaded loaded, Session session) throws Refusal {
        if (options.isSaid() || show) {
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD, "--undo stands alone. Nothing was done. Take it back first, then look again.");
        }
        KeptLook look = loaded.find(undo).orElseThrow(() -> noSuchLook(loaded));
        try {
            looks.takeBack(look, Instant.now());
        } catch (IOException e) {
            throw notWritten(looks, e);
        }
        if (json)
            out().println(new JsonLine()
                    .text("session", session.header().session())
                    .whole("taken_back", undo)
                    .end());
        else out().println("Taken back: " + LookWords.line(look) + ". Its line stays in the file.");
    }

    private Refusal noSuchLook(LookFile.Loaded loaded) {
        String known = loaded.looks().isEmpty()
                ? "None is kept."
                : "Kept: "
                        + String.join(
                                ", ",
                                loaded.looks().stream()
                                        .map(l -> Integer.toString(l.number()))
                                        .toList())
                        + ".";
        String twice = loaded.takenBack().contains(undo) ? " It was taken back before." : "";
        return new Refusal(
                Exit.NOT_UNDERSTOOD, "There is no look " + undo + "." + twice + " Nothing was done. " + known);
    }

    private void show(LookFile.Loaded loaded, Session session) {
        String of = session.header().session();
        if (loaded.looks().isEmpty() && !json) {
            out().println("No look at " + of + " is kept yet. Begin with: monitor/run look " + of + " --bloom none");
        }
        for (KeptLook look : loaded.looks()) {
            if (json) out().println(answer(of, look));
            else out().println(capital(LookWords.line(look)) + ". " + LookWords.sign(look.look()));
        }
    }

    /** Whether anything was kept. */
    private boolean add(LookFile looks, Session session) throws Refusal {
        double ageHours = ageHours(session);
        checkNote();
        Optional<BarLook> look = seen(ageHours);
        if (look.isEmpty()) {
            out().println("Nothing was kept.");
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
                .forEach(err()::println);
        answer(session, looks, kept);
        return true;
    }

    private Optional<BarLook> seen(double ageHours) throws Refusal {
        if (options.isSaid()) return Optional.of(options.look(ageHours));
        if (!ask && !Screens.hasTerminal()) {
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    "Nothing was said of the bars, and there is no terminal to ask on. Nothing was kept."
                            + " Say at least: --bloom none (monitor/run look --help has the words)");
        }
        try {
            BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
            // Scripts read the answer; the questions are for eyes.
            BarLook look = new LookQuestions(in, json ? err() : out()).ask(ageHours);
            return look.saysNothing() ? Optional.empty() : Optional.of(look);
        } catch (LookQuestions.Quit e) {
            return Optional.empty();
        } catch (IOException e) {
            throw new Refusal(
                    Exit.FILE,
                    "Your answers cannot be read (" + e.getMessage() + "). Nothing was kept. Use options instead.");
        }
    }

    private void answer(Session session, LookFile looks, KeptLook kept) {
        String of = session.header().session();
        if (json) {
            out().println(answer(of, kept));
            return;
        }
        boolean practice = session.header().setup().origin() == Origin.SIMULATED;
        Sign sign = kept.look().sign();
        out().println((practice ? "Kept, as practice" : "Kept") + ": " + LookWords.line(kept) + ".");
        out().println(LookWords.sign(kept.look()));
        LookWords.toDo(sign).ifPresent(out()::println);
        if (sign != Sign.FUZZY) LookWords.next(kept.look().ageHours()).ifPresent(out()::println);
        boolean contradicts = Outcome.of(looks.load().seen())
                .leftOut()
                .filter(LeftOut.CONTRADICTS::equals)
                .isPresent();
        if (contradicts) {
            out().println(
                            "One look found marks and a later one none, and marks do not go away: until you take the wrong one"
                                    + " back, this batch counts for nothing. monitor/run look " + of
                                    + " --show, then --undo N");
        } else if (sign == Sign.CLEAN || sign == Sign.LOST_TEMPER)
            out().println("What your batches say together: monitor/run learn" + (practice ? " --practice" : ""));
    }

    private static String answer(String session, KeptLook look) {
        return LookText.line(session, look)
                .text("sign", look.look().sign().word())
                .end();
    }

    private void checkNote() throws Refusal {
        if (note == null || note.length() <= LONGEST_NOTE) return;
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                "--note has " + note.length() + " characters. Nothing was kept. Use at most " + LONGEST_NOTE + ".");
    }

    private double ageHours(Session session) throws Refusal {
        if (age == null) {
            double hours = Duration.between(session.lastWall(), Instant.now()).toMillis() / 3.6e6;
            if (hours >= 0 && hours <= BarLook.OLDEST_HOURS) return hours;
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    "By this computer's clock the batch ended " + LookWords.age(Math.abs(hours))
                            + (hours < 0 ? " from now" : " ago")
                            + ". Nothing was kept. Say how old the bars are, for example: --age 24h");
        }
        Matcher said = AGE.matcher(age.strip().toLowerCase(Locale.ROOT));
        double hours = said.matches() ? hours(said) : -1;
        if (hours >= 0 && hours <= BarLook.OLDEST_HOURS) return hours;
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                "--age was \"" + age + "\". Nothing was kept. Say hours, days or weeks, for example: 24h, 7d, 4w.");
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
        String why = Files.isDirectory(looks.path()) ? "it is a folder" : String.valueOf(e.getMessage());
        return new Refusal(
                Exit.FILE,
                looks.path() + " cannot be written (" + why
                        + "). This look was not kept; what was kept before stands."
                        + " Check that it is a file and that you may write there.");
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
