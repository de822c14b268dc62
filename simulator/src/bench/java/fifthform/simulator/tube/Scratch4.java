package fifthform.simulator.tube;
import fifthform.curves.proof.*;
import java.util.*;
public class Scratch4 {
    public static void main(String[] a) {
        System.setProperty("dbg", "true");
        for (TubeTrouble t : new TubeTrouble[] {TubeTrouble.NONE, TubeTrouble.STIRRED, TubeTrouble.MOVED, TubeTrouble.AT_WALL}) {
            List<double[]> rows = new ArrayList<>();
            for (int k = 0; k < 120; k++) {
                SplittableRandom r = new SplittableRandom(k);
                TubeCup cup = TubeCup.drawn(r); FatMake fat = FatMake.drawn(0, r);
                double s = .0003 * Math.exp(r.nextDouble() * Math.log(400));
                TubeTrial tr = TubeTrial.drawn(cup, fat, .32, s, t, r);
                TubeTrial cal = new TubeTrial(cup, new TubeSample(fat, .32, 0, cup.usualGrams(), 34), new TubeAdapter(1, .02, .01, 0), 0.3, TubeTrouble.NONE);
                CoolingCurve cc = c(cal.run(r).readings());
                TauFit cf = TauFit.of(cc, Course.of(cc, .3).get(), .3).get();
                CoolingCurve cu = c(tr.run(r).readings());
                Optional<Course> co = Course.of(cu, tr.iceCelsius());
                if (co.isEmpty()) { System.out.println(t + " no course"); continue; }
                System.setProperty("dbgv", "");
                Fitness.of(cu, new Circumstances(new fifthform.curves.recipe.CelsiusRange(28, 34.3), OptionalDouble.of(.3), Optional.of(true), Optional.empty()));
                TauFit f = TauFit.of(cu, co.get(), tr.iceCelsius()).orElse(null);
                String[] q = System.getProperty("dbgv").split(" ");
                if (q.length < 6 || f == null) { System.out.println(t + " - " + Arrays.toString(q) + f); continue; }
                rows.add(new double[] {Double.parseDouble(q[1]), Double.parseDouble(q[3]), Double.parseDouble(q[5]), f.axisExcess(), f.axisExcess() - cf.axisExcess(), f.tauMinutes() / cf.tauMinutes(), early(cu, co.get(), cf, tr.iceCelsius()), Double.parseDouble(q[1]) / hf(cu), (co.get().steepestCelsius() - .3) / -co.get().steepestKelvinPerMinute() / cf.tauMinutes(), q2(cu, co.get(), cf, tr.iceCelsius())});
            }
            String[] n = {"mid", "most", "ratio", "excess", "excess-cup", "tau/cup", "early", "mid/hf", "q", "q2"};
            for (int i = 0; i < n.length; i++) { final int j = i; double[] v = rows.stream().mapToDouble(x -> x[j]).sorted().toArray(); int m = v.length; System.out.printf("%s %s: min %.3f 1%% %.3f 5%% %.3f 50%% %.3f 95%% %.3f 99%% %.3f max %.3f%n", t, n[i], v[0], v[m / 100], v[m / 20], v[m / 2], v[m * 95 / 100], v[m * 99 / 100], v[m - 1]); }
        }
    }
    static double early(CoolingCurve c, Course u, TauFit f, double b) { int i = 0; while (c.seconds(i) < u.dipSeconds() || c.celsius(i) > 26) i++; double want = f.tauMinutes() * 60 * Math.log(f.axisExcess() * (u.startCelsius() - b) / (26 - b)) + 12; return (c.seconds(i) - u.dipSeconds()) / want; }
    static double q2(CoolingCurve c, Course u, TauFit f, double b) { double e = early(c, u, f, b), q = (u.steepestCelsius() - b) / -u.steepestKelvinPerMinute() / f.tauMinutes(); return e * q * q; }
    static double hf(CoolingCurve c) { double s = 0; int n = 0; for (int i = 2; i < c.size(); i++) { double d = c.celsius(i) - 2 * c.celsius(i - 1) + c.celsius(i - 2); s += d * d; n++; } return Math.sqrt(s / n / 6); }
    static CoolingCurve c(List<TubeReading> l) { List<CurvePoint> p = l.stream().map(x -> new CurvePoint(x.seconds(), x.celsius())).toList(); return CoolingCurve.of(p, Fitness.stepKelvin(p)); }
}
