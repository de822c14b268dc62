package fifthform.monitor.app;

import fifthform.monitor.learned.LearnedFindings;
import fifthform.monitor.notebook.BatchKind;
import fifthform.monitor.notebook.BatchRow;
import fifthform.monitor.notebook.Bin;
import fifthform.monitor.notebook.Condition;
import fifthform.monitor.notebook.Ended;
import fifthform.monitor.notebook.Finding;
import fifthform.monitor.notebook.Links;
import fifthform.monitor.notebook.Notebook;
import fifthform.monitor.notebook.NotebookDesk;
import fifthform.monitor.notebook.NotebookLines;
import fifthform.monitor.notebook.Reminders;
import fifthform.monitor.notebook.RowFilter;
import fifthform.monitor.notebook.RowFilter.Kinds;
import fifthform.monitor.notebook.RowFilter.Looks;
import fifthform.monitor.notebook.RowOrder;
import fifthform.monitor.notebook.Together;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.CommandText;
import fifthform.monitor.texts.NotebookText;
import fifthform.monitor.view.NotebookWindow;
import fifthform.monitor.view.Theme;
import java.io.IOException;
import java.io.PrintWriter;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** All batches, as rows. */
@Command(
        name = "notebook",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        subcommands = {NotebookBinCommand.class, NotebookRestoreCommand.class, NotebookEmptyBinCommand.class})
final class NotebookCommand implements Callable<Integer> {
    /** Fewer are read before a line about it could be read. */
    private static final int WORTH_SAYING = 50;

    @Mixin
    private CommonOptions common;

    @Option(names = "--screen")
    private ScreenChoice screen;

    @Option(names = "--chocolate", paramLabel = "ID")
    private String chocolate;

    @Option(names = "--bowl", paramLabel = "NAME")
    private String bowl;

    @Option(names = "--practice")
    private boolean practice;

    @Option(names = "--sent")
    private boolean sent;

    @Option(names = "--end", paramLabel = "WORD")
    private String end;

    @Option(names = "--looks", paramLabel = "WHICH")
    private String looks;

    @Option(names = "--search", paramLabel = "WORDS")
    private String search;

    @Option(names = "--sort", paramLabel = "BY")
    private String sort;

    @Option(names = "--reverse")
    private boolean reverse;

    @Option(names = "--json")
    private boolean json;

    @Override
    public Integer call() throws Refusal {
        Folders folders = folders();
        Settings settings = common.settings();
        Units units = common.units(settings);
        RowFilter filter = filter();
        Comparator<BatchRow> order = order();
        Notebook notebook = new Notebook(folders.sessions(), sent ? folders.sentIndex() : folders.notebookIndex());
        ScreenChoice choice = Optional.ofNullable(screen).orElseGet(Screens::best);
        if (!json && choice == ScreenChoice.WINDOW) {
            NotebookDesk desk = new NotebookDesk(notebook, bin(), units, Instant::now);
            desk.ask(filter);
            // Nothing is learned from batches of others.
            if (!sent) desk.findBy(kind -> LearnedFindings.of(folders, units, kind));
            Theme theme = Choices.theme(settings);
            ReplayOnDesk replays = new ReplayOnDesk(common.out(), common.err(), settings, units);
            Optional<String> refused = NotebookWindow.open(
                    desk, theme, Optional.of(file -> replays.showFurther(file).ifPresent(desk::say)));
            if (refused.isEmpty()) return Exit.DONE.code();
            common.err().println(CommandText.NO_WINDOW_GOING_ON_WITHOUT_IT.say(refused.get()));
        }
        return lines(notebook, filter, order, units).code();
    }

    private Exit lines(Notebook notebook, RowFilter filter, Comparator<BatchRow> order, Units units) throws Refusal {
        List<BatchRow> all = all(notebook);
        Instant now = Instant.now();
        List<BatchRow> rows = filter.of(all, units, now).stream().sorted(order).toList();
        if (json) rows.stream().map(row -> NotebookLines.json(row, all)).forEach(common.out()::println);
        else tell(all, rows, filter, units, now);
        boolean damaged = rows.stream()
                .anyMatch(row -> row.condition() == Condition.UNREADABLE || row.condition() == Condition.IN_PART);
        return damaged ? Exit.ANSWER_IS_NO : Exit.DONE;
    }

