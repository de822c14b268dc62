package fifthform.monitor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.cue.CueId;
import fifthform.curves.cue.OpenCue;
import fifthform.curves.input.AlarmId;
import fifthform.curves.recipe.Phase;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Rule;
import fifthform.monitor.session.Tapes;
import fifthform.monitor.settings.Units;
import java.time.Instant;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Words that would mislead hands if they were not exact. */
class PhrasesTest {
    private final Phrases phrases =
            new Phrases(Units.CELSIUS, Tapes.start(Tapes.OWN_WAY).setup().recipe());

    /** Two kinds of water stand in that kitchen. */
    @Test
    void itSaysWhichWaterItMeans() {
        OpenCue back = new OpenCue(Instant.EPOCH, OptionalDouble.of(12), Reason.by(Rule.SIZED_BY_COAST));
        assertEquals("Back in cold water for about 12 s", phrases.headline(CueId.PUT_BACK, back, Phase.COOL));
        assertEquals("Back on for about 12 s, then stir", phrases.headline(CueId.PUT_BACK, back, Phase.REWARM));
    }

    /** An alarm stands for some seconds after all is well again, and must not say the opposite meanwhile. */
    @Test
    void whatIsBackInRangeIsNeitherOverNorUnder() {
        assertEquals("0.6 °C over", phrases.detailNow(AlarmId.OVER_RANGE, 32.6));
        assertEquals("0.0 °C over", phrases.detailNow(AlarmId.OVER_RANGE, 31.8));
        assertEquals("0.7 °C under", phrases.detailNow(AlarmId.TOO_COOL, 30.3));
        assertEquals("0.0 °C under", phrases.detailNow(AlarmId.TOO_COOL, 31.2));
    }

    /** A lift that is overdue may still turn within the range; and off the bath there is nothing to lift. */
    @Test
    void headingOverSaysWhatIsTrueOnAndOffTheBath() {
        assertEquals("Too hot soon: off the heat", phrases.headline(AlarmId.HEADING_OVER, OptionalDouble.of(32.9)));
        assertEquals("it heads for 32.9 °C", phrases.detail(AlarmId.HEADING_OVER, OptionalDouble.of(32.9)));
        assertEquals(
                "lift it now: it still turns at 31.7 °C",
                phrases.detail(AlarmId.HEADING_OVER, OptionalDouble.of(31.7)));
    }

    /** Its limit lies under melt-out, as the last one that leaves time to act. */
    @Test
    void nearMeltOutSpeaksOfWhatIsToCome() {
        assertEquals(
                "Good crystals soon melt: cool now", phrases.headline(AlarmId.NEAR_MELT_OUT, OptionalDouble.of(33.1)));
    }
}
