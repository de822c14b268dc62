package fifthform.monitor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;
import fifthform.monitor.settings.Units;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every reason is told in words, with its figures and their units. */
class ReasonWordsTest {
    private static final Reason LIFT = Reason.by(Rule.TURN_REACHES_AIM)
            .with(Figure.TURN_C, 31.62)
            .with(Figure.TURN_LOWER_C, 31.1)
            .with(Figure.TURN_UPPER_C, 32.2)
            .with(Figure.RANGE_LOW_C, 31)
            .with(Figure.RANGE_HIGH_C, 32)
            .with(Figure.LEFT_S, 4.2)
            .with(Figure.REACTION_S, 2.5)
            .with(Figure.COAST_S, 66)
            .with(Figure.COAST_LOG_SPREAD, 0.2)
            .with(Figure.LIFTS_SEEN, 3);

    private static final Reason DIP = Reason.by(Rule.SIZED_BY_EARLIER_DIPS)
            .with(Figure.CHOCOLATE_C, 30.8)
            .with(Figure.AIM_C, 31.4)
            .with(Figure.RANGE_LOW_C, 31)
            .with(Figure.RANGE_HIGH_C, 32)
            .with(Figure.DIPS_SEEN, 2)
            .with(Figure.DIP_K_PER_S, 0.06)
            .with(Figure.DIP_LOG_SPREAD, 0.15)
            .with(Figure.DIP_S, 8);

    @Test
    void aStayOverAWeakBathIsToldWithItsPaceAndWhatToDo() {
        assertEquals(
                "It stands at 29.4 °C, rising 0.1 °C a minute; bath 33.5 °C. At that pace it would take more than ten"
                        + " minutes to 31.0 °C: some hot water into the bath, two or three degrees, and look again.",
                said(Reason.by(Rule.STAY_GIVES_TOO_LITTLE)
                        .with(Figure.CHOCOLATE_C, 29.4)
                        .with(Figure.RATE_K_PER_MIN, 0.1)
                        .with(Figure.BATH_C, 33.5)
                        .with(Figure.RANGE_LOW_C, 31)));
    }

    @Test
    void aLiftIsToldWithWhereItTurnsWhatIsAimedAtAndTheTime() {
        assertEquals(
                "Turning point now about 31.6 °C, band 31.1 to 32.2; range 31.0 to 32.0."
                        + " Aimed at: inside that range, lower the less sure it is, since too hot costs a third more than too"
                        + " cool. Lift within 4 s; your hands take about 3 s."
                        + " This bowl coasts about 1.1 °C at 1 °C/min (0.8 to 1.5), from 3 lifts.",
                said(LIFT));
        assertTrue(
                said(LIFT.with(Figure.AIM_C, 31.45))
                        .contains(
                                "Aimed at: 31.5 °C, lower the less sure it is, since too hot costs a third more than too"
                                        + " cool."),
                said(LIFT.with(Figure.AIM_C, 31.45)));
        Reason cooling =
                Reason.by(Rule.TURN_REACHES_AIM).with(Figure.TURN_C, 27.9).with(Figure.AIM_C, 27.5);
        assertTrue(said(cooling).contains("Aimed at: 27.5 °C."), said(cooling));
        assertTrue(said(LIFT.with(Figure.LEFT_S, 0)).contains("The second is here; your hands take about 3 s."));
        assertTrue(said(LIFT.with(Figure.LIFTS_SEEN, 0)).contains("No lift of this bowl was seen yet; as a guess"));
    }

    @Test
    void aWideBandIsToldAndWhatToDoThen() {
        Reason wide = new Reason(Rule.UPPER_END_REACHES_RANGE, LIFT.figures()).with(Figure.TURN_LOWER_C, 29.9);
        assertTrue(
                said(wide)
                        .contains(
                                "band 29.9 to 32.2; range 31.0 to 32.0. That band is 2.3 °C wide, too unsure for one lift;"
                                        + " so its upper end decides, which reaches 32.0 °C once hands have acted; what is missing"
                                        + " comes by short dips."),
                said(wide));
        Reason narrow = wide.with(Figure.TURN_LOWER_C, 31.1);
        assertFalse(said(narrow).contains("unsure"), said(narrow));
    }

