package fifthform.simulator.proofs;

import fifthform.curves.proof.TemperClass;
import fifthform.curves.proof.Verdict;
import fifthform.simulator.tube.TubeTrouble;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * How proofs come out over many kitchens: two samples of each class in each (one judged by the model's line, one by own
 * good curves), and one of each trouble.
 *
 * <p>A sample counts for "class right" where its seed lies at least a factor {@value #AWAY} from the nearest edge: what one
 * kitchen's mass, seed size and butter do to a bend is worth a factor of about 1.4 in seed, one standard deviation, so
 * nearer ones are right to come out either way. By own curves the good bowls are 1.2 to 3 % of seed, as those were that
 * taught them.
 */
public final class ProofFigures {
    /** How far from an edge a sample must be, as a factor in seed. */
    public static final double AWAY = 1.8;

    private static final double NONE_BELOW = 0.001;
    private static final double UNDER_BELOW = 0.005;
    private static final double OVER_ABOVE = 0.06;
    private static final double MOST = 0.15;
    private static final double[][] BY_MODEL = {
        {1e-5, NONE_BELOW / AWAY},
        {NONE_BELOW * AWAY, UNDER_BELOW / AWAY},
        {UNDER_BELOW * AWAY, OVER_ABOVE / AWAY},
        {OVER_ABOVE * AWAY, MOST}
    };
    private static final double[][] BY_OWN = {
        {1e-5, 0.0005}, {NONE_BELOW * AWAY, UNDER_BELOW / AWAY}, {0.012, 0.03}, {OVER_ABOVE * AWAY, MOST}
    };

    private final Map<TemperClass, Map<String, Integer>> byModel = new EnumMap<>(TemperClass.class);
    private final Map<TemperClass, Map<String, Integer>> byOwn = new EnumMap<>(TemperClass.class);
    private final Map<TubeTrouble, Map<String, Integer>> troubles = new EnumMap<>(TubeTrouble.class);
    private int slopes;
    private int slopesRight;
    private double worstSlope;

    private ProofFigures() {}

    /** Goes through kitchens with these seeds. */
    public static ProofFigures of(long firstSeed, int kitchens) {
        ProofFigures figures = new ProofFigures();
        for (int i = 0; i < kitchens; i++) figures.add(firstSeed + i);
        return figures;
    }

    private void add(long seed) {
        ProofKitchen kitchen = new ProofKitchen(seed);
        SplittableRandom random = new SplittableRandom(~seed);
        kitchen.learn();
        for (int c = 0; c < BY_MODEL.length; c++) {
            TemperClass truth = TemperClass.values()[c];
            count(byModel, truth, kitchen.proveProvisionally(seeded(c, BY_MODEL, random), TubeTrouble.NONE));
            count(byOwn, truth, kitchen.proveByOwn(seeded(c, BY_OWN, random), TubeTrouble.NONE));
        }
        for (TubeTrouble trouble : TubeTrouble.values()) {
            if (trouble == TubeTrouble.NONE) continue;
            ProofKitchen.Proved proved = kitchen.proveProvisionally(logBetween(0.001, 0.08, random), trouble);
            String told =
                    proved.unfit().isEmpty() ? "judged" : proved.unfit().get(0).word();
            troubles.computeIfAbsent(trouble, t -> new TreeMap<>()).merge(told, 1, Integer::sum);
        }
    }

    private static double seeded(int index, double[][] ranges, SplittableRandom random) {
        if (index == 0 && random.nextDouble() < 0.5) return 0;
        return logBetween(ranges[index][0], ranges[index][1], random);
    }

    private static double logBetween(double low, double high, SplittableRandom random) {
        return low * StrictMath.exp(random.nextDouble() * StrictMath.log(high / low));
    }

    private void count(Map<TemperClass, Map<String, Integer>> table, TemperClass truth, ProofKitchen.Proved proved) {
        String told = proved.verdict().map(v -> v.temper().word()).orElse("refused");
        table.computeIfAbsent(truth, t -> new TreeMap<>()).merge(told, 1, Integer::sum);
        if (Double.isNaN(proved.trueSlope())) return;
        proved.verdict().flatMap(Verdict::bend).ifPresent(bend -> {
            double off = Math.abs(bend.kelvinPerMinute() - proved.trueSlope());
            slopes++;
            if (off <= Math.max(0.1, 0.05 * Math.abs(proved.trueSlope()))) slopesRight++;
            worstSlope = Math.max(worstSlope, off);
        });
    }

    /** Of the samples that were given a class, the share that got their own; by the model's line. */
    public double rightByModel() {
        return right(byModel);
    }

    /** The same by own good curves. */
    public double rightByOwn() {
        return right(byOwn);
    }

    /** Share of fit samples that were told to be unclear by the model's line. */
    public double unclear() {
        return share(List.of(byModel), TemperClass.UNCLEAR.word());
    }

    /** Share of fit samples that were refused. */
    public double fitRefused() {
        return share(List.of(byModel, byOwn), "refused");
    }

    /** Share of unfit samples that were refused, for whatever reason. */
    public double unfitRefused() {
        int all = 0;
        int judged = 0;
        for (Map<String, Integer> told : troubles.values()) {
            all += sum(told);
            judged += told.getOrDefault("judged", 0);
        }
        return 1 - (double) judged / all;
    }

    /** Share of bends whose slope is within 5 % or 0.1 K/min of that of the tip itself, whichever is more. */
    public double slopesRight() {
        return (double) slopesRight / slopes;
    }

    /** Greatest error of a slope, K/min. */
    public double worstSlope() {
        return worstSlope;
    }

    /** How many curves were judged or refused. */
    public int curves() {
        int all = 0;
        for (Map<String, Integer> told : byModel.values()) all += sum(told);
        for (Map<String, Integer> told : byOwn.values()) all += sum(told);
        for (Map<String, Integer> told : troubles.values()) all += sum(told);
        return all;
    }

    private static double right(Map<TemperClass, Map<String, Integer>> table) {
        int decided = 0;
        int right = 0;
        for (Map.Entry<TemperClass, Map<String, Integer>> row : table.entrySet()) {
            Map<String, Integer> told = row.getValue();
            decided += sum(told) - told.getOrDefault("refused", 0) - told.getOrDefault(TemperClass.UNCLEAR.word(), 0);
            right += told.getOrDefault(row.getKey().word(), 0);
        }
        return (double) right / decided;
    }

    private static double share(List<Map<TemperClass, Map<String, Integer>>> tables, String word) {
        int all = 0;
        int hits = 0;
        for (Map<TemperClass, Map<String, Integer>> table : tables) {
            for (Map<String, Integer> told : table.values()) {
                all += sum(told);
                hits += told.getOrDefault(word, 0);
            }
        }
        return (double) hits / all;
    }

    private static int sum(Map<String, Integer> counts) {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** All of it, for people. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(curves() + " curves");
        byModel.forEach((truth, told) -> lines.add("by the model's line, really " + truth.word() + ": " + told));
        byOwn.forEach((truth, told) -> lines.add("by own good curves, really " + truth.word() + ": " + told));
        troubles.forEach((trouble, told) -> lines.add("trouble " + trouble + ": " + told));
        lines.add(String.format(
                Locale.ROOT,
                "class right where one was given: model %.1f %%, own %.1f %%; unclear by the model %.1f %%; fit refused %.2f %%; unfit refused"
                        + " %.2f %%; slope right %.1f %%, worst %.2f K/min",
                100 * rightByModel(),
                100 * rightByOwn(),
                100 * unclear(),
                100 * fitRefused(),
                100 * unfitRefused(),
                100 * slopesRight(),
                worstSlope));
        return lines;
    }
}
