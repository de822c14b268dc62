package fifthform.monitor.model;

import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.monitor.settings.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** How the seconds of a short dip came about. */
final class DipWords {
    private static final double MUCH_MORE = 1.6;

    /** A sum that comes out so near is told as it was asked. */
    private static final double SAME_SECONDS = 0.75;

    private static final double WORTH_A_WORD_KELVIN = 0.03;
    private static final String STEP_BY_STEP = ", since a dip grows only step by step and must not go over.";
    private static final String REPEATED = ", rather short: a dip can be repeated, not undone.";

    private final Reason reason;
    private final Units units;

    DipWords(Reason reason, Units units) {
        this.reason = reason;
        this.units = units;
    }

    List<String> first() {
        return List.of(
                missing(),
                "How this bowl answers this bath is not known yet: a first short dip" + count(" of ") + " shows it"
                        + bath() + ".");
    }

    List<String> byEarlierDips() {
        List<String> said = new ArrayList<>();
        said.add(missing());
        if (isSumKnown()) said.add(toGive());
        said.add(dips() + " gave " + perSecond() + " for a second, coast included" + spread() + ".");
        said.add(makes());
        return said;
    }

    /** What a dip is to give: what is missing, less what comes without it, and what the room takes meanwhile. */
    private String toGive() {
        double toCome = of(Figure.TO_COME_K).orElse(0);
        double lost = of(Figure.LOST_K).orElse(0);
        List<String> parts = new ArrayList<>();
        if (toCome >= WORTH_A_WORD_KELVIN) parts.add("up to " + kelvin(toCome) + " may still come by itself");
        if (lost >= WORTH_A_WORD_KELVIN) parts.add("the room takes about " + kelvin(lost) + " meanwhile");
        String sum = String.join(", and ", parts);
        String gives = "a dip is to give " + kelvin(Math.max(0, toGiveKelvin())) + ".";
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
                    ? "All of it would take about " + Spans.about(comes) + "; asked for are" + count(" ") + STEP_BY_STEP
                    : "That makes" + count(" ") + REPEATED;
        String sum = "That makes about " + Spans.about(wet) + ", less " + Spans.about(film)
                + " for the warm water that comes along under the bowl";
        if (Math.abs(comes - asked) <= SAME_SECONDS) return sum + ":" + count(" ") + REPEATED;
        return comes < asked
                ? sum + "; asked for are" + count(" ") + ", and no dip is shorter."
                : sum + "; asked for are" + count(" ") + STEP_BY_STEP;
    }

    List<String> byCoast() {
        return List.of(
                missing(),
                "By the rate at the last lift and this bowl's coast" + coast() + ", that makes" + count(" ")
                        + ", rather short: it can be repeated, not undone.");
    }

    List<String> tooLittle() {
        return List.of(dips() + " gave " + perMinute() + " for a minute over this bath" + bath()
                + ": too little to get there.");
    }

    /** What is aimed at, and how far that is. */
    private String missing() {
        String range =
                of(Figure.RANGE_LOW_C).isPresent() && of(Figure.RANGE_HIGH_C).isPresent()
                        ? "; range " + units.oneDecimal(of(Figure.RANGE_LOW_C).getAsDouble()) + " to "
                                + units.oneDecimal(of(Figure.RANGE_HIGH_C).getAsDouble())
                        : "";
        Figure from = isSumKnown() ? Figure.ASKED_AT_C : Figure.CHOCOLATE_C;
        String stands = isSumKnown() ? "When it was asked for it stood at " : "It stands at ";
        return "Aimed at: " + celsius(Figure.AIM_C) + range + ". " + stands + celsius(from) + ", "
                + (isSumKnown() ? kelvin(Math.abs(missingKelvin())) : units.difference(Math.abs(missingKelvin())))
                + (missingKelvin() > 0 ? " short" : " above it") + ".";
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

    /** To two decimals, so that who reckons after it comes to the same seconds. */
    private String kelvin(double kelvin) {
        return Units.format("%.2f", units.shownDifference(kelvin)) + " " + units.symbol();
    }

    private static String begun(String sentence) {
        return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }

    private String celsius(Figure figure) {
        return of(figure).isPresent() ? units.withUnit(of(figure).getAsDouble()) : "–";
    }

    private String dips() {
        long dips = Math.round(of(Figure.DIPS_SEEN).orElse(0));
        return dips == 1 ? "One dip" : dips + " dips";
    }

    private String perSecond() {
        return Units.format("%.3f", units.shownDifference(of(Figure.DIP_K_PER_S).orElse(0))) + " " + units.symbol();
    }

    private String perMinute() {
        return units.difference(60 * of(Figure.DIP_K_PER_S).orElse(0));
    }

    private String spread() {
        OptionalDouble spread = of(Figure.DIP_LOG_SPREAD);
        return spread.isEmpty() ? "" : " (give or take " + Math.round(100 * spread.getAsDouble()) + " %)";
    }

    private String coast() {
        OptionalDouble coast = of(Figure.COAST_S);
        return coast.isEmpty() ? "" : ", " + CoastWords.about(coast.getAsDouble(), units);
    }

    private String bath() {
        OptionalDouble bath = of(Figure.BATH_C);
        return bath.isEmpty() ? "" : "; bath " + units.withUnit(bath.getAsDouble());
    }

    private String count(String before) {
        OptionalDouble seconds = of(Figure.DIP_S);
        return before + (seconds.isEmpty() ? "a few seconds" : Spans.about(seconds.getAsDouble()));
    }

    private OptionalDouble of(Figure figure) {
        return reason.figure(figure);
    }
}
