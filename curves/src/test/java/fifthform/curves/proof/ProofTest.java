package fifthform.curves.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.probecheck.CheckInput;
import fifthform.curves.probecheck.CheckInput.Enter;
import fifthform.curves.probecheck.CheckInput.Passed;
import fifthform.curves.probecheck.CheckInput.Reading;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A proof from the first reading to its end, as state and events. */
class ProofTest {
    private static final Instant START = Instant.parse("2026-11-26T10:00:00Z");

    @Test
    void beginsAndEndsByItself() {
        List<ProofEvent> events = new ArrayList<>();
        Proof proof = Proof.in(0);
        for (CurvePoint p : coldLater()) {
            Proof.Step step = proof.next(reading(p));
            events.addAll(step.events());
            proof = step.after();
        }
        assertEquals(Proof.Stage.ENDED, proof.stage());
        assertEquals(3, events.size(), events.toString());
        assertEquals(
                31, assertInstanceOf(ProofEvent.Dipped.class, events.get(0)).startCelsius(), 0.2);
        Bend bend = assertInstanceOf(ProofEvent.BendPassed.class, events.get(1)).bend();
        assertEquals(19.2, bend.celsius(), 0.4);
        // The slope's fall is waited for, but not a minute longer.
        double told = Duration.between(START, events.get(1).at()).toSeconds() - Samples.WAIT_SECONDS;
        assertTrue(told > bend.afterSeconds() && told < bend.afterSeconds() + 90, "told after " + told);
        assertEquals(List.of(), proof.next(reading(new CurvePoint(5000, 5))).events());
    }

    @Test
    void theSameReadingsGiveTheSameProof() {
        assertEquals(through(coldLater()), through(coldLater()));
    }

    @Test
    void enterEndsItButNotBeforeTheIce() {
        List<CurvePoint> points = coldLater();
        Proof waiting = through(points.subList(0, 10));
        assertEquals(
                Proof.Stage.BEFORE_ICE,
                waiting.next(new Enter(START.plusSeconds(11))).after().stage());
        Proof falling = through(points.subList(0, 150));
        assertTrue(falling.next(new Enter(START.plusSeconds(151))).after().isOver());
    }

    @Test
    void whatNeverFallsIsGivenUpAfterAQuarterOfAnHour() {
        Proof proof = Proof.in(0);
        for (int t = 0; t <= 901; t++)
            proof = proof.next(reading(new CurvePoint(t, 31))).after();
        assertTrue(proof.isOver());
        assertTrue(proof.readings().size() < 200, "what lies long before the dip is not kept");
        assertTrue(Proof.in(0)
                .next(new Passed(START))
                .after()
                .next(new Passed(START.plusSeconds(901)))
                .after()
                .isOver());
    }

    private static Proof through(List<CurvePoint> points) {
        Proof proof = Proof.in(0);
        for (CurvePoint p : points) proof = proof.next(reading(p)).after();
        return proof;
    }

    /** A good sample that stays in the ice for half a minute after it is cold. */
    private static List<CurvePoint> coldLater() {
        List<CurvePoint> points = new ArrayList<>(Samples.quiet(0.02));
        CurvePoint last = points.get(points.size() - 1);
        for (int t = 1; t < 60; t++) points.add(new CurvePoint(last.seconds() + t, last.celsius() - 0.02 * t));
        return points;
    }

    private static CheckInput reading(CurvePoint p) {
        return new Reading(START.plus(Duration.ofMillis(Math.round(1000 * p.seconds()))), p.celsius(), 0.003);
    }
}
