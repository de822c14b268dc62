package fifthform.monitor.app;

import fifthform.curves.fault.Clue;
import fifthform.curves.fault.Clues;
import fifthform.curves.fault.Diagnosis;
import fifthform.curves.fault.FaultBook;
import fifthform.curves.fault.FaultFinder;
import fifthform.monitor.bars.BatchClues;
import fifthform.monitor.bars.FaultLine;
import fifthform.monitor.bars.MarkFile;
import fifthform.monitor.bars.WhyWords;
import fifthform.monitor.model.CauseWords;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.Session;
import fifthform.monitor.texts.BarsText;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Why bars came out as they did. */
@Command(name = "why", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class WhyCommand implements Callable<Integer> {
    private static final int MOST_QUESTIONS = 6;
    private static final String PREFIX = "said-";

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "SESSION")
    private String name;

    @Option(names = "--yes", paramLabel = "WORD", split = ",")
    private List<String> yes = new ArrayList<>();

    @Option(names = "--no", paramLabel = "WORD", split = ",")
    private List<String> no = new ArrayList<>();

    @Option(names = "--ask")
    private boolean ask;

    @Option(names = "--dont-ask")
    private boolean dontAsk;

    @Option(names = "--json")
    private boolean json;

    private final FaultFinder finder = new FaultFinder(FaultBook.PACKED);

    @Override
    public Integer call() throws Refusal {
        Path file = SessionNames.find(name, common.folders());
        Session session = Answers.orRefuse(JournalReader.read(file), Exit.FILE);
        session.problems().forEach(common.err()::println);
        Settings settings = common.settings();
        MarkFile marks = MarkFile.beside(file, session.header().session());
        for (String word : yes) keep(marks, clue("--yes", word), true);
        for (String word : no) keep(marks, clue("--no", word), false);
        BatchClues known = BatchClues.of(session);
        known.problems().forEach(common.err()::println);
        Diagnosis diagnosis = asked(known.clues(), marks);
        if (json) {
            common.out()
                    .println(FaultLine.of(session.header().session(), diagnosis, FaultBook.PACKED)
                            .end());
            return Exit.DONE.code();
        }
        CauseWords causes =
                new CauseWords(common.units(settings), session.header().zone());
        new WhyWords(FaultBook.PACKED, causes).lines(diagnosis, known.faults()).forEach(common.out()::println);
        if (diagnosis.word() == Diagnosis.Word.NOT_LOOKED)
            common.out().println(BarsText.BEGIN_WITH_A_LOOK.say(session.header().session()));
        diagnosis
                .question()
                .ifPresent(clue -> common.out()
                        .println(BarsText.IT_WOULD_HELP_TO_KNOW_SAY.say(
                                FaultBook.PACKED.of(clue).question(), option(clue), option(clue))));
        return Exit.DONE.code();
    }

    /** Asks as long as an answer would clear something up, and somebody is there to give one. */
    private Diagnosis asked(Clues clues, MarkFile marks) throws Refusal {
        Diagnosis diagnosis = finder.find(clues);
        boolean asks = !dontAsk && (ask || Screens.hasTerminal() && !json);
        if (!asks) return diagnosis;
        PrintWriter to = json ? common.err() : common.out();
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        List<Clue> passed = new ArrayList<>();
        Clues known = clues;
        for (int i = 0; i < MOST_QUESTIONS && diagnosis.question().isPresent(); i++) {
            Clue clue = diagnosis.question().get();
            if (i == 0) to.println(BarsText.Y_YES_N_NO_ENTER_WHERE.say());
            to.println(FaultBook.PACKED.of(clue).question());
            Optional<String> answer = answer(in, to);
            if (answer.isEmpty()) break;
            if (answer.get().isEmpty()) {
                passed.add(clue);
            } else {
                boolean so = answer.get().startsWith("y");
                keep(marks, clue, so);
                known = known.with(clue, so);
            }
            diagnosis = finder.find(known, passed);
        }
        return diagnosis;
    }

    /** y, n or nothing; empty where no more is to be asked. */
    private static Optional<String> answer(BufferedReader in, PrintWriter to) throws Refusal {
        try {
            while (true) {
                to.print("> ");
                to.flush();
                String line = in.readLine();
                if (line == null) return Optional.empty();
                String said = line.strip().toLowerCase(Locale.ROOT);
                if (said.startsWith("q")) return Optional.empty();
                if (said.isEmpty() || said.startsWith("y") || said.startsWith("n")) return Optional.of(said);
                to.println(BarsText.Y_N_ENTER_OR_Q.say());
            }
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, BarsText.YOUR_ANSWERS_CANNOT_BE_READ.say(e.getMessage()));
        }
    }

    private static void keep(MarkFile marks, Clue clue, boolean so) throws Refusal {
        try {
            marks.add(Instant.now(), clue, so);
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, BarsText.CANNOT_BE_WRITTEN_THIS_ANSWER.say(marks.path(), e.getMessage()));
        }
    }

    private static Clue clue(String option, String said) throws Refusal {
        List<Clue> asked = Stream.of(Clue.values())
                .filter(clue -> clue.from() == Clue.From.MAKER)
                .toList();
        return OneOf.named(option, said, asked, WhyCommand::option);
    }

    private static String option(Clue clue) {
        return clue.word().substring(PREFIX.length());
    }
}
