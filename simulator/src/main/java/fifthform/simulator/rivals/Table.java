package fifthform.simulator.rivals;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** The figures of many rounds, as text: each goal beside what was reached, with its standard error. */
final class Table {
    private final List<Round> rounds;
    private final Map<Entrant, List<Tried>> tried = new EnumMap<>(Entrant.class);
    private final StringBuilder text = new StringBuilder();

    private Table(List<Round> rounds) {
        this.rounds = rounds;
        for (Round round : rounds) {
            round.tried()
                    .forEach((who, what) ->
                            tried.computeIfAbsent(who, w -> new ArrayList<>()).add(what));
        }
    }

    static String of(List<Round> rounds) {
        Table table = new Table(rounds);
        table.goals();
        table.oneLifts();
        table.families();
        return table.text.toString();
    }

    private Collection<Tried> of(Entrant who) {
        return tried.getOrDefault(who, List.of());
    }

    private void goals() {
        line("%-66s %-22s %s%n", "measure", "goal (stretch)", "reached ± standard error (n)");
        oneLift(
                "one lift, kitchen unknown, no keys",
                Entrant.ENGINE,
                "<= 0.60 / 1.6 K (0.50 / 1.4)",
                "<= 12 (10) %",
                "<= 18 (12) %",
                ">= 70 (78) %");
        oneLift("one lift, keys late", Entrant.ENGINE_KEYS, "<= 0.50 K (0.43)", "-", "-", ">= 74 (79) %");
        oneLift("one lift, keys exact", Entrant.ENGINE_EXACT, "-", "-", "-", "-");
        oneLift("one lift, bath and amount told", Entrant.ENGINE_BATH, "<= 0.40 K", "<= 6 %", "-", ">= 82 %");
        oneLift("one lift, bath, amount and keys", Entrant.ENGINE_ALL, "-", "-", "-", "-");
        oneLift("one lift, fifth batch of the bowl", Entrant.FIFTH, "<= 0.30 K (0.20)", "<= 5 (3) %", "-", "-");
        touches("touches, no keys", Entrant.TOUCHES);
        touches("touches, keys late", Entrant.TOUCHES_KEYS);
        touches("touches by a rule without a model", Entrant.TOUCH_RULE);
        band();
        warnings();
        follows();
        ugly();
    }

    private void oneLift(String title, Entrant who, String error, String over, String shorts, String in) {
        Collection<Tried> all = of(who);
        if (all.isEmpty()) return;
        row(title + ": error at the cue, MAE", error, Reached.mean(Figures.cueErrors(all)), "K");
        row(title + ": error at the cue, p95", "as above", Reached.percentile(Figures.cueErrors(all), 95), "K");
        places(title, all, over, shorts, in);
    }

    private void places(String title, Collection<Tried> all, String over, String shorts, String in) {
        row(title + ": over by > 0.3 K", over, Figures.shown(all, Tried.Place.OVER), "%");
        row(title + ": short", shorts, Figures.shown(all, Tried.Place.SHORT), "%");
        row(title + ": in range", in, Figures.shown(all, Tried.Place.IN_RANGE), "%");
        row(title + ": over in truth", "-", Figures.inTruth(all, Tried.Place.OVER), "%");
        row(title + ": in range in truth", "-", Figures.inTruth(all, Tried.Place.IN_RANGE), "%");
        row(title + ": never told to lift", "-", Figures.share(all, b -> b.cue().isEmpty()), "%");
    }

    private void touches(String title, Entrant who) {
        Collection<Tried> all = of(who);
        if (all.isEmpty()) return;
        row(title + ": over by > 0.3 K", "<= 1.5 (1) %", Figures.shown(all, Tried.Place.OVER), "%");
        row(title + ": in range", ">= 92 (97) %", Figures.shown(all, Tried.Place.IN_RANGE), "%");
        row(title + ": over in truth", "-", Figures.inTruth(all, Tried.Place.OVER), "%");
        row(title + ": in range in truth", "-", Figures.inTruth(all, Tried.Place.IN_RANGE), "%");
        row(
                title + ": lifts",
                "-",
                Reached.mean(each(all, b -> (double) b.landing().lifts())),
                "");
        row(title + ": longer than one lift", "<= 4 (3) min", Reached.mean(longer(who)), "min");
    }

    /** In the same kitchen, minutes from the first time over the water to the last turn. */
    private List<Double> longer(Entrant who) {
        List<Double> minutes = new ArrayList<>();
        for (Round round : rounds) {
            Tried touched = round.tried().get(who);
            Tried once = round.tried().get(Entrant.ENGINE);
            if (touched != null && once != null) {
                minutes.add(touched.landing().minutes() - once.landing().minutes());
            }
        }
        return minutes;
    }

    private void band() {
        Collection<Tried> all = of(Entrant.ENGINE);
        row("90 % band: held per dip", "88 to 94 %", Figures.heldPerDip(all), "%");
        row("90 % band: held at the cue", ">= 86 %", Figures.heldAtCue(all), "%");
        row("90 % band: mean width", "<= 2.3 (2.0) K", Figures.widthPerDip(all), "K");
        row("90 % band: mean width at the cue", "-", Figures.widthAtCue(all), "K");
    }

    private void warnings() {
        warned("engine, stays on", ">= 80 s", 10, stayedOn(Entrant.STAYS_ON));
        warned("straight line, stays on", "-", 10, stayedOn(Entrant.LINE_STAYS_ON));
        List<WarningWatch.Warned> drifts =
                rounds.stream().flatMap(r -> r.drift().stream()).toList();
        warned("engine, slow drift", ">= 90 s", 50, drifts);
        Collection<Tried> steady = of(Entrant.STEADY);
        row("steady work: false melt-out warnings", "<= 0.3 /h", Figures.falseWarningsAnHour(steady), "/h");
        row("off the bath: lift-now", "<= 0.3 /h", Figures.falseLiftsAnHour(steady), "/h");
        row(
                "off the bath: lift-now by the straight line",
                "-",
                Figures.falseLiftsAnHour(of(Entrant.LINE_STEADY)),
                "/h");
    }

