package fifthform.monitor.replay;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.State;
import fifthform.curves.setup.Origin;
import fifthform.monitor.intake.CsvTape;
import fifthform.monitor.model.AgainWords;
import fifthform.monitor.model.Spans;
import fifthform.monitor.replay.ReplayChart.Line;
import fifthform.monitor.replay.ReplayChart.Mark;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.texts.ReplayText;
import fifthform.monitor.texts.UnitText;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * A batch laid out at a desk: where we are in it, what is on the screen, what is marked and compared. Every act of the
 * maker is a method here, and {@link #picture} says what the screen shows then. Knows no window; one thread uses it.
 */
public final class ReplayDesk implements AutoCloseable {
    /** How far an arrow key goes, and with Shift. */
    private static final long STEP_NANOS = 5_000_000_000L;

    private static final long LONG_STEP_NANOS = 60_000_000_000L;

    /** How far each answered moment goes on where it goes as fast as it can, ns of the batch. */
    private static final long UNPACED_NANOS = 30_000_000_000L;

    private static final double ZOOM = 0.5;

    /** This batch and two others: more lines cannot be told apart without colour. */
    private static final int MOST_LAID = 2;

    private static final double NANOS = 1e9;

    private final Recording recording;
    private final Units units;
    private final InstantSource wall;
    private final Findings findings;
    private final SecondPass pass;
    private final Moments moments;
    private final Clock clock;
    private final ChartMaker charts;
    private final ThenAndNow thenAndNow;
    private final Agreed agreed;
    private final List<Happening> happenings;
    private final List<ListRow> alarms;
    private final List<Finding> toldThen;
    private final NoteFile noteFile;
    private final Player player;
    private final List<Laid> laid = new ArrayList<>();
    private final double[] wholeScale;

    private List<Note> notes;
    private Span span;
    private double[] scale;
    private OptionalLong a = OptionalLong.empty();
    private OptionalLong b = OptionalLong.empty();
    private TurningPoint match = TurningPoint.FIRST_TROUGH;
    private int chosen = -1;
    private int chosenWhatIf = -1;
    private String said = "";
    private List<Event> eventsNow = List.of();
    private Optional<Line> measured = Optional.empty();
    private Span measuredSpan;
    private int measuredColumns;

    /**
     * Lays out a recording. Nothing is computed before {@link #begin}.
     *
     * @param units unit of temperature
     * @param findings what will be found of this batch
     * @param whatIfs what would have been
     * @param wall time of day, for notes that are written now
     */
    public ReplayDesk(Recording recording, Units units, Findings findings, WhatIfs whatIfs, InstantSource wall) {
        this.recording = Objects.requireNonNull(recording, "recording");
        this.units = Objects.requireNonNull(units, "units");
        this.wall = Objects.requireNonNull(wall, "wall");
        this.findings = Objects.requireNonNull(findings, "findings");
        pass = new SecondPass(recording, findings, whatIfs);
        moments = new Moments(new Seeker(recording, pass));
        clock = new Clock(recording.start(), recording.header().zone());
        charts = new ChartMaker(recording, units);
        thenAndNow = new ThenAndNow(recording, units);
        agreed = new Agreed(recording, pass);
        happenings = Happenings.of(recording, units);
        alarms = new AlarmLeads(recording, units, clock).rows();
        toldThen = KnownWords.told(recording, units);
        noteFile = NoteFile.beside(recording.file(), recording.header().session());
        NoteFile.Loaded loaded = noteFile.load();
        notes = loaded.notes();
        player = new Player(recording.endNanos());
        span = Span.whole(recording.endNanos());
        measuredSpan = span;
        wholeScale = charts.wholeScale();
        scale = wholeScale;
        List<Problem> problems = new ArrayList<>(recording.problems());
        problems.addAll(loaded.problems());
        if (!problems.isEmpty())
            said = ReplayText.PROBLEMS.say(
                    Integer.toString(problems.size()), problems.get(0).toString());
        moments.wish(0);
    }

    /**
     * Begins at a moment and shows a part.
     *
     * @param nanos where to begin, since the session's start
     * @param to where the part ends; empty for the whole batch
     */
    public void startAt(long nanos, Optional<Long> to) {
        if (to.isPresent()) {
            long end = Math.min(recording.endNanos(), Math.max(to.get(), nanos + Span.SHORTEST));
            span = new Span(Math.max(0, Math.min(nanos, end - Span.SHORTEST)), Math.max(Span.SHORTEST, end));
        }
        at(nanos);
    }

    /** Begins at this pace: times life, empty for as fast as it can. */
    public void startPace(OptionalDouble timesLife) {
        player.pace(timesLife);
    }

    /** What is found of the batch, as far as it is known. */
    public List<Finding> findings() {
        return pass.whole().map(SecondPass.Whole::findings).orElse(toldThen);
    }

    /** Whether all that was told then is told now, in words. */
    public String agreement() {
        return agreed.words(clock);
    }

    /** Whether something was found that is told otherwise now. */
    public boolean differs() {
        return agreed.differs();
    }

    /** Starts computing behind the scenes, on two threads that end with the program or with {@link #close}. */
    public void begin() {
        start(pass, "replay-through");
        start(moments, "replay-seek");
    }

    /** Computes all before it returns, and each moment when it is asked for: for drawings, and for who has no threads. */
    public void computeAll() {
        pass.run();
        moments.inline();
    }

    private static void start(Runnable what, String name) {
        Thread thread = new Thread(what, name);
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        thread.start();
    }

    @Override
    public void close() {
        pass.stop();
        moments.stop();
    }

    public Recording recording() {
        return recording;
    }

    /** Unit of all temperatures. */
    public Units units() {
        return units;
    }

    /** The time of day. */
    public Instant now() {
        return wall.instant();
    }

    /** So much time has passed on the wall, ns. Whether the picture may be another one. */
    public boolean pulse(long passedNanos) {
        long before = player.nanos();
        boolean there = moments.answer().nanos() == before;
        player.pass(passedNanos, there ? UNPACED_NANOS : 0);
        if (player.nanos() != before) {
            chosen = -1;
            at(player.nanos());
        } else {
            moments.wish(before);
        }
        return player.isPlaying() || !there;
    }

    /** Where we are, ns since the session's start. */
    public long nanos() {
        return player.nanos();
    }

    /** The part on the screen. */
    public Span span() {
        return span;
    }

    public long endNanos() {
        return recording.endNanos();
    }

    // ---- going through the batch

    public void playOrPause() {
        player.toggle();
        at(player.nanos());
        say(player.isPlaying() ? ReplayText.SAID_PLAYS.say(pace()) : ReplayText.SAID_PAUSED.say(when(player.nanos())));
    }

    public void faster() {
        player.faster();
        say(ReplayText.SAID_PACE.say(pace()));
    }

    public void slower() {
        player.slower();
        say(ReplayText.SAID_PACE.say(pace()));
    }

    /** By how much. */
    public enum Step {
        SHORT,
        LONG
    }

    public void back(Step step) {
        seek(player.nanos() - nanos(step));
    }

    public void ahead(Step step) {
        seek(player.nanos() + nanos(step));
    }

    private static long nanos(Step step) {
        return step == Step.SHORT ? STEP_NANOS : LONG_STEP_NANOS;
    }

    public void toStart() {
        seek(0);
    }

    public void toEnd() {
        seek(recording.endNanos());
    }

    /** Goes to this moment, ns since the session's start. */
    public void seek(long nanos) {
        chosen = -1;
        at(nanos);
        say(when(player.nanos()));
    }

    private void at(long nanos) {
        player.seek(nanos);
        span = span.holding(player.nanos(), recording.endNanos());
        moments.wish(player.nanos());
    }

    /** To the next thing that was done, told or wrong; of several at one moment to each in turn. */
    public void nextEvent() {
        int next = isAtChosen() ? chosen + 1 : 0;
        while (!isAtChosen() && next < happenings.size() && happenings.get(next).nanos() <= player.nanos()) next++;
        choose(next);
    }

    /** To the one before. */
    public void previousEvent() {
        int before = isAtChosen() ? chosen - 1 : happenings.size() - 1;
        while (!isAtChosen() && before >= 0 && happenings.get(before).nanos() >= player.nanos()) before--;
        choose(before);
    }

    private boolean isAtChosen() {
        return chosen >= 0 && happenings.get(chosen).nanos() == player.nanos();
    }

    private void choose(int index) {
        if (index < 0 || index >= happenings.size()) {
            say(index < 0 ? ReplayText.SAID_NO_EARLIER.say() : ReplayText.SAID_NO_LATER.say());
            return;
        }
        player.pause();
        Happening happening = happenings.get(index);
        at(happening.nanos());
        chosen = index;
        say(ReplayText.SAID_EVENT.say(clock.time(happening.nanos()), row(happening.row()), happening.words()));
    }

    private static String row(Happening.Row row) {
        return switch (row) {
            case DID -> ReplayText.ROW_DID.say();
            case TOLD -> ReplayText.ROW_TOLD.say();
            case ALARM -> ReplayText.ROW_ALARM.say();
        };
    }

    // ---- what is on the screen

    public void zoomIn() {
        zoom(ZOOM, player.nanos());
    }

    public void zoomOut() {
        zoom(1 / ZOOM, player.nanos());
    }

    /** In or out around a moment; never touches the scale of temperatures. */
    public void zoom(double factor, long around) {
        span = span.zoomed(factor, around, recording.endNanos());
        say(spanWords());
    }

    public void showWhole() {
        span = Span.whole(recording.endNanos());
        say(spanWords());
    }

    /** Fits the temperatures to what is on the screen, or shows all of them again. */
    public void fitHeight() {
        boolean fitted = scale != wholeScale;
        scale = fitted ? wholeScale : fitted();
        say(fitted ? ReplayText.SAID_SCALE_WHOLE.say() : ReplayText.SAID_SCALE_FITTED.say());
    }

    /** What is read in this span, of this batch and of those laid beside it. */
    private double[] fitted() {
        double[] read = recording.bowl().range(span.from(), span.to());
        for (Laid other : laid) {
            long shift = other.shift(recording, match).orElse(0);
            double[] theirs = other.recording().bowl().range(span.from() - shift, span.to() - shift);
            read = Readings.joined(read, theirs);
        }
        return charts.scaleOf(read);
    }

    // ---- cursors

    public void setA() {
        a = OptionalLong.of(player.nanos());
        say(cursorWords());
    }

    public void setB() {
        b = OptionalLong.of(player.nanos());
        say(cursorWords());
    }

    public void dropCursors() {
        a = OptionalLong.empty();
        b = OptionalLong.empty();
        say(ReplayText.SAID_NO_CURSORS.say());
    }

    private String cursorWords() {
        return new CursorWords(recording.bowl(), units).of(a, b);
    }

    // ---- notes

    /** A mark here, to be seen again. */
    public void mark() {
        note("");
    }

    /** A note here. */
    public void note(String text) {
        try {
            Note made = noteFile.add(player.nanos(), text.strip(), wall.instant());
            reloadNotes();
            say(
                    made.isMark()
                            ? ReplayText.SAID_MARKED.say(when(made.nanos()))
                            : ReplayText.SAID_NOTED.say(when(made.nanos())));
        } catch (IOException e) {
            say(ReplayText.SAID_NOT_SAVED.say(String.valueOf(noteFile.path()), String.valueOf(e.getMessage())));
        }
    }

    /** Gives the note in this place of the list other words. */
    public void changeNote(int place, String text) {
        if (place < 0 || place >= notes.size()) return;
        try {
            noteFile.change(notes.get(place), text.strip(), wall.instant());
            reloadNotes();
            say(ReplayText.SAID_NOTE_CHANGED.say());
        } catch (IOException e) {
            say(ReplayText.SAID_NOT_SAVED.say(String.valueOf(noteFile.path()), String.valueOf(e.getMessage())));
        }
    }

    /** Takes the note in this place of the list back. */
    public void takeNoteBack(int place) {
        if (place < 0 || place >= notes.size()) return;
        try {
            noteFile.takeBack(notes.get(place), wall.instant());
            reloadNotes();
            say(ReplayText.SAID_NOTE_TAKEN_BACK.say());
        } catch (IOException e) {
            say(ReplayText.SAID_NOT_SAVED.say(String.valueOf(noteFile.path()), String.valueOf(e.getMessage())));
        }
    }

    /** The words of the note in this place of the list; empty for a mark. */
    public String noteText(int place) {
        return place < 0 || place >= notes.size() ? "" : notes.get(place).text();
    }

    private void reloadNotes() {
        notes = noteFile.load().notes();
    }

    // ---- other batches beside this one

    /** Lays the batch in this file over this one, matched at the turning point. */
    public void lay(Path file) {
        if (laid.size() >= MOST_LAID) {
            say(ReplayText.SAID_LAID_ENOUGH.say());
            return;
        }
        Parsed<Recording> read = Recording.read(file);
        String refused = read.fold(
                other -> {
                    laid.add(new Laid(other, SessionFiles.name(file)));
                    return "";
                },
                problems -> problems.get(0).toString());
        say(refused.isEmpty() ? ReplayText.SAID_LAID.say(SessionFiles.name(file), matchWords()) : refused);
    }

    /** Takes all other batches away. */
    public void takeAway() {
        laid.clear();
        say(ReplayText.SAID_TAKEN_AWAY.say());
    }

    /** Matches them at the other turning point. */
    public void matchOtherwise() {
        match = match.other();
        say(ReplayText.SAID_MATCHED.say(matchWords()));
    }

    private String matchWords() {
        return match == TurningPoint.FIRST_TROUGH ? ReplayText.MATCH_TROUGH.say() : ReplayText.MATCH_LIFT.say();
    }

    // ---- what if

    /** Draws the answer in this place of the list, or none. */
    public void chooseWhatIf(int place) {
        chosenWhatIf = place;
    }

    // ---- export

    /** Writes the part on the screen as a table. */
    public void writeTable(Writer to) throws IOException {
        new SpanCsv(recording, happenings, notes, units).write(span, to);
    }

    /** A name for an export of this part, without its ending. */
    public String exportName() {
        String part = span.equals(Span.whole(recording.endNanos()))
                ? ""
                : "-" + Math.round(span.from() / NANOS) + "-to-" + Math.round(span.to() / NANOS) + "-s";
        return SessionFiles.name(recording.file()) + part;
    }

    /** Says something that was done outside. */
    public void say(String words) {
        said = words;
    }

    // ---- the picture

    /** What the screen shows; the chart for a screen that is so many pixels wide. */
    public ReplayPicture picture(int columns) {
        Moments.Answer answer = moments.answer();
        // While it plays the answer is a frame behind; then all that is computed is of that moment.
        long nanos = player.nanos();
        boolean fits = answer.isComputed() && (player.isPlaying() || answer.nanos() == nanos);
        Optional<State> state = fits ? answer.state() : Optional.empty();
        if (pass.computedSize() != eventsNow.size())
            eventsNow = pass.computed().stream().map(SecondPass.Computed::event).toList();
        long moment = fits ? answer.nanos() : nanos;
        List<Finding> found = findings();
        String agreement = agreement();
        return new ReplayPicture(
                ReplayText.TITLE.say(clock.day(), recording.header().session()),
                subject(),
                marks(),
                found.get(0).words(),
                found.get(0).at().isPresent() ? aside() : "",
                chart(columns, state),
                ReplayText.CLOCK.say(Clock.elapsed(nanos), Clock.elapsed(recording.endNanos()), clock.time(nanos)),
                pace(),
                player.isPlaying(),
                spanWords(),
                ReplayText.MOMENT.say(Clock.elapsed(moment)),
                thenAndNow.at(moment, eventsNow, state),
                agreement,
                rows(found),
                whatIfs(),
                alarms,
                noteRows(),
                laidRows(),
                said);
    }

    private String aside() {
        return pass.whole().isPresent() ? findings.about() : ReplayText.HEADLINE_WORST.say();
    }

    private String pace() {
        return player.isUnpaced() ? ReplayText.PACE_MAX.say() : ReplayText.PACE.say(Integer.toString(player.speed()));
    }

    private String spanWords() {
        return span.equals(Span.whole(recording.endNanos()))
                ? ReplayText.SPAN_WHOLE.say()
                : ReplayText.SPAN_PART.say(
                        Clock.elapsed(span.from()), Clock.elapsed(span.to()), Clock.elapsed(recording.endNanos()));
    }

    private String when(long nanos) {
        return ReplayText.WHEN.say(Clock.elapsed(nanos), clock.time(nanos));
    }

    private String subject() {
        String amount = recording.setup().bowl().amountGrams().isPresent()
                ? UnitText.GRAMS.say(
                        Math.round(recording.setup().bowl().amountGrams().getAsDouble()))
                : ReplayText.AMOUNT_UNKNOWN.say();
        String kind = AgainWords.kind(recording.setup().beginning());
        return ReplayText.SUBJECT.say(
                        recording.setup().recipe().name(),
                        amount,
                        recording.setup().bowl().id(),
                        Spans.words(Duration.ofNanos(recording.endNanos())))
                + (kind.isEmpty() ? "" : ", " + kind);
    }

    private List<String> marks() {
        List<String> marks = new ArrayList<>();
        if (recording.setup().origin() == Origin.SIMULATED) marks.add(ReplayText.MARK_SIMULATED.say());
        if (recording.setup().bowlProbe().talk().equals(CsvTape.TALK)) marks.add(ReplayText.MARK_TABLE.say());
        if (!recording.isClosed()) marks.add(ReplayText.MARK_CUT_OFF.say());
        if (!recording.problems().isEmpty()) marks.add(ReplayText.MARK_DAMAGED.say());
        return marks;
    }

    private List<ListRow> rows(List<Finding> found) {
        return found.stream()
                .map(f -> new ListRow(
                        f.at().map(recording::nanos),
                        f.at().map(at -> clock.time(recording.nanos(at))).orElse(""),
                        f.words(),
                        f.figures(),
                        Optional.empty()))
                .toList();
    }

    private List<ListRow> whatIfs() {
        return pass.whole().map(SecondPass.Whole::whatIfs).orElse(List.of()).stream()
                .map(w -> new ListRow(Optional.empty(), "", w.change(), w.answer(), Optional.empty()))
                .toList();
    }

    private List<ListRow> noteRows() {
        return notes.stream()
                .map(n -> new ListRow(
                        Optional.of(n.nanos()),
                        clock.time(n.nanos()),
                        n.isMark() ? ReplayText.ACT_MARK.say() : n.text(),
                        "",
                        Optional.empty()))
                .toList();
    }

    private List<ListRow> laidRows() {
        List<ListRow> rows = new ArrayList<>();
        for (int i = 0; i < laid.size(); i++) {
            Laid other = laid.get(i);
            OptionalLong turn = match.in(other.recording());
            String detail = turn.isPresent() && match.in(recording).isPresent()
                    ? ReplayText.LAID_MATCHED.say(
                            matchWords(),
                            units.withUnit(other.recording()
                                    .bowl()
                                    .celsius(other.recording().bowl().lastAt(turn.getAsLong()))),
                            Clock.elapsed(turn.getAsLong()))
                    : ReplayText.LAID_UNMATCHED.say(matchWords());
            rows.add(new ListRow(Optional.empty(), letter(i), other.name(), detail, Optional.empty()));
        }
        return rows;
    }

    private static String letter(int place) {
        return ReplayText.LAID_NAME.say(Integer.toString(place + 2));
    }

    private ReplayChart chart(int columns, Optional<State> state) {
        if (measured.isEmpty() || !measuredSpan.equals(span) || measuredColumns != columns) {
            measured = Optional.of(charts.line(recording, span, columns, 0, ""));
            measuredSpan = span;
            measuredColumns = columns;
        }
        List<Line> others = new ArrayList<>();
        for (int i = 0; i < laid.size(); i++) {
            Laid other = laid.get(i);
            others.add(charts.line(
                    other.recording(),
                    span,
                    columns,
                    other.shift(recording, match).orElse(0),
                    letter(i)));
        }
        List<WhatIf> answers = pass.whole().map(SecondPass.Whole::whatIfs).orElse(List.of());
        boolean simulates = chosenWhatIf >= 0 && chosenWhatIf < answers.size();
        return new ReplayChart(
                span.from() / NANOS,
                span.to() / NANOS,
                scale[0],
                scale[1],
                charts.heights(scale[0], scale[1]),
                ChartMaker.times(span),
                charts.phases(),
                charts.bands(),
                charts.limits(),
                measured.orElseThrow(),
                others,
                charts.fan(state),
                ChartMaker.fanWords(state),
                simulates ? charts.fan(answers.get(chosenWhatIf)) : List.of(),
                charts.crystals(),
                charts.losses(),
                happenings,
                chosen,
                notes.stream().map(n -> new Mark(n.nanos() / NANOS, n.text())).toList(),
                player.nanos() / NANOS,
                seconds(a),
                seconds(b),
                cursorWords(),
                units.symbol());
    }

    private static OptionalDouble seconds(OptionalLong nanos) {
        return nanos.isPresent() ? OptionalDouble.of(nanos.getAsLong() / NANOS) : OptionalDouble.empty();
    }
}
