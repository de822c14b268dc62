package fifthform.monitor.notebook;

import fifthform.curves.learning.BarLook;
import fifthform.monitor.bars.WhyOf;
import fifthform.monitor.looks.KeptLook;
import fifthform.monitor.looks.LookFile;
import fifthform.monitor.looks.LookTime;
import fifthform.monitor.looks.LookWords;
import fifthform.monitor.looks.PhotoPath;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.StoreException;
import fifthform.monitor.texts.NotebookText;
import java.io.IOException;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What lies on the desk of the Notebook screen: the rows, what is asked for, what is compared, and the last thing that was
 * done. For the screen's thread, except for what says otherwise.
 */
public final class NotebookDesk {
    private final Notebook notebook;
    private final Bin bin;
    private final Units units;
    private final InstantSource clock;
    private final Map<String, BatchRow> rows = new HashMap<>();
    private final List<String> compared = new ArrayList<>();
    private final Map<String, Said> searched = new HashMap<>();
    private final Map<String, SmallCurve> large = new HashMap<>();
    private final Deque<Bin.Binned> putAway = new ArrayDeque<>();
    private final Map<BatchKind, List<Finding>> findings = new EnumMap<>(BatchKind.class);
    private final Map<BatchKind, String> findingsOf = new EnumMap<>(BatchKind.class);
    private Function<BatchKind, List<Finding>> finder = kind -> List.of();
    private RowFilter filter = RowFilter.USUAL;
    private String said = "";

    public NotebookDesk(Notebook notebook, Bin bin, Units units, InstantSource clock) {
        this.notebook = Objects.requireNonNull(notebook, "notebook");
        this.bin = Objects.requireNonNull(bin, "bin");
        this.units = Objects.requireNonNull(units, "units");
        this.clock = Objects.requireNonNull(clock, "clock");
    }

    /** Lists the folder anew: at once, with what is known. */
    public void open() {
        try {
            List<BatchRow> all = notebook.open();
            rows.clear();
            all.forEach(row -> rows.put(row.name(), row));
            compared.removeIf(name -> !rows.containsKey(name));
            begin();
        } catch (IOException e) {
            said = NotebookText.SAID_NOT_LISTED.say(String.valueOf(e.getMessage()));
        }
    }

    /** How many rows are still to be read. */
    public int unread() {
        return (int) rows.values().stream()
                .filter(row -> row.condition() == Condition.UNREAD)
                .count();
    }

    /**
     * Reads what {@link #open} did not know. For a thread of its own, and not while the folder is listed.
     *
     * @param each told each row from that thread; it is to be handed to {@link #take} on the screen's
     * @param stopped asked between two
     * @return why the index could not be kept, where it could not
     */
    public Optional<String> readOn(Consumer<BatchRow> each, BooleanSupplier stopped) {
        return notebook.readOn(each, stopped);
    }

    /** Takes rows that were read meanwhile. */
    public void take(Collection<BatchRow> read) {
        for (BatchRow row : read) if (rows.containsKey(row.name())) rows.put(row.name(), row);
        begin();
    }

    /** Whoever has practised only would see no rows at all. */
    private void begin() {
        boolean practised = !rows.isEmpty()
                && rows.values().stream()
                        .allMatch(row -> row.condition() != Condition.UNREAD && row.kind() == BatchKind.PRACTICE);
        if (practised && filter.equals(RowFilter.USUAL)) filter = RowFilter.USUAL.withKinds(RowFilter.Kinds.PRACTICE);
    }

    /** Asks for nothing any more. */
    public void askForAll() {
        filter = RowFilter.USUAL;
        begin();
    }

    public Units units() {
        return units;
    }

    public RowFilter filter() {
        return filter;
    }

    /** Asks for other rows. */
    public void ask(RowFilter other) {
        filter = Objects.requireNonNull(other, "other");
    }

    /** Whether there is any batch at all. */
    public boolean isEmpty() {
        return rows.isEmpty();
    }

    public int count() {
        return rows.size();
    }

    public Optional<BatchRow> row(String name) {
        return Optional.ofNullable(rows.get(name));
    }

