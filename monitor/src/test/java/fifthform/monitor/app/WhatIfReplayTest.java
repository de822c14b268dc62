package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.whatif.Change.BathShifted;
import fifthform.curves.whatif.Change.LiftMoved;
import fifthform.monitor.settings.Units;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The day after: what went wrong first, and what if. */
class WhatIfReplayTest {
    @TempDir
    Path folder;

    private Said replay(String... more) {
        String[] all = new String[more.length + 3];
        all[0] = "replay";
        all[1] = "--data=" + folder;
        System.arraycopy(more, 0, all, 2, more.length);
        all[all.length - 1] = GoldenSessionTest.tape("demo-own-way").toString();
        return Said.by(all);
    }

    @Test
    void aReplaySaysWhatWentWrongFirst() {
        Said said = replay("--screen", "none");
        assertEquals(0, said.exit(), said.err());
        assertTrue(said.out().contains("What went wrong first: "), said.out());
    }

    @Test
    void anotherLiftIsSimulatedAndMarkedSo() {
        Said said = replay("--what-if", "lift=-10s");
        assertEquals(0, said.exit(), said.out() + said.err());
        assertTrue(said.out().startsWith("What if, simulated: lifted 10 s earlier"), said.out());
        assertTrue(said.out().contains("nine times in ten between"), said.out());
        assertTrue(said.out().contains("Nothing of this was measured."), said.out());
        assertEquals(said.out(), replay("--what-if", "lift=-10s").out());
    }

    @Test
    void anotherBathIsAskedForInTheMakersUnits() {
        Said celsius = replay("--what-if", "bath=-5");
        assertEquals(0, celsius.exit(), celsius.out() + celsius.err());
        assertTrue(celsius.out().contains("the water 5.0 °C cooler"), celsius.out());
        Said fahrenheit = replay("--units", "F", "--what-if", "bath=-9");
        assertTrue(fahrenheit.out().contains("the water 9.0 °F cooler"), fahrenheit.out() + fahrenheit.err());
    }

    @Test
    void aLiftThatThereIsNotIsSaid() {
        Said said = replay("--what-if", "lift=-10s", "--of-lift", "99");
        assertEquals(1, said.exit(), said.err());
        assertTrue(said.out().startsWith("No what-if: there is no lift 99"), said.out());
    }

    @Test
    void whatCannotBeAskedIsRefused() {
        for (String text : new String[] {"lift", "lift=fast", "lift=-500s", "bath=-5s", "bath=40", "pot=-5"}) {
            replay("--what-if", text).refuses(2, text, "Nothing was done", "lift=-10s");
        }
    }

    @Test
    void questionsAreUnderstoodAsTheyAreWritten() throws Refusal {
        assertEquals(
                new LiftMoved(2, -10),
                WhatIfQuestion.parse("lift=-10s", Units.CELSIUS).of(2));
        assertEquals(
                new LiftMoved(2, 7.5),
                WhatIfQuestion.parse("LIFT=+7.5", Units.FAHRENHEIT).of(2));
        assertEquals(
                new BathShifted(1, -5),
                WhatIfQuestion.parse("bath=-9F", Units.CELSIUS).of(1));
        assertEquals(
                new BathShifted(1, -5),
                WhatIfQuestion.parse("bath=-9", Units.FAHRENHEIT).of(1));
        assertEquals(
                new BathShifted(1, -5),
                WhatIfQuestion.parse("bath=-5°C", Units.FAHRENHEIT).of(1));
    }
}