    private List<WarningWatch.Warned> stayedOn(Entrant who) {
        return of(who).stream().flatMap(b -> b.warned().stream()).toList();
    }

    private void warned(String title, String goal, double percent, List<WarningWatch.Warned> warned) {
        if (warned.isEmpty()) return;
        String point = percent == 50 ? "median" : "p10";
        row(
                title + ": warned before melt-out, " + point,
                goal,
                Reached.percentile(Figures.leads(warned), percent),
                "s");
        List<Double> way = warned.stream().map(WarningWatch.Warned::waySeconds).toList();
        row(title + ": from first contact to melt-out, " + point, "-", Reached.percentile(way, percent), "s");
        row(
                title + ": missed",
                "0",
                Reached.percent(warned.stream().map(WarningWatch.Warned::missed).toList()),
                "%");
    }

    private void follows() {
        for (Entrant who : List.of(Entrant.ENGINE, Entrant.ENGINE_KEYS)) {
            row(who.title() + ": phase right", ">= 90 %", Figures.phase(of(who)), "%");
            row(who.title() + ": where the bowl stands right", "-", Figures.place(of(who)), "%");
            row(
                    who.title() + ": turning point after cold water, MAE",
                    "<= 0.9 (0.6) K",
                    Figures.troughError(of(who)),
                    "K");
        }
    }

    private void ugly() {
        for (Entrant who : List.of(
                Entrant.PROBE_OUT,
                Entrant.WALL_TOUCH,
                Entrant.QUARTER_STEPS,
                Entrant.LOST,
                Entrant.SPIKES,
                Entrant.FAHRENHEIT)) {
            Collection<Tried> all = of(who);
            if (all.isEmpty()) continue;
            row(who.title() + ": over by > 0.3 K", "<= 15 %", Figures.shown(all, Tried.Place.OVER), "%");
            row(who.title() + ": in range", "-", Figures.shown(all, Tried.Place.IN_RANGE), "%");
            row(who.title() + ": band held at the cue", ">= 86 %", Figures.heldAtCue(all), "%");
            row(who.title() + ": phase right", ">= 80 %", Figures.phase(all), "%");
        }
        for (Entrant who : List.of(
                Entrant.STEADY_PROBE_OUT, Entrant.STEADY_QUARTER_STEPS, Entrant.STEADY_LOST, Entrant.STEADY_SPIKES)) {
            if (of(who).isEmpty()) continue;
            row(who.title() + ": false melt-out warnings", "<= 1 /h", Figures.falseWarningsAnHour(of(who)), "/h");
        }
    }

    private void oneLifts() {
        line(
                "%n%-32s %s%n",
                "one lift", "MAE, p95 at the cue; over, short, in range; over, in range in truth; never told");
        for (Entrant who : Entrant.values()) {
            if (who.ordinal() > Entrant.FIFTH.ordinal() || of(who).isEmpty()) continue;
            brief(who.title(), of(who));
        }
    }

    private void brief(String title, Collection<Tried> all) {
        Reached mean = Reached.mean(Figures.cueErrors(all));
        Reached in = Figures.shown(all, Tried.Place.IN_RANGE);
        line(
                "%-32s %5.2f ± %4.2f K %5.2f K | %3.0f %3.0f %3.0f ± %3.1f %% | %3.0f %3.0f %% | %3.0f %% (n = %d)%n",
                title,
                mean.value(),
                mean.standardError(),
                Reached.percentile(Figures.cueErrors(all), 95).value(),
                Figures.shown(all, Tried.Place.OVER).value(),
                Figures.shown(all, Tried.Place.SHORT).value(),
                in.value(),
                in.standardError(),
                Figures.inTruth(all, Tried.Place.OVER).value(),
                Figures.inTruth(all, Tried.Place.IN_RANGE).value(),
                Figures.share(all, b -> b.cue().isEmpty()).value(),
                all.size());
    }

    private void families() {
        for (Entrant who : List.of(Entrant.ENGINE, Entrant.ENGINE_BATH, Entrant.TOUCHES)) {
            Collection<Tried> all = of(who);
            if (all.isEmpty()) continue;
            line("%n%s, by family%n", who.title());
            Map<String, Set<String>> kinds = new LinkedHashMap<>();
            for (Tried each : all) {
                Family.of(each.kitchen())
                        .forEach((respect, kind) -> kinds.computeIfAbsent(respect, r -> new LinkedHashSet<>())
                                .add(kind));
            }
            kinds.forEach((respect, words) -> words.stream().sorted().forEach(word -> {
                List<Tried> these = all.stream()
                        .filter(t -> word.equals(Family.of(t.kitchen()).get(respect)))
                        .toList();
                brief(respect + ": " + word, these);
            }));
        }
    }

    private static List<Double> each(Collection<Tried> all, Function<Tried, Double> figure) {
        return all.stream().map(figure).toList();
    }

    private void row(String measure, String goal, Reached reached, String unit) {
        if (reached.count() == 0 && Double.isNaN(reached.value())) return;
        line(
                "%-66s %-22s %7.2f ± %4.2f %-3s (n = %d)%n",
                measure, goal, reached.value(), reached.standardError(), unit, reached.count());
    }

    private void line(String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values).replace(System.lineSeparator(), "\n"));
    }
}
