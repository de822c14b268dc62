package fifthform.monitor.replay;

import fifthform.monitor.model.Spans;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.ReplayText;
import java.time.Duration;
import java.util.OptionalLong;

/** What lies between the two cursors, in words. */
final class CursorWords {
    private static final double MINUTE_NANOS = 60e9;

    private final Readings bowl;
    private final Units units;

    CursorWords(Readings bowl, Units units) {
        this.bowl = bowl;
        this.units = units;
    }

    String of(OptionalLong a, OptionalLong b) {
        if (a.isEmpty() && b.isEmpty()) return "";
        if (a.isEmpty()) return ReplayText.CURSOR_ONE.say("B", shown(b.getAsLong()), "A");
        if (b.isEmpty()) return ReplayText.CURSOR_ONE.say("A", shown(a.getAsLong()), "B");
        long apart = b.getAsLong() - a.getAsLong();
        String span = (apart < 0 ? "−" : "") + Spans.words(Duration.ofNanos(Math.abs(apart)));
        int from = at(a.getAsLong());
        int to = at(b.getAsLong());
        if (from < 0 || to < 0) return ReplayText.CURSOR_NO_READING.say(span);
        double kelvin = bowl.celsius(to) - bowl.celsius(from);
        if (apart == 0) return ReplayText.CURSOR_SAME.say(shown(a.getAsLong()));
        double rate = kelvin / (apart / MINUTE_NANOS);
        return ReplayText.CURSORS.say(span, signed("%+.1f", kelvin) + " " + units.symbol(), rate(rate));
    }

    private String rate(double kelvinPerMinute) {
        String size = Units.format("%.2f", Math.abs(units.shownDifference(kelvinPerMinute)));
        if (size.equals("0.00")) return ReplayText.RATE_STEADY.say();
        return (kelvinPerMinute > 0 ? ReplayText.RATE_RISES : ReplayText.RATE_FALLS).say(size, units.symbol());
    }

    private String signed(String pattern, double kelvin) {
        return Units.format(pattern, units.shownDifference(kelvin)).replace('-', '−');
    }

    private String shown(long nanos) {
        int at = at(nanos);
        return Clock.elapsed(nanos) + (at < 0 ? "" : ", " + units.withUnit(bowl.celsius(at)));
    }

    /** The reading nearest before the cursor; none where none came for so long. */
    private int at(long nanos) {
        int at = bowl.lastAt(nanos);
        return at >= 0 && nanos - bowl.nanos(at) <= bowl.gapNanos() ? at : -1;
    }
}
