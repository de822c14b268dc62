package fifthform.curves.crystal;

/**
 * A moulded bar of 8 mm in air of 12 °C, ten cells, 45 min: the reference's own check of what seed becomes. Film 15 W/m²K
 * on both sides, a mould of 1.5 mm below, 1260 kg/m³, 1.63 kJ/kgK, 0.24 W/mK, 32 % fat, poured at 31 °C.
 *
 * @param shareOfFive form V in all that is solid at the end
 * @param minutesToSixty until 60 % of the fat is solid in the mean
 */
record Bar(double shareOfFive, double minutesToSixty) {
    private static final int CELLS = 10;
    private static final double STEP = 0.25;

    static Bar moulded(Kinetics kinetics, Crystals start) {
        Crystals[] c = new Crystals[CELLS];
        double[] celsius = new double[CELLS];
        for (int i = 0; i < CELLS; i++) {
            c[i] = CrystalCheckValuesTest.seed(start.formFive());
            celsius[i] = 31;
        }
        double dx = 0.008 / CELLS;
        double below = 1 / (1 / 15.0 + 0.0015 / 0.20 + 0.5 * dx / 0.24);
        double above = 1 / (1 / 15.0 + 0.5 * dx / 0.24);
        double capacity = 1260 * 1630 * dx;
        double sixty = Double.NaN;
        int steps = (int) Math.round(45 * 60 / STEP);
        for (int n = 0; n < steps; n++) {
            double[] flux = new double[CELLS + 1];
            flux[0] = below * (12 - celsius[0]);
            flux[CELLS] = -above * (12 - celsius[CELLS - 1]);
            for (int i = 1; i < CELLS; i++) flux[i] = -0.24 * (celsius[i] - celsius[i - 1]) / dx;
            double solid = 0;
            for (int i = 0; i < CELLS; i++) {
                Rates r = kinetics.rates(c[i], celsius[i], 0);
                c[i] = kinetics.after(c[i], r, STEP);
                double heat = 0.32 * kinetics.heatKilowattPerKilogramFat(r) / 1.63;
                celsius[i] += STEP * ((flux[i] - flux[i + 1]) / capacity + heat);
                solid += c[i].solids() / CELLS;
            }
            if (Double.isNaN(sixty) && solid >= 0.6) sixty = (n + 1) * STEP / 60;
        }
        double five = 0;
        double all = 0;
        for (Crystals cell : c) {
            five += cell.formFive();
            all += cell.solids();
        }
        return new Bar(five / all, sixty);
    }
}