    /** What is asked for, newest first. */
    public List<BatchRow> shown() {
        return filter.of(all(), this::words, clock.instant());
    }

    /** A row's words for the search, put together once: they are asked for at each letter that is typed. */
    private String words(BatchRow row) {
        Said known = searched.get(row.name());
        if (known == null || known.row() != row) {
            known = new Said(row, RowWords.all(row, units));
            searched.put(row.name(), known);
        }
        return known.words();
    }

    private record Said(BatchRow row, String words) {}

    private List<BatchRow> all() {
        return rows.values().stream().sorted(Notebook.NEWEST_FIRST).toList();
    }

    /** Practice batches that fit in all else, where only real ones are asked for. */
    public int practiceLeftOut() {
        if (filter.kinds() != RowFilter.Kinds.REAL) return 0;
        return (int) filter.withKinds(RowFilter.Kinds.PRACTICE).of(all(), units, clock.instant()).stream()
                .filter(row -> row.kind() == BatchKind.PRACTICE)
                .count();
    }

    /** The batches that were made from the bars of this one, oldest first. */
    public List<String> madeFrom(BatchRow row) {
        return Links.madeFrom(row, all());
    }

    /** Ids of the chocolates there are. */
    public Set<String> chocolates() {
        return words(BatchRow::chocolateId);
    }

    /** Names of the bowls there are. */
    public Set<String> bowls() {
        return words(BatchRow::bowl);
    }

    private Set<String> words(Function<BatchRow, String> word) {
        Set<String> words = new TreeSet<>();
        for (BatchRow row : rows.values()) if (!word.apply(row).isEmpty()) words.add(word.apply(row));
        return words;
    }

    /** Looks that are due, in words. */
    public List<String> reminders() {
        return Reminders.lines(all(), clock.instant());
    }

    public Optional<LookTime> due(BatchRow row) {
        return Reminders.due(row, clock.instant());
    }

    /** What the rows that are shown say together. */
    public List<String> together() {
        return Together.sentences(shown());
    }

    /** What all looked-at batches of their chocolates say. */
    public List<String> found() {
        List<BatchRow> shown = shown();
        return Finding.beside(shown, findings.getOrDefault(Finding.kind(shown), List.of()));
    }

    /**
     * Has findings about looked-at batches said as well.
     *
     * @param other finds them, on whichever thread it is called
     */
    public void findBy(Function<BatchKind, List<Finding>> other) {
        finder = Objects.requireNonNull(other, "other");
    }

    /** Of which kind findings are to be read, since looks have changed; each change is told once. */
    public Optional<BatchKind> findingsWanted() {
        BatchKind kind = Finding.kind(shown());
        String looks = rows.values().stream()
                .filter(row -> row.kind() == kind && !row.looks().isEmpty())
                .map(row -> row.name() + " " + row.looks().size())
                .sorted()
                .collect(Collectors.joining("\n"));
        boolean known = looks.equals(findingsOf.getOrDefault(kind, ""));
        findingsOf.put(kind, looks);
        return known ? Optional.empty() : Optional.of(kind);
    }

    /** Reads them, for a thread of its own. */
    public List<Finding> readFindings(BatchKind kind) {
        return finder.apply(kind);
    }

    /** Takes what was read meanwhile. */
    public void takeFindings(BatchKind kind, List<Finding> read) {
        findings.put(kind, List.copyOf(read));
    }

    /** Takes a batch among those compared, or away again. */
    public void compare(BatchRow row) {
        said = "";
        if (compared.remove(row.name())) return;
        if (compared.size() == Comparison.MOST) said = NotebookText.SAID_THREE_AT_MOST.say();
        else if (row.curve().points() > 0) compared.add(row.name());
        else said = NotebookText.CURVE_EMPTY.say();
    }

    /** Which of the compared it is, from 0; −1 where it is none. */
    public int place(BatchRow row) {
        return compared.indexOf(row.name());
    }

    /** The batches side by side, with the finest curves known by now. */
    public Comparison comparison() {
        List<BatchRow> chosen = compared.stream().map(rows::get).toList();
        return Comparison.of(chosen, this::finest, units);
    }

