package fifthform.simulator.bowl;

/**
 * The fat's crystal forms in one portion, which form, grow, change into each other and melt by temperature and stirring;
 * a value. All in kg for each kg of fat.
 *
 * <p>The equations are those of the project's reduced model of cocoa butter: nucleation, growth towards a liquidus,
 * melting, and the change from each form to the next stable one. Its shape rests on published statements; most of its
 * rates were set so that bowls behave as makers and prints describe, none was measured in a bowl. Constants are for a
 * minute. Written for the simulator alone: the program has its own, and a test lets the two watch each other.
 *
 * <p>Heat of crystallising 110, 145, 175 and 185 kJ/kg of solid for II, IV, V and VI: from memory, V supported by
 * 138.8 J/g of butter with 78 % solid.
 *
 * @param two form II, only below about 20 °C
 * @param four form IV (with III), made in the cool step, gone after the rewarm
 * @param five form V, the seed that is wanted
 * @param six form VI, slow, and seed powder
 * @param births what the dispersed seeds weighed when they were born: a measure of their number
 */
public record Forms(double two, double four, double five, double six, double births) implements Crystals {
    /** All that can be solid in solid chocolate: 75 % of the fat, in form V. */
    private static final double ALL_SOLID = 0.75;

    /** As bought: pieces, all form V. */
    public static final Forms SOLID = new Forms(0, 0, ALL_SOLID, 0, 0.003);

    public static final Forms MELTED = new Forms(0, 0, 0, 0, 0);

    private static final double TWO_JOULES_PER_KILOGRAM = 110_000;
    private static final double FOUR_JOULES_PER_KILOGRAM = 145_000;
    private static final double FIVE_JOULES_PER_KILOGRAM = 175_000;
    private static final double SIX_JOULES_PER_KILOGRAM = 185_000;

    /** The melting range of dark chocolate ends here in the figures of a kitchen; milk fat and the butter's origin move it. */
    private static final double DARK_MELTS_TO_CELSIUS = 34;

    /** Milk fat, share of all fat, for a shift of the melting points by so much: −8.5 K · ln(1/(1 − x)). */
    private static final double SHIFT_KELVIN = 8.5;

    private static final double MOST_MILK_FAT = 0.17;
    private static final double SLOWED_BY_MILK_FAT = 0.2;

    /** Shear of steady hand stirring, which is full vigour here, and where stirring does half of what it can, 1/s. */
    private static final double STEADY_STIRRING_PER_SECOND = 20;

    private static final double HALF_EFFECT_PER_SECOND = 20;

    /** With little solid, heat and crystals hardly pull on each other and longer steps do. */
    private static final double LITTLE = 0.05;

    private static final double SHORT_SECONDS = 0.125;
    private static final double LONG_SECONDS = 0.5;
    private static final double NOTHING = 1e-13;
    private static final double MOST_PER_MINUTE = 12;
    private static final double NO_CAP_CELSIUS = 99;

    /** Of the fat, as far as the bound heat of all that could be solid says. */
    private static double fatFraction(Chocolate chocolate) {
        return chocolate.latentJoulesPerKilogram() / (ALL_SOLID * FIVE_JOULES_PER_KILOGRAM);
    }

    /** Seed that does its work: V and VI. */
    public double stableFraction() {
        return five + six;
    }

    private double solid() {
        return two + four + five + six;
    }

    @Override
    public double solidFraction() {
        return Math.min(1, solid() / ALL_SOLID);
    }

    @Override
    public double boundJoulesPerKilogram(Chocolate chocolate) {
        return fatFraction(chocolate) * boundJoulesPerKilogramOfFat();
    }

    private double boundJoulesPerKilogramOfFat() {
        return TWO_JOULES_PER_KILOGRAM * two
                + FOUR_JOULES_PER_KILOGRAM * four
                + FIVE_JOULES_PER_KILOGRAM * five
                + SIX_JOULES_PER_KILOGRAM * six;
    }

    @Override
    public Forms solidAlike() {
        return SOLID;
    }

