package fifthform.monitor.model;

import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.monitor.settings.Units;
import java.util.List;
import java.util.OptionalDouble;

/** How the seconds of a short dip came about. */
final class DipWords {
    private static final double MUCH_MORE = 1.6;

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
        return List.of(
                missing(), dips() + " gave " + perSecond() + " for a second, coast included" + spread() + ".", makes());
    }

    /** What is asked for may be much less than what is missing: a dip grows only step by step, and stays on the safe side. */
    private String makes() {
        double asked = of(Figure.DIP_S).orElse(0);
        double all = missingKelvin() / Math.max(1e-6, of(Figure.DIP_K_PER_S).orElse(1));
        return all > MUCH_MORE * asked
                ? "All of it would take about " + Spans.about(all) + "; asked for are" + count(" ")
                        + ", since a dip grows only step by step and must not go over."
                : "That makes" + count(" ") + ", rather short: a dip can be repeated, not undone.";
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
        return "Aimed at: " + celsius(Figure.AIM_C) + range + ". It stands at " + celsius(Figure.CHOCOLATE_C) + ", "
                + units.difference(Math.abs(missingKelvin())) + (missingKelvin() > 0 ? " short" : " above it") + ".";
    }

    private double missingKelvin() {
        double now = of(Figure.CHOCOLATE_C).orElse(0);
        return of(Figure.AIM_C).orElse(now) - now;
    }

    private String celsius(Figure figure) {
        return of(figure).isPresent() ? units.withUnit(of(figure).getAsDouble()) : "–";
    }

    private String dips() {
        long dips = Math.round(of(Figure.DIPS_SEEN).orElse(0));
        return dips == 1 ? "One dip" : dips + " dips";
    }

    private String perSecond() {
        return Units.format("%.2f", units.shownDifference(of(Figure.DIP_K_PER_S).orElse(0))) + " " + units.symbol();
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
