package fifthform.monitor.notebook;

import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.PhaseConfirmed;
import fifthform.curves.input.Recorded;
import fifthform.curves.input.Sample;
import fifthform.curves.learning.BarLook;
import fifthform.curves.learning.BarLook.Sureness;
import fifthform.curves.learning.Bloom;
import fifthform.curves.learning.Snap;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Holding;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.monitor.analyse.Analysis;
import fifthform.monitor.analyse.BatchFigures;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.looks.LookFile;
import fifthform.monitor.store.JournalWriter;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.store.SessionHeader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicReference;

/** Invented batches, recorded as real ones are; nothing in them was measured. */
public final class DemoBatches {
    /** When the first of them began; each is two days after the one before. */
    public static final Instant FIRST = Instant.parse("2026-01-05T18:00:00Z");

    private static final ProbeId BOWL = new ProbeId("bowl");
    private static final Duration EVERY = Duration.ofSeconds(2);

    private final Path data;
    private int made;

    public DemoBatches(Path data) {
        this.data = data;
    }

    /** How a demo batch ends. */
    public enum Ending {
        CLOSED,
        CUT_OFF
    }

    /** What a demo batch is to be. */
    public record Plan(
            String chocolate,
            String bowl,
            double grams,
            Origin origin,
            double peakCelsius,
            double holdMinutes,
            Ending ending,
            Beginning beginning,
            Optional<Holding> holding) {
        Plan(
                String chocolate,
                String bowl,
                double grams,
                Origin origin,
                double peakCelsius,
                double holdMinutes,
                Ending ending) {
            this(chocolate, bowl, grams, origin, peakCelsius, holdMinutes, ending, Beginning.WHOLE, Optional.empty());
        }

        /** Dark in the demo bowl, real, closed. */
        public static Plan dark(double peakCelsius) {
            return new Plan("dark", "demo steel", 800, Origin.REAL, peakCelsius, 12, Ending.CLOSED);
        }

        public Plan in(String otherBowl) {
            return new Plan(chocolate, otherBowl, grams, origin, peakCelsius, holdMinutes, ending);
        }

        public Plan of(String otherChocolate) {
            return new Plan(otherChocolate, bowl, grams, origin, peakCelsius, holdMinutes, ending);
        }

        public Plan practised() {
            return new Plan(chocolate, bowl, grams, Origin.SIMULATED, peakCelsius, holdMinutes, ending);
        }

        public Plan held(double minutes) {
            return new Plan(chocolate, bowl, grams, origin, peakCelsius, minutes, ending);
        }

        public Plan cutOff() {
            return new Plan(chocolate, bowl, grams, origin, peakCelsius, holdMinutes, Ending.CUT_OFF);
        }

        /** Begun otherwise, with a hold planned or not. */
        public Plan begun(Beginning otherwise, Optional<Holding> plan) {
            return new Plan(chocolate, bowl, grams, origin, peakCelsius, holdMinutes, ending, otherwise, plan);
        }
    }

    public Path sessions() {
        return data.resolve("sessions");
    }

    public Path index() {
        return data.resolve("notebook.index");
    }

    public Path binFolder() {
        return data.resolve("bin");
    }

    public Notebook notebook() {
        return new Notebook(sessions(), index());
    }

    public Bin bin() {
        return new Bin(binFolder(), sessions());
    }

    /** Records a batch; answers with its file. */
    public Path record(Plan plan) throws Exception {
        Recipe recipe = Recipes.load(data.resolve("none"))
                .builtIn(plan.chocolate())
                .orElseThrow()
                .recipe();
        Instant start = FIRST.plus(Duration.ofDays(2L * made++));
        Setup setup = new Setup(
                recipe,
                new Bowl(plan.bowl(), BowlMaterial.STEEL, OptionalDouble.of(plan.grams()), Optional.empty()),
                List.of(new ProbeSetup(BOWL, Role.BOWL, "text-lines", "/dev/demo", Correction.UNCHECKED, 4)),
                Duration.ofSeconds(3),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                plan.origin(),
                Approach.TOUCHES_WHERE_UNSURE,
                OptionalDouble.empty(),
                plan.beginning(),
                plan.holding());
        Files.createDirectories(sessions());
        Path file = new SessionFiles(sessions()).reserve(start, ZoneOffset.UTC, recipe.id());
        SessionHeader header = new SessionHeader("0", "", SessionFiles.name(file), start, ZoneOffset.UTC, setup);
        Analysis analysis = new Analysis(header.session(), setup, start);
        AtomicReference<Instant> now = new AtomicReference<>(start);
        InstantSource wall = now::get;
        JournalWriter writer = JournalWriter.create(file, header, wall, what -> {});
        Tape tape = new Tape(writer, analysis, now);
        double cool = recipe.cool().range().lowCelsius() + 0.6;
        double work = recipe.work().range().lowCelsius() + 0.5;
        tape.to(48, 2).phase(Phase.COOL).to(cool, 6).phase(Phase.SEED).to(cool, plan.holdMinutes());
        tape.phase(Phase.REWARM).to(work, 3).phase(Phase.WORK).to(work, 1);
        tape.to(plan.peakCelsius(), 1).to(plan.peakCelsius(), 3).to(work, 2);
        writer.summary(BatchFigures.of(setup, analysis.tally(), start));
        writer.close();
        if (plan.ending() == Ending.CUT_OFF) cut(file);
        return file;
    }

    /** As if the program had been ended before the closing line. */
    private static void cut(Path file) throws Exception {
        String text = Files.readString(file);
        Files.writeString(file, text.substring(0, text.indexOf("{\"k\":\"z\"")));
    }

    /** Keeps an invented look. */
    public static void look(Path session, double ageHours, Bloom bloom, Snap snap) throws Exception {
        BarLook look = new BarLook(
                ageHours,
                List.of(bloom),
                List.of(),
                Optional.of(snap),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Sureness.SURE);
        LookFile.beside(session, SessionFiles.name(session))
                .add(FIRST, look, List.of("demo-bars.jpg"), Optional.of("an invented look"));
    }

    private static final class Tape {
        private final JournalWriter writer;
        private final Analysis analysis;
        private final AtomicReference<Instant> now;
        private Instant at;
        private double celsius = 47;
        private long sequence;

        Tape(JournalWriter writer, Analysis analysis, AtomicReference<Instant> now) {
            this.writer = writer;
            this.analysis = analysis;
            this.now = now;
            this.at = now.get();
        }

        Tape to(double goal, double minutes) {
            int steps = (int) Math.round(60 * minutes / EVERY.toSeconds());
            double from = celsius;
            for (int step = 1; step <= steps; step++) {
                at = at.plus(EVERY);
                now.set(at);
                // Quick at first, slow at the end, as heat moves; with the last digit of an adapter.
                double way = (1 - Math.exp(-3.0 * step / steps)) / (1 - Math.exp(-3.0));
                celsius = Math.round(100 * (from + (goal - from) * way)) / 100.0;
                write(new Sample(at, BOWL, celsius, 0.03, OptionalDouble.empty(), OptionalDouble.empty()));
            }
            return this;
        }

        Tape phase(Phase phase) {
            write(new PhaseConfirmed(at, phase));
            return this;
        }

        private void write(Input input) {
            writer.input(new Recorded(++sequence, input));
            analysis.take(input);
        }
    }
}