    @Override
    public Crystals settled(Chocolate chocolate, double joulesPerKilogram, double seconds, double vigourFraction) {
        if (seconds == 0) return this;
        double shiftKelvin = chocolate.meltsToCelsius() - DARK_MELTS_TO_CELSIUS;
        double fat = fatFraction(chocolate);
        double stepSeconds = solid() > LITTLE ? SHORT_SECONDS : LONG_SECONDS;
        int steps = (int) Math.ceil(seconds / stepSeconds - 1e-9);
        double minutes = seconds / steps / 60;
        Forms forms = this;
        for (int i = 0; i < steps; i++) {
            double celsius = Chocolate.celsiusOfSensible(joulesPerKilogram + fat * forms.boundJoulesPerKilogramOfFat());
            forms = forms.after(minutes, celsius - shiftKelvin, shiftKelvin, vigourFraction, chocolate.fat());
        }
        return forms;
    }

    /** What little there is changes too slowly to be looked ahead for. */
    @Override
    public Crystals ahead(Chocolate chocolate, double joulesPerKilogram, double seconds, double vigourFraction) {
        return solid() <= LITTLE ? this : settled(chocolate, joulesPerKilogram, seconds, vigourFraction);
    }

    @Override
    public Forms mixedWith(Crystals other, double otherFraction) {
        if (!(other instanceof Forms forms)) {
            throw new IllegalArgumentException("forms mix with forms, not with " + other);
        }
        return new Forms(
                mean(two, forms.two, otherFraction),
                mean(four, forms.four, otherFraction),
                mean(five, forms.five, otherFraction),
                mean(six, forms.six, otherFraction),
                mean(births, forms.births, otherFraction));
    }

    private static double mean(double here, double there, double share) {
        return here + share * (there - here);
    }

    /**
     * One explicit step.
     *
     * @param celsius the temperature less the shift of the melting points: that of dark chocolate as far from melting
     */
    private Forms after(double minutes, double celsius, double shiftKelvin, double vigourFraction, Fat fat) {
        boolean bare = solid() <= NOTHING;
        if (bare && celsius >= 33.6) return this == MELTED ? this : MELTED;
        double a = clean(two);
        double b = clean(four);
        double v = clean(five);
        double s = clean(six);
        double excess = Math.max(0, births - v);
        double n = Math.min(clean(births), v);
        double shear = STEADY_STIRRING_PER_SECOND * vigourFraction;
        double stirred = shear / (shear + HALF_EFFECT_PER_SECOND);
        double milkFat = shiftKelvin >= 0 ? 0 : 1 - StrictMath.exp(shiftKelvin / SHIFT_KELVIN);
        double slow = 1 - SLOWED_BY_MILK_FAT * Math.min(1, milkFat / MOST_MILK_FAT);
        double nucleating = slow * fat.nucleationFactor();
        double growing = slow * fat.growthFactor();

        double all = a + b + v + s;
        // The most that can be solid goes by the true temperature, the forms' own limits by that of dark chocolate.
        double most = Math.min(0.95, Math.max(0.05, 0.78 - 0.010 * (celsius + shiftKelvin - 20)));
        double roomForTwo = celsius < 22 ? room(all, liquidus(most, celsius, 19.0, 0.80)) : 0;
        double roomForFour = celsius < 29.2 ? room(all, liquidus(most, celsius, 26.0, 0.65)) : 0;
        double roomForFive = celsius < 33.8 ? room(all, liquidus(most, celsius, 30.4, 0.75)) : 0;

        double twoBorn = nucleating * 0.005 * hit(22.0 - celsius, 2.0) * roomForTwo;
        double fourBorn = nucleating * 4.0e-4 * (1 + 8 * stirred) * hit(29.2 - celsius, 3.0) * roomForFour;
        double fiveBorn = stirred == 0
                ? 0
                : nucleating
                        * 0.0024
                        * stirred
                        * hit(33.8 - celsius, 10.0)
                        * roomForFive
                        / (1 + StrictMath.exp(20 - celsius));

        double twoGrows = growing * 0.020 * a * square(below(22.0, celsius, 12)) * roomForTwo;
        double fourGrows = growing * 0.0050 * (1 + 0.5 * stirred) * b * square(below(29.2, celsius, 12)) * roomForFour;
        double fiveGrows = growing * fiveGrows(v + s, n + s, celsius, stirred) * roomForFive;

        double melting = fat.meltingFactor();
        double twoMelts = a == 0 ? 0 : melts(a, 2.0 * melting, celsius, most, all, 19.0, 0.80, NO_CAP_CELSIUS);
        double fourMelts = b == 0 ? 0 : melts(b, 1.2 * melting, celsius, most, b + v + s, 26.0, 0.65, NO_CAP_CELSIUS);
        double fiveMelts = v == 0 ? 0 : melts(v, 0.49 * melting, celsius, most, v + s, 30.4, 0.75, 33.8);
        double sixMelts = s == 0 ? 0 : melts(s, 0.30 * melting, celsius, most, s, 32.4, 0.75, 36.3);

        // The clocks of transformation do not move with milk fat: they go by the true temperature.
        double clock = celsius + shiftKelvin;
        double twoToFour = a == 0 ? 0 : a / (10 * StrictMath.exp(-(Math.min(clock, 22) - 17.5) / 3.0));
        double fourToFive =
                b == 0 ? 0 : b * (1 + 4 * stirred) / (200 * StrictMath.exp(-(Math.min(clock, 29) - 24.0) / 2.14));
        double fiveToSix = v == 0 ? 0 : v / (259_200 * StrictMath.exp(-(Math.min(clock, 32) - 20.0) / 4.0));

        double share = v == 0 ? 0 : n / Math.max(v, 1e-15);
        double carried = Math.min(1, 0.3 * stirred);
        double bornOrLost =
                fiveBorn + carried * (share * fiveGrows + fourToFive) - square(square(share)) * fiveMelts - 12 * excess;
        double fiveAfter = v + minutes * (fiveBorn + fiveGrows - fiveMelts + fourToFive - fiveToSix);
        double five = Math.max(0, fiveAfter);
        return new Forms(
                Math.max(0, a + minutes * (twoGrows + twoBorn - twoMelts - twoToFour)),
                Math.max(0, b + minutes * (fourGrows + fourBorn - fourMelts + twoToFour - fourToFive)),
                five,
                Math.max(0, s + minutes * (fiveToSix - sixMelts)),
                Math.max(0, Math.min(n + minutes * bornOrLost, five)));
    }

