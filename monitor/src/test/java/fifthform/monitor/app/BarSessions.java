package fifthform.monitor.app;

import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.PhaseConfirmed;
import fifthform.curves.input.Recorded;
import fifthform.curves.input.Sample;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.store.JournalWriter;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.store.SessionHeader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.OptionalDouble;

/** Invented recorded batches: melted, cooled and held, warmed, and then up to a peak for three minutes. */
final class BarSessions {
    private static final Instant FIRST = Instant.parse("2026-01-05T10:00:00Z");

    private final Path data;
    private final Instant first;
    private int day;

    BarSessions(Path data) {
        this(data, FIRST);
    }

    /** @param first when the first batch begins */
    BarSessions(Path data, Instant first) {
        this.data = data;
        this.first = first;
    }

    /** A batch of dark a day after the last one; answers with its name. */
    String batch(Origin origin, double peakCelsius, double holdMinutes) throws Exception {
        Recipe dark =
                Recipes.load(data.resolve("none")).builtIn("dark").orElseThrow().recipe();
        return batch(dark, origin, peakCelsius, holdMinutes);
    }

    String batch(Recipe recipe, Origin origin, double peakCelsius, double holdMinutes) throws Exception {
        Instant start = first.plusSeconds(86_400L * day++);
        Setup setup = new Setup(
                recipe,
                Bowl.ANY,
                java.util.List.of(
                        new ProbeSetup(Setups.BOWL, Role.BOWL, "text-lines", "/dev/demo", Correction.UNCHECKED, 4)),
                Setup.USUAL_REACTION,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                origin,
                Approach.TOUCHES_WHERE_UNSURE,
                OptionalDouble.empty(),
                Beginning.WHOLE,
                Optional.empty());
        Path sessions = Files.createDirectories(data.resolve("sessions"));
        Path file = new SessionFiles(sessions).reserve(start, ZoneOffset.UTC, recipe.id());
        String name = SessionFiles.name(file);
        SessionHeader header = new SessionHeader("0", "", name, start, ZoneOffset.UTC, setup);
        InstantSource wall = InstantSource.fixed(start.plusSeconds(1500));
        try (JournalWriter writer = JournalWriter.create(file, header, wall, what -> {})) {
            Tape tape = new Tape(writer, start);
            tape.to(48, 2).phase(Phase.COOL).to(27.6, 6).phase(Phase.SEED).to(27.6, holdMinutes);
            tape.phase(Phase.REWARM).to(31.5, 3).phase(Phase.WORK).to(31.5, 1);
            tape.to(peakCelsius, 1).to(peakCelsius, 3).to(31.5, 1);
        }
        return name;
    }

    /** Writes a curve, a reading every two seconds. */
    private static final class Tape {
        private final JournalWriter writer;
        private Instant at;
        private double celsius = 47;
        private long sequence;

        Tape(JournalWriter writer, Instant at) {
            this.writer = writer;
            this.at = at;
        }

        Tape to(double goal, double minutes) {
            int steps = (int) Math.round(30 * minutes);
            double from = celsius;
            for (int step = 1; step <= steps; step++) {
                at = at.plusSeconds(2);
                celsius = from + (goal - from) * step / steps;
                write(new Sample(at, Setups.BOWL, celsius, 0.03, OptionalDouble.empty(), OptionalDouble.empty()));
            }
            return this;
        }

        Tape phase(Phase phase) {
            write(new PhaseConfirmed(at, phase));
            return this;
        }

        private void write(Input input) {
            writer.input(new Recorded(++sequence, input));
        }
    }
}