    private List<BatchRow> all(Notebook notebook) throws Refusal {
        try {
            notebook.open();
            int unread = notebook.unread();
            if (unread >= WORTH_SAYING) common.err().println(NotebookText.READING_BATCHES_THE_NEXT_TIME.say(unread));
            notebook.readOn(row -> {}, () -> false)
                    .ifPresent(why -> common.err().println(NotebookText.SAID_INDEX.say(why)));
            return notebook.open();
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, NotebookText.THE_BATCHES_CANNOT_BE_LISTED.say(e.getMessage()));
        }
    }

    private void tell(List<BatchRow> all, List<BatchRow> rows, RowFilter filter, Units units, Instant now) {
        if (all.isEmpty()) {
            common.out().println(NotebookText.EMPTY_TITLE.say() + " " + NotebookText.EMPTY_WHAT_TO_DO.say());
            return;
        }
        if (!rows.isEmpty()) NotebookLines.table(rows, units).forEach(common.out()::println);
        common.out()
                .println(
                        rows.size() == all.size()
                                ? NotebookText.COUNT_ALL.say(Integer.toString(all.size()))
                                : NotebookText.COUNT.say(Integer.toString(rows.size()), Integer.toString(all.size())));
        long practised = filter.kinds() == Kinds.REAL
                ? filter.withKinds(Kinds.PRACTICE).of(all, units, now).stream()
                        .filter(row -> row.kind() == BatchKind.PRACTICE)
                        .count()
                : 0;
        if (practised > 0)
            common.out()
                    .println(NotebookText.SHOW_THEM_WITH_PRACTICE.say(
                            NotebookText.PRACTICE_LEFT_OUT.say(Long.toString(practised))));
        if (rows.isEmpty()) return;
        Links.sentences(rows, all).forEach(common.out()::println);
        Reminders.lines(rows, now).forEach(common.out()::println);
        Together.sentences(rows).forEach(common.out()::println);
        if (!sent && rows.stream().anyMatch(row -> !row.looks().isEmpty())) {
            List<Finding> findings = LearnedFindings.of(folders(), units, Finding.kind(rows));
            Finding.beside(rows, findings).forEach(common.out()::println);
        }
        for (BatchRow row : rows) if (!row.trouble().isEmpty()) common.err().println(row.name() + ": " + row.trouble());
    }

    private RowFilter filter() throws Refusal {
        return new RowFilter(
                Optional.ofNullable(chocolate),
                Optional.ofNullable(bowl),
                practice ? Kinds.PRACTICE : Kinds.REAL,
                end == null
                        ? Optional.empty()
                        : Optional.of(OneOf.named("--end", end, List.of(Ended.values()), Ended::word)),
                looks == null ? Looks.ANY : looks(),
                Optional.ofNullable(search).orElse(""));
    }

    private Looks looks() throws Refusal {
        return OneOf.named("--looks", looks, List.of(Looks.LOOKED, Looks.NOT_LOOKED, Looks.DUE), NotebookCommand::word);
    }

    private static String word(Looks which) {
        return switch (which) {
            case ANY -> "any";
            case LOOKED -> "yes";
            case NOT_LOOKED -> "no";
            case DUE -> "due";
        };
    }

    private Comparator<BatchRow> order() throws Refusal {
        RowOrder by =
                sort == null ? RowOrder.WHEN : OneOf.named("--sort", sort, List.of(RowOrder.values()), RowOrder::word);
        Comparator<BatchRow> order = by == RowOrder.WHEN ? by.comparator().reversed() : by.comparator();
        return reverse ? order.reversed() : order;
    }

    Bin bin() {
        return new Bin(sent ? folders().sentBin() : folders().bin(), folders().sessions());
    }

    /** Whose batches it is about. */
    Folders folders() {
        Folders folders = common.folders();
        return sent ? folders.withSessions(folders.sent()) : folders;
    }

    PrintWriter out() {
        return common.out();
    }
}