    /** Growth of V before the room that is left for it, 1/min. */
    private static double fiveGrows(double stable, double seeds, double celsius, double stirred) {
        double deep = below(33.2, celsius, 17);
        if (stable == 0 || deep == 0) return 0;
        double mass = StrictMath.cbrt(stable);
        return 0.0130
                * (1 + 0.4 * stirred)
                * StrictMath.cbrt(seeds)
                * mass
                * mass
                * StrictMath.pow(deep, 2.4)
                * stable
                / (stable + 1e-7);
    }

    private static double melts(
            double form,
            double rate,
            double celsius,
            double most,
            double solids,
            double middleCelsius,
            double widthKelvin,
            double capCelsius) {
        double held = Math.min(0.999999 * most, Math.max(1e-12, solids));
        double balance = middleCelsius + widthKelvin * StrictMath.log(most / held - 1);
        double over = celsius - Math.min(balance, capCelsius);
        return over <= 0 ? 0 : form * Math.min(rate * over * over, MOST_PER_MINUTE);
    }

    private static double liquidus(double most, double celsius, double middleCelsius, double widthKelvin) {
        double x = Math.max(-60, Math.min(60, (celsius - middleCelsius) / widthKelvin));
        return most / (1 + StrictMath.exp(x));
    }

    private static double room(double solid, double liquidus) {
        return Math.max(0, 1 - solid / Math.max(liquidus, 1e-9));
    }

    private static double hit(double deepKelvin, double barrierKelvin) {
        if (deepKelvin <= 0.2) return 0;
        double x = barrierKelvin / deepKelvin;
        return StrictMath.exp(-x * x);
    }

    private static double below(double celsius, double here, double most) {
        return Math.max(0, Math.min(most, celsius - here));
    }

    private static double clean(double fraction) {
        return fraction < NOTHING ? 0 : fraction;
    }

    private static double square(double x) {
        return x * x;
    }
}