    @Test
    void aDipsSecondsAreReckonedUp() {
        assertEquals(
                "Aimed at: 31.4 °C; range 31.0 to 32.0. It stands at 30.8 °C, 0.6 °C short."
                        + " 2 dips gave 0.060 °C for a second, coast included (give or take 15 %)."
                        + " That makes 8 s, rather short: a dip can be repeated, not undone.",
                said(DIP));
        Reason sum = DIP.with(Figure.CHOCOLATE_C, 30.6)
                .with(Figure.ASKED_AT_C, 30.8)
                .with(Figure.TO_COME_K, 0.12)
                .with(Figure.LOST_K, 0.1)
                .with(Figure.FILM_S, 2);
        assertEquals(
                "Aimed at: 31.40 °C; range 31.0 to 32.0. When it was asked for, it stood at 30.80 °C, 0.60 °C short."
                        + " Up to 0.12 °C may still come by itself, and the room takes about 0.10 °C meanwhile:"
                        + " a dip is to give 0.58 °C."
                        + " 2 dips gave 0.060 °C for a second, coast included (give or take 15 %)."
                        + " That makes about 10 s, less 2 s for the warm water that comes along under the bowl: 8 s,"
                        + " rather short: a dip can be repeated, not undone.",
                said(sum));
        assertTrue(
                said(sum.with(Figure.DIP_S, 4))
                        .endsWith(
                                "under the bowl; 4 s are asked for, since a dip grows only step by step and must not go"
                                        + " over."),
                said(sum.with(Figure.DIP_S, 4)));
        assertTrue(
                said(sum.with(Figure.ASKED_AT_C, 31.38).with(Figure.DIP_S, 1)).endsWith("and no dip is shorter."),
                said(sum));
        assertTrue(
                said(DIP.with(Figure.CHOCOLATE_C, 28))
                        .endsWith(
                                "All of it would take about 55 s; 8 s are asked for, since a dip grows only step by step"
                                        + " and must not go over."),
                said(DIP.with(Figure.CHOCOLATE_C, 28)));
        Reason first = new Reason(Rule.FIRST_DIP, DIP.figures()).with(Figure.BATH_C, 46);
        assertTrue(
                said(first)
                        .endsWith("How this bowl answers this bath is not known yet: a first short dip of 8 s shows it;"
                                + " bath 46.0 °C."),
                said(first));
    }

    /** On the way up it is warned of what comes before hands act, though a lift at this moment would stay within. */
    @Test
    void heatThatComesIsToldOnAndOffTheBath() {
        Reason past = Reason.by(Rule.FORECAST_PASSES_A_LIMIT)
                .with(Figure.CHOCOLATE_C, 32.1)
                .with(Figure.TURN_C, 32.9)
                .with(Figure.LIMIT_C, 32.5)
                .with(Figure.PAST_LIMIT_K, 0.4);
        assertEquals(
                "Off the heat it turns at about 32.9 °C: 0.4 °C over the alarm's limit, 32.5 °C. It stands at 32.1 °C.",
                said(past));
        assertEquals(
                "Off the heat it turns at about 32.3 °C: within the limit, 32.5 °C, which it passes before hands have"
                        + " acted. It stands at 32.1 °C.",
                said(past.with(Figure.TURN_C, 32.3).with(Figure.PAST_LIMIT_K, -0.2)));
    }

    @Test
    void whatComesBeforeHandsActIsToldFirst() {
        Reason past = Reason.by(Rule.FORECAST_PASSES_A_LIMIT)
                .with(Figure.CHOCOLATE_C, 32.1)
                .with(Figure.TURN_C, 32.3)
                .with(Figure.LIMIT_C, 32.5)
                .with(Figure.PAST_LIMIT_K, 0.2)
                .with(Figure.AHEAD_S, 3.5)
                .with(Figure.AHEAD_C, 32.7);
        assertEquals(
                "Before hands have acted it is at about 32.7 °C: 0.2 °C over the alarm's limit, 32.5 °C."
                        + " Off the heat it turns at about 32.3 °C. It stands at 32.1 °C.",
                said(past));
    }

