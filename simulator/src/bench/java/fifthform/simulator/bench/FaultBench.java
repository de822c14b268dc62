package fifthform.simulator.bench;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.LongStream;

/**
 * Whether the fault finder finds the cause: {@code java … FaultBench BATCHES SEED}. So many batches of each mishap are drawn; those count
 * in which it shows on the bars.
 */
public final class FaultBench {
    private FaultBench() {}

    public static void main(String[] arguments) {
        int batches = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 20;
        long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 71;
        Fleet fleet = Fleet.builtIn(Fleet.HOME).withSeed(seed);
        long failed = 0;
        long unasked = 0;
        long first = 0;
        long three = 0;
        long claims = 0;
        long rightClaims = 0;
        double questions = 0;
        for (Mishap mishap : Mishap.values()) {
            int drawn = mishap == Mishap.NONE ? 6 * batches : batches;
            List<BarTrial> shown = LongStream.range(0, drawn)
                    .parallel()
                    .mapToObj(n -> BarTrial.of(fleet, n, mishap))
                    .filter(BarTrial::shows)
                    .toList();
            Map<String, Long> said = shown.stream()
                    .collect(Collectors.groupingBy(
                            t -> t.after().word() + " "
                                    + t.after().suspects().get(0).fault().word(),
                            TreeMap::new,
                            Collectors.counting()));
            if (mishap == Mishap.NONE) {
                long claimed = shown.stream()
                        .filter(t -> t.after().claimed().isPresent())
                        .count();
                System.out.printf(
                        Locale.ROOT,
                        "sound: %d drawn, %d sound, no cause claimed in %s; of them marked %d%n  %s%n",
                        drawn,
                        shown.size(),
                        share(shown.size() - claimed, shown.size()),
                        shown.stream().filter(BarTrial::isBad).count(),
                        said);
                continue;
            }
            long right = shown.stream().filter(BarTrial::isFirst).count();
            System.out.printf(
                    Locale.ROOT,
                    "%s (%s): %d drawn, shows in %d, first unasked %d, first %d, among three %d  %s%n",
                    mishap,
                    mishap.truth().word(),
                    drawn,
                    shown.size(),
                    shown.stream().filter(BarTrial::wasFirstUnasked).count(),
                    right,
                    shown.stream().filter(BarTrial::isAmongThree).count(),
                    right == shown.size() ? "" : said);
            failed += shown.size();
            first += right;
            unasked += shown.stream().filter(BarTrial::wasFirstUnasked).count();
            three += shown.stream().filter(BarTrial::isAmongThree).count();
            claims += shown.stream().filter(t -> t.after().claimed().isPresent()).count();
            rightClaims += shown.stream()
                    .filter(t -> t.after().claimed().isPresent() && t.isFirst())
                    .count();
            questions += shown.stream().mapToInt(BarTrial::asked).sum();
        }
        System.out.printf(
                Locale.ROOT,
                "%d failed batches: true cause first %s, among three %s; unasked first %s; claimed %s, right %s; %.1f questions%n",
                failed,
                share(first, failed),
                share(three, failed),
                share(unasked, failed),
                share(claims, failed),
                share(rightClaims, claims),
                questions / Math.max(1, failed));
    }

    private static String share(long part, long all) {
        Interval interval = Interval.ofProportion(part, Math.max(1, all));
        return String.format(
                Locale.ROOT,
                "%d of %d, %.1f %% (%.1f to %.1f)",
                part,
                all,
                100.0 * part / Math.max(1, all),
                100 * interval.low(),
                100 * interval.high());
    }
}
