package fifthform.monitor.model;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Engine;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.Sample;
import fifthform.curves.recipe.Phase;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.session.Tapes;
import fifthform.monitor.settings.Units;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A bowl that was taken out of the cold water and sinks on. */
class TooColdTest {
    private final List<SessionSnapshot> cold = sinking();

    /** From the tape's hold on, half a kelvin a minute for ten minutes. */
    private static List<SessionSnapshot> sinking() {
        SessionSnapshot s = Tapes.first(Tapes.UNPLUGGED, t -> t.state().batch().phase() == Phase.SEED);
        Instant from = s.state().at();
        double celsius = s.state().estimate().orElseThrow().chocolateCelsius();
        s = after(s, new BowlMoved(from, Place.TABLE));
        List<SessionSnapshot> cold = new ArrayList<>();
        for (int i = 1; i <= 1200; i++) {
            double read = Math.round(100 * (celsius - 0.5 / 120 * i)) / 100.0;
            s = after(
                    s,
                    new Sample(
                            from.plusMillis(500L * i),
                            s.setup().bowlProbe().id(),
                            read,
                            0.003,
                            OptionalDouble.empty(),
                            OptionalDouble.empty()));
            if (s.state().alarms().standing().contains(AlarmId.OVER_COOLED)) cold.add(s);
        }
        return cold;
    }

    private static SessionSnapshot after(SessionSnapshot before, Input input) {
        return new SessionSnapshot(
                before.setup(),
                Engine.step(before.setup(), before.state(), input).after(),
                before.tally(),
                before.trace(),
                before.rawCelsius(),
                before.fault(),
                0);
    }

    private static WatchPicture picture(SessionSnapshot s) {
        return WatchModel.picture(
                s, new Look(Units.CELSIUS, ZoneOffset.UTC, List.of(), "", Optional.empty(), Optional.empty()));
    }

    @Test
    void whoTookItOutAlreadyIsNotToldToTakeItOut() {
        assertFalse(cold.isEmpty(), "it never was too cold");
        for (SessionSnapshot s : cold) {
            String rows = picture(s).alarms().toString();
            assertTrue(rows.contains("Too cold: warm it a little, stir"), rows);
        }
    }

    /** The step says how much warmth it needs; the alarm stays in its row. */
    @Test
    void theWarmthThatIsDueIsTheAnswer() {
        List<SessionSnapshot> due = cold.stream()
                .filter(s -> s.state().cues().isOpen(CueId.CRYSTALS_ENOUGH))
                .toList();
        assertFalse(due.isEmpty(), "no warmth was due");
        for (SessionSnapshot s : due) {
            String headline = picture(s).band().headline();
            assertFalse(headline.startsWith("Too cold"), headline);
        }
    }
}