    /** What is taken from what is written there comes to what is written there, whatever the figures behind it are. */
    @Test
    void theFiguresOfADipAddUpAsTheyStand() {
        Reason sum = DIP.with(Figure.AIM_C, 31.4461)
                .with(Figure.ASKED_AT_C, 26.8968)
                .with(Figure.TO_COME_K, 0.4651)
                .with(Figure.LOST_K, 0.0)
                .with(Figure.FILM_S, 2);
        assertTrue(
                said(sum)
                        .startsWith(
                                "Aimed at: 31.45 °C; range 31.0 to 32.0. When it was asked for, it stood at 26.90 °C,"
                                        + " 4.55 °C short. Up to 0.47 °C may still come by itself: a dip is to give 4.08 °C."),
                said(sum));
    }

    @Test
    void whatHardlyMovesIsSteady() {
        Reason settled = Reason.by(Rule.SETTLED)
                .with(Figure.CHOCOLATE_C, 31.4)
                .with(Figure.RANGE_LOW_C, 31)
                .with(Figure.RANGE_HIGH_C, 32);
        assertEquals(
                "It stands at 31.4 °C, in the range 31.0 to 32.0, and hardly moves.",
                said(settled.with(Figure.RATE_K_PER_MIN, -0.03)));
        assertTrue(said(settled.with(Figure.RATE_K_PER_MIN, -0.2)).endsWith("hardly moves: falling 0.2 °C a minute."));
    }

    /** Past is over where it is hot and under where it is cold, and the end is a temperature that can be looked for. */
    @Test
    void anAlarmsLimitAndEndAreTemperatures() {
        Reason cold = Reason.by(Rule.PAST_A_LIMIT)
                .with(Figure.CHOCOLATE_C, 30.1)
                .with(Figure.RATE_K_PER_MIN, 0.01)
                .with(Figure.LIMIT_C, 30.5)
                .with(Figure.PAST_LIMIT_K, 0.4)
                .with(Figure.DEADBAND_K, 0.3);
        assertEquals(
                "It stands at 30.1 °C, steady: 0.4 °C under the alarm's limit, 30.5 °C. The alarm ends at 30.8 °C.",
                said(cold));
        Reason hot =
                cold.with(Figure.CHOCOLATE_C, 33.0).with(Figure.LIMIT_C, 32.5).with(Figure.PAST_LIMIT_K, 0.5);
        assertEquals(
                "It stands at 33.0 °C, steady: 0.5 °C over the alarm's limit, 32.5 °C. The alarm ends at 32.2 °C.",
                said(hot));
        assertEquals(
                "It stands at 32.3 °C, steady: back within the alarm's limit, 32.5 °C. The alarm ends at 32.2 °C.",
                said(hot.with(Figure.CHOCOLATE_C, 32.3).with(Figure.PAST_LIMIT_K, -0.2)));
    }

    @ParameterizedTest
    @EnumSource(Rule.class)
    void everyRuleHasWordsOfItsOwn(Rule rule) {
        Map<Figure, Double> all = new EnumMap<>(Figure.class);
        for (Figure figure : Figure.values()) all.put(figure, 31.5);
        Reason full = new Reason(rule, all);
        for (Rule other : Rule.values())
            if (other != rule) assertFalse(said(full).equals(said(new Reason(other, all))), rule + " as " + other);
        String fahrenheit = String.join(" ", ReasonWords.of(full, Units.FAHRENHEIT));
        assertFalse(fahrenheit.contains("°C"), fahrenheit);
        assertEquals(said(full).contains("°C"), fahrenheit.contains("°F"));
        assertFalse(said(full).isBlank());
        for (String sentence : ReasonWords.of(full, Units.CELSIUS))
            assertTrue(Character.isUpperCase(sentence.codePointAt(0)) || !Character.isLetter(sentence.codePointAt(0)));
    }

    /** A session of another version may have kept fewer figures. */
    @ParameterizedTest
    @EnumSource(Rule.class)
    void aReasonWithoutFiguresStopsNobody(Rule rule) {
        List<String> sentences = ReasonWords.of(Reason.by(rule), Units.CELSIUS);
        assertFalse(String.join("", sentences).contains("null"));
    }

    private static String said(Reason reason) {
        return String.join(" ", ReasonWords.of(reason, Units.CELSIUS));
    }
}
