package fifthform.simulator.bench;

import fifthform.curves.input.AlarmId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What many batches with one ugliness came to. */
final class UglyReport {
    private final Map<AlarmId, Integer> falseUrgent = new EnumMap<>(AlarmId.class);
    private final List<String> where = new ArrayList<>();
    private final List<Double> noticedSeconds = new ArrayList<>();
    private int episodes;
    private int unnoticed;
    private double wrongAndSureSeconds;
    private double hours;
    private int batches;

    void batch(double lastedHours) {
        batches++;
        hours += lastedHours;
    }

    void falseUrgent(AlarmId alarm, String at) {
        falseUrgent.merge(alarm, 1, Integer::sum);
        if (where.size() < 20) where.add(alarm + " " + at);
    }

    void episode() {
        episodes++;
    }

    void noticed(double seconds) {
        noticedSeconds.add(seconds);
    }

    void unnoticed() {
        unnoticed++;
    }

    void wrongAndSure(double seconds) {
        wrongAndSureSeconds += seconds;
    }

    double falseUrgentAnHour() {
        return falseUrgent.values().stream().mapToInt(Integer::intValue).sum() / hours;
    }

    /** Seconds within which this share of the episodes was noticed; infinite where fewer were. */
    double noticedWithin(double share) {
        List<Double> sorted = new ArrayList<>(noticedSeconds);
        Collections.sort(sorted);
        int needed = (int) Math.ceil(share * episodes);
        return needed <= sorted.size() && needed > 0 ? sorted.get(needed - 1) : Double.POSITIVE_INFINITY;
    }

    int episodes() {
        return episodes;
    }

    List<String> where() {
        return where;
    }

    String line(Ugliness ugliness) {
        String seen = episodes == 0
                ? "-"
                : String.format(
                        Locale.ROOT,
                        "%d episodes, unsure within %.1f s (half), %.1f s (nine in ten), never %d",
                        episodes,
                        noticedWithin(0.5),
                        noticedWithin(0.9),
                        unnoticed);
        return String.format(
                Locale.ROOT,
                "%-26s %3d batches %5.0f h: false urgent %.2f an hour %s; wrong by 1 K and forecasting %.1f s an hour; %s",
                ugliness,
                batches,
                hours,
                falseUrgentAnHour(),
                falseUrgent,
                wrongAndSureSeconds / hours,
                seen);
    }
}