    /** The finest curve known of this batch. */
    public SmallCurve finest(BatchRow row) {
        return large.getOrDefault(row.name(), row.curve());
    }

    /** Whether a finer curve is worth reading. */
    public boolean wantsLarge(BatchRow row) {
        return row.curve().points() > 0 && !large.containsKey(row.name());
    }

    /** Takes a finer curve that was read meanwhile. */
    public void takeLarge(BatchRow row, SmallCurve curve) {
        large.put(row.name(), curve);
    }

    /** Puts a batch into the bin. */
    public void putAway(BatchRow row) {
        act(() -> {
            putAway.push(bin.put(row.file()));
            rows.remove(row.name());
            compared.remove(row.name());
            return NotebookText.SAID_PUT_AWAY.say(row.name());
        });
    }

    /** Brings back what was put away last. */
    public void undo() {
        if (!putAway.isEmpty()) restore(putAway.peek());
    }

    /** What is in the bin. */
    public List<Bin.Binned> binned() {
        try {
            return bin.list();
        } catch (IOException e) {
            said = NotebookText.SAID_NOT_DONE.say(String.valueOf(e.getMessage()));
            return List.of();
        }
    }

    /** Brings a batch back from the bin. */
    public void restore(Bin.Binned batch) {
        act(() -> {
            bin.restore(batch);
            putAway.removeIf(each -> each.folder().equals(batch.folder()));
            return NotebookText.SAID_RESTORED.say(batch.name());
        });
        open();
    }

    /** Deletes these for good; the question was answered with yes. */
    public void empty(List<Bin.Binned> asked) {
        act(() -> {
            int gone = bin.empty(asked);
            putAway.clear();
            return NotebookText.SAID_EMPTIED.say(Integer.toString(gone));
        });
    }

    /** Why its bars came out as they did, a line each. Takes seconds; for a thread of its own. */
    public List<String> why(BatchRow row) {
        return JournalReader.read(row.file())
                .fold(session -> WhyOf.lines(session, units), problems -> List.of(row.trouble()));
    }

    /** Age of its bars now, h. */
    public double ageHours(BatchRow row) {
        double hours = Duration.between(row.ended(), clock.instant()).toMillis() / 3.6e6;
        return Math.max(0, Math.min(BarLook.OLDEST_HOURS, hours));
    }

    /**
     * Keeps a look at the bars of a batch.
     *
     * @param photos paths of pictures as they were typed, with semicolons between
     * @return whether it was kept
     */
    public boolean keep(BatchRow row, BarLook look, String photos, Optional<String> note) {
        if (look.saysNothing()) {
            said = NotebookText.SAID_LOOK_SAYS_NOTHING.say();
            return false;
        }
        int before = row.looks().size();
        act(() -> {
            LookFile looks = LookFile.beside(row.file(), BatchReader.session(row.file()));
            List<PhotoPath> pictures = PhotoPath.typed(photos, row.file());
            List<String> paths = pictures.stream().map(PhotoPath::kept).toList();
            KeptLook kept = looks.add(clock.instant(), look, paths, note);
            String missing = pictures.stream()
                    .filter(picture -> !picture.isThere())
                    .map(picture -> " " + picture.missing())
                    .collect(Collectors.joining());
            String toDo = LookWords.toDo(look.sign()).map(words -> " " + words).orElse("");
            return NotebookText.SAID_LOOK_KEPT.say(LookWords.line(kept) + ". " + LookWords.sign(look) + toDo + missing);
        });
        // The index takes it up when the folder is listed the next time.
        rows.put(row.name(), BatchReader.read(row.file()));
        return row(row.name()).filter(now -> now.looks().size() > before).isPresent();
    }

    /** The last thing that was done or could not be; empty where there is nothing to say. */
    public String said() {
        return said;
    }

    /** Has the screen say this. */
    public void say(String words) {
        said = words;
    }

    private interface Act {
        String done() throws IOException, StoreException;
    }

    private void act(Act act) {
        try {
            said = act.done();
        } catch (IOException | StoreException e) {
            said = NotebookText.SAID_NOT_DONE.say(String.valueOf(e.getMessage()));
        }
    }
}
