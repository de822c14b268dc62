package fifthform.monitor.model;

import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.WhyText;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** How the seconds of a short dip came about. */
final class DipWords {
    private static final double MUCH_MORE = 1.6;

    /** A sum that comes out so near is told as it was asked. */
    private static final double SAME_SECONDS = 0.75;

    private static final double WORTH_A_WORD_KELVIN = 0.03;
    private static final WhyText STEP_BY_STEP = WhyText.SINCE_A_DIP_GROWS_ONLY_STEP;
    private static final WhyText REPEATED = WhyText.RATHER_SHORT_A_DIP_CAN_BE;

    private final Reason reason;
    private final Units units;

    DipWords(Reason reason, Units units) {
        this.reason = reason;
        this.units = units;
    }

    List<String> first() {
        return List.of(missing(), WhyText.HOW_THIS_BOWL_ANSWERS_THIS.say(count(WhyText.OF.say()), bath()));
    }

    List<String> byEarlierDips() {
        List<String> said = new ArrayList<>();
        said.add(missing());
        if (isSumKnown()) said.add(toGive());
        said.add(WhyText.GAVE_FOR_A_SECOND_COAST.say(dips(), perSecond(), spread()));
        said.add(makes());
        return said;
    }

    /** What a dip is to give: what is missing, less what comes without it, and what the room takes meanwhile. */
    private String toGive() {
        double toCome = of(Figure.TO_COME_K).orElse(0);
        double lost = of(Figure.LOST_K).orElse(0);
        List<String> parts = new ArrayList<>();
        if (toCome >= WORTH_A_WORD_KELVIN) parts.add(WhyText.UP_TO_MAY_STILL_COME_BY.say(kelvin(toCome)));
        if (lost >= WORTH_A_WORD_KELVIN) parts.add(WhyText.THE_ROOM_TAKES_ABOUT_MEANWHILE.say(kelvin(lost)));
        String sum = String.join(WhyText.AND.say(), parts);
        String gives = WhyText.A_DIP_IS_TO_GIVE.say(written(Math.max(0, toGiveAsWritten())));
        return begun(sum.isEmpty() ? gives : sum + ": " + gives);
    }

    /**
     * The sum to its end. What is asked for may be much less than what comes out: a dip grows only step by step, and stays
     * on the safe side.
     */
    private String makes() {
        double asked = of(Figure.DIP_S).orElse(0);
        double wet = toGiveKelvin() / Math.max(1e-6, of(Figure.DIP_K_PER_S).orElse(1));
        double film = of(Figure.FILM_S).orElse(0);
        double comes = wet - film;
        if (!isSumKnown())
            return comes > MUCH_MORE * asked
                    ? WhyText.ALL_OF_IT_WOULD_TAKE_ABOUT.say(Spans.about(comes), count(" "), STEP_BY_STEP.say())
                    : WhyText.THAT_MAKES.say(count(" "), REPEATED.say());
        String sum = WhyText.THAT_MAKES_ABOUT_LESS_FOR_THE.say(Spans.about(wet), Spans.about(film));
        if (Math.abs(comes - asked) <= SAME_SECONDS) return sum + ":" + count(" ") + REPEATED.say();
        return comes < asked
                ? WhyText.ASKED_FOR_ARE_AND_NO_DIP.say(sum, count(" "))
                : WhyText.ASKED_FOR_ARE.say(sum, count(" "), STEP_BY_STEP.say());
    }

    List<String> byCoast() {
        return List.of(missing(), WhyText.BY_THE_RATE_AT_THE_LAST.say(coast(), count(" ")));
    }

    List<String> tooLittle() {
        return List.of(WhyText.GAVE_FOR_A_MINUTE_OVER_THIS.say(dips(), perMinute(), bath()));
    }

