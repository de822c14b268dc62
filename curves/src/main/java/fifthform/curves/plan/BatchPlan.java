package fifthform.curves.plan;

import fifthform.curves.plan.WarmBathPlan.Bath;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A whole evening in figures.
 *
 * @param request what it was made for
 * @param figures in the order of {@link PlanKey}
 * @param warmBaths the warm bath for a bowl that stands elsewhere than in the middle of the cool range
 * @param topUps boiling water for a bowl that stands still below the aim
 * @param caveats what must be known of it
 * @param steps one after the other
 */
public record BatchPlan(
        PlanRequest request,
        List<Planned> figures,
        List<WarmBathFor> warmBaths,
        List<TopUpFor> topUps,
        List<Caveat> caveats,
        List<Step> steps) {
    private static final double MINUTE = 60;
    private static final int ROWS = 5;

    public BatchPlan {
        Objects.requireNonNull(request, "request");
        figures = List.copyOf(figures);
        warmBaths = List.copyOf(warmBaths);
        topUps = List.copyOf(topUps);
        caveats = List.copyOf(caveats);
        steps = List.copyOf(steps);
    }

    /**
     * The warmest bath, °C, that cannot carry a bowl at {@code bowlCelsius} over its range. Holds at any time, so a bath that
     * has cooled may be brought up to it again.
     */
    public record WarmBathFor(double bowlCelsius, double bathCelsius) {}

    /** Boiling water, g, for a bowl that has stopped rising at {@code bowlCelsius}, which then ends at the aim. */
    public record TopUpFor(double bowlCelsius, double waterGrams) {}

    /** What is done one after the other. */
    public enum StepKind {
        MELT,
        MELT_HOLD,
        COLD_BATH,
        COOL_HOLD,
        WARM_BATH,
        TOP_UP,
        PROVE,
        POUR,
        SET;

        /** The word in files. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    /** A step with how long it takes. */
    public record Step(StepKind kind, Duration least, Duration usual, Duration most) {}

    /** Works out the plan. */
    public static BatchPlan of(PlanRequest request) {
        Settled settled = Settled.of(request);
        ColdBathPlan cold = new ColdBathPlan(settled);
        WarmBathPlan warm = new WarmBathPlan(settled);
        TopUpPlan topUp = new TopUpPlan(settled);
        QuickBathPlan quick = new QuickBathPlan(settled);
        TablePlan table = new TablePlan(settled);
        List<Planned> figures = new ArrayList<>(table.figures());
        figures.addAll(cold.figures());
        figures.addAll(warm.figures());
        figures.addAll(topUp.figures());
        figures.addAll(quick.figures());
        figures.addAll(new SeedPlan(settled).figures());
        figures.sort((a, b) -> a.key().compareTo(b.key()));
        List<Caveat> caveats = new ArrayList<>(settled.caveats());
        if (!topUp.reaches()) caveats.add(Caveat.ENDS_SHORT);
        if (cold.tapTooWarm()) caveats.add(Caveat.TAP_TOO_WARM);
        if (quick.tooHot()) caveats.add(Caveat.QUICK_TOO_HOT);
        if (table.roomWarm()) caveats.add(Caveat.ROOM_WARM);
        caveats.sort(null);
        return new BatchPlan(request, figures, rows(settled, warm), topUp.rows(), caveats, steps(figures));
    }

    /** The figure, where the plan has it. */
    public Optional<Planned> figure(PlanKey key) {
        return figures.stream().filter(f -> f.key() == key).findFirst();
    }

    /** The value of a figure that every plan has. */
    public double value(PlanKey key) {
        return figure(key).orElseThrow().value();
    }

    private static List<WarmBathFor> rows(Settled settled, WarmBathPlan warm) {
        double low = settled.cool().lowCelsius();
        double step = (settled.work().lowCelsius() - low) / (ROWS - 1);
        List<WarmBathFor> rows = new ArrayList<>();
        for (int row = 0; row < ROWS; row++) {
            Bath bath = warm.bathFor(Math.round(10 * (low + row * step)) / 10.0);
            rows.add(new WarmBathFor(bath.fromCelsius(), bath.celsius()));
        }
        return rows;
    }

    private static List<Step> steps(List<Planned> figures) {
        List<Step> steps = new ArrayList<>();
        add(steps, StepKind.MELT, figures, PlanKey.MELT_TIME);
        add(steps, StepKind.MELT_HOLD, figures, PlanKey.MELT_HOLD);
        add(steps, StepKind.COLD_BATH, figures, PlanKey.COLD_TIME);
        add(steps, StepKind.COOL_HOLD, figures, PlanKey.COOL_HOLD);
        add(steps, StepKind.WARM_BATH, figures, PlanKey.WARM_TIME);
        add(steps, StepKind.TOP_UP, figures, PlanKey.TOP_UP_TIME);
        // Smear, pouring, setting: common practice, no source; setting also as computed for an 8 mm bar in air of 8 to
        // 15 °C.
        steps.add(step(StepKind.PROVE, 3, 5, 10));
        steps.add(step(StepKind.POUR, 4, 10, 20));
        steps.add(step(StepKind.SET, 15, 30, 60));
        return steps;
    }

    private static Step step(StepKind kind, double least, double usual, double most) {
        return new Step(kind, seconds(MINUTE * least), seconds(MINUTE * usual), seconds(MINUTE * most));
    }

    private static void add(List<Step> steps, StepKind kind, List<Planned> figures, PlanKey key) {
        for (Planned f : figures) {
            if (f.key() == key) steps.add(new Step(kind, seconds(f.low()), seconds(f.value()), seconds(f.high())));
        }
    }

    private static Duration seconds(double seconds) {
        return Duration.ofSeconds(Math.round(seconds));
    }
}
