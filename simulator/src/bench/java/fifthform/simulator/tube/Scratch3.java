package fifthform.simulator.tube;
import fifthform.curves.proof.*;
import fifthform.simulator.proofs.ProofKitchen;
import java.util.*;
public class Scratch3 {
    public static void main(String[] a) {
        int kitchens = Integer.parseInt(a[0]); long base = Long.parseLong(a[1]); double away = Double.parseDouble(a[2]);
        double[][] ranges = {{0, .001 / away}, {.001 * away, .005 / away}, {.005 * away, .06 / away}, {.06 * away, .15}};
        int[][] conf = new int[4][6], own = new int[4][6];
        Map<TubeTrouble, Map<String, Integer>> un = new EnumMap<>(TubeTrouble.class);
        Map<String, Integer> fitRef = new TreeMap<>();
        int slopeOk = 0, slopeN = 0; double worst = 0; double[] bias = {0};
        Map<TemperClass,int[]> sl = new EnumMap<>(TemperClass.class);
        for (int k = 0; k < kitchens; k++) {
            ProofKitchen kit;
            try { kit = new ProofKitchen(base + k); } catch (RuntimeException e) { System.out.println("kitchen " + k + " " + e); continue; }
            SplittableRandom r = new SplittableRandom(base * 7 + k);
            kit.learn();
            for (int m = 0; m < 2; m++) for (int c = 0; c < 4; c++) {
                double[][] ow = {{0, .0005}, {.0018, .0028}, {.012, .03}, {.108, .15}}; if (m == 1) ranges[c] = ow[c]; else ranges = new double[][] {{0, .001 / away}, {.001 * away, .005 / away}, {.005 * away, .06 / away}, {.06 * away, .15}};
 double lo = Math.max(ranges[c][0], c == 0 ? 1e-5 : 0), hi = ranges[c][1];
                double s = c == 0 && r.nextDouble() < .5 ? 0 : lo * Math.exp(r.nextDouble() * Math.log(hi / lo));
                ProofKitchen.Proved p = m == 0 ? kit.proveProvisionally(s, TubeTrouble.NONE) : kit.proveByOwn(s, TubeTrouble.NONE);
                int[][] t = m == 0 ? conf : own;
                if (!p.unfit().isEmpty()) { t[c][5]++; System.out.println("refused " + TemperClass.values()[c] + s + p.unfit()); fitRef.merge(p.unfit().toString(), 1, Integer::sum); continue; }
                t[c][p.verdict().get().temper().ordinal()]++;
                if (m == 0 && a.length > 3 && p.verdict().get().temper().ordinal() != c) System.out.println("k" + k + " seed " + s + " -> " + p.verdict().get());
                if (p.verdict().get().bend().isPresent() && !Double.isNaN(p.trueSlope())) {
                    double off = p.verdict().get().bend().get().kelvinPerMinute() - p.trueSlope();
                    slopeN++; bias[0] += off; int[] q = sl.computeIfAbsent(TemperClass.values()[c], x -> new int[2]); q[1]++;
                    if (Math.abs(off) <= Math.max(.1, .05 * Math.abs(p.trueSlope()))) { slopeOk++; q[0]++; } else System.out.printf("slope %s seed %.4f measured %.3f true %.3f%n", TemperClass.values()[c], s, p.verdict().get().bend().get().kelvinPerMinute(), p.trueSlope()); worst = Math.max(worst, Math.abs(off));
                }
            }
            for (TubeTrouble t : TubeTrouble.values()) {
                if (t == TubeTrouble.NONE) continue;
                double s = .001 * Math.exp(r.nextDouble() * Math.log(80));
                ProofKitchen.Proved p = kit.proveProvisionally(s, t);
                un.computeIfAbsent(t, x -> new TreeMap<>()).merge(p.unfit().isEmpty() ? "JUDGED" : p.unfit().get(0).name(), 1, Integer::sum);
            }
        }
        System.out.println("rows none under in over; cols NO UNDER IN OVER UNCLEAR REFUSED");
        for (int[][] t : new int[][][] {conf, own}) { for (int[] x : t) System.out.println(Arrays.toString(x)); figures(t); }
        System.out.println("fit refused " + fitRef);
        System.out.printf("slope ok %d of %d, worst %.2f, bias %.3f%n", slopeOk, slopeN, worst, bias[0] / slopeN);
        sl.forEach((c, q) -> System.out.println(c + " " + Arrays.toString(q)));
        un.forEach((t, mm) -> System.out.println(t + " " + mm));
    }
    static void figures(int[][] t) { int all = 0, right = 0, dec = 0, unc = 0, ref = 0; for (int c = 0; c < 4; c++) for (int v = 0; v < 6; v++) { all += t[c][v]; if (v < 4) dec += t[c][v]; if (v == c) right += t[c][v]; if (v == 4) unc += t[c][v]; if (v == 5) ref += t[c][v]; } System.out.printf("decided right %.1f %%, right of all %.1f %%, unclear %.1f %%, refused %.1f %%%n", 100. * right / dec, 100. * right / all, 100. * unc / all, 100. * ref / all); }
}