    /** What is aimed at, and how far that is. */
    private String missing() {
        String range =
                of(Figure.RANGE_LOW_C).isPresent() && of(Figure.RANGE_HIGH_C).isPresent()
                        ? WhyText.AND_RANGE_FROM_TO.say(
                                units.oneDecimal(of(Figure.RANGE_LOW_C).getAsDouble()),
                                units.oneDecimal(of(Figure.RANGE_HIGH_C).getAsDouble()))
                        : "";
        Figure from = isSumKnown() ? Figure.ASKED_AT_C : Figure.CHOCOLATE_C;
        String stands = isSumKnown() ? WhyText.WHEN_IT_WAS_ASKED_FOR_IT.say() : WhyText.IT_STANDS_AT.say();
        boolean exact = isSumKnown() && of(Figure.AIM_C).isPresent();
        return WhyText.AIMED_AT_DIP.say(
                exact ? exactly(Figure.AIM_C) : celsius(Figure.AIM_C),
                range,
                stands,
                exact ? exactly(from) : celsius(from),
                exact ? written(Math.abs(missingAsWritten())) : units.difference(Math.abs(missingKelvin())),
                missingKelvin() > 0 ? WhyText.SHORT.say() : WhyText.ABOVE_IT.say());
    }

    private double missingKelvin() {
        double then = of(Figure.ASKED_AT_C).orElse(of(Figure.CHOCOLATE_C).orElse(0));
        return of(Figure.AIM_C).orElse(then) - then;
    }

    private double toGiveKelvin() {
        return missingKelvin()
                - of(Figure.TO_COME_K).orElse(0)
                + of(Figure.LOST_K).orElse(0);
    }

    /** Sessions of an older version kept what was decided by, but not the sum. */
    private boolean isSumKnown() {
        return of(Figure.ASKED_AT_C).isPresent() && of(Figure.FILM_S).isPresent();
    }

    /** What is to be given by the figures that stand there, so that who takes one from the other comes to the same. */
    private double toGiveAsWritten() {
        double toCome = of(Figure.TO_COME_K).orElse(0);
        double lost = of(Figure.LOST_K).orElse(0);
        return missingAsWritten()
                - (toCome >= WORTH_A_WORD_KELVIN ? rounded(units.shownDifference(toCome)) : 0)
                + (lost >= WORTH_A_WORD_KELVIN ? rounded(units.shownDifference(lost)) : 0);
    }

    private double missingAsWritten() {
        double then = of(Figure.ASKED_AT_C).orElse(0);
        return rounded(units.shown(of(Figure.AIM_C).orElse(then))) - rounded(units.shown(then));
    }

    private static double rounded(double shown) {
        return Math.round(100 * shown) / 100.0;
    }

    /** To two decimals, so that who reckons after it comes to the same seconds. */
    private String kelvin(double kelvin) {
        return written(units.shownDifference(kelvin));
    }

    private String written(double shown) {
        return Units.format("%.2f", shown) + " " + units.symbol();
    }

    private String exactly(Figure figure) {
        return written(units.shown(of(figure).orElseThrow()));
    }

    private static String begun(String sentence) {
        return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }

    private String celsius(Figure figure) {
        return of(figure).isPresent() ? units.withUnit(of(figure).getAsDouble()) : "–";
    }

    private String dips() {
        long dips = Math.round(of(Figure.DIPS_SEEN).orElse(0));
        return WhyText.DIPS.say(dips);
    }

    private String perSecond() {
        return Units.format("%.3f", units.shownDifference(of(Figure.DIP_K_PER_S).orElse(0))) + " " + units.symbol();
    }

    private String perMinute() {
        return units.difference(60 * of(Figure.DIP_K_PER_S).orElse(0));
    }

    private String spread() {
        OptionalDouble spread = of(Figure.DIP_LOG_SPREAD);
        return spread.isEmpty() ? "" : WhyText.GIVE_OR_TAKE_PERCENT.say(Math.round(100 * spread.getAsDouble()));
    }

    private String coast() {
        OptionalDouble coast = of(Figure.COAST_S);
        return coast.isEmpty() ? "" : ", " + CoastWords.about(coast.getAsDouble(), units);
    }

    private String bath() {
        OptionalDouble bath = of(Figure.BATH_C);
        return bath.isEmpty() ? "" : WhyText.OVER_BATH_OF.say(units.withUnit(bath.getAsDouble()));
    }

    private String count(String before) {
        OptionalDouble seconds = of(Figure.DIP_S);
        return before + (seconds.isEmpty() ? WhyText.A_FEW_SECONDS.say() : Spans.about(seconds.getAsDouble()));
    }

    private OptionalDouble of(Figure figure) {
        return reason.figure(figure);
    }
}
