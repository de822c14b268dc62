package fifthform.curves.crystal;

import fifthform.curves.check.Require;
import java.util.Objects;

/**
 * How the crystals of cocoa butter come and go with temperature and stirring: this project's own reduced model.
 *
 * <p>Its shape rests on published statements (melting points of the forms, no form V from a melt at rest, lifetimes of the
 * unstable forms); most rate constants were calibrated to accepted behaviour and not to measured bowls, see
 * {@link Constants}. It serves to rank and to warn, never to quote a percentage.
 *
 * <p>Pure and immutable. Rates come out per second; the equations, as their constants, are per minute. In them
 * {@code s = g / (g + 20)} is the effect of a shear rate of {@code g} per second, {@code d} the milk fat's shift in K, and
 * {@code room = max(0, 1 − solids / liquidus)} what the melt has left to give.
 */
public final class Kinetics {
    /** Lowest temperature that the model takes, °C. */
    public static final double LOWEST_CELSIUS = 0;
    /** Highest temperature that the model takes, °C. */
    public static final double HIGHEST_CELSIUS = 70;

    /** The longest step that never undershoots: the fastest loss is 0.2 per second. */
    public static final double LONGEST_STEP_SECONDS = 5;

    private static final double PER_SECOND = 1 / 60.0;

    /** Traces below this count as nothing: no denormals, the same in every language. */
    private static final double TRACE = 1e-13;

    private static final double FULL_EFFECT_OF_MILK_FAT = 0.17;

    private final Constants constants;
    private final Fat fat;

    private final double shiftKelvin;
    private final double slowing;
    private final double halfEffectShear;

    // Most that the fat can hold as solid.
    private final double plateauAtTwenty;
    private final double plateauPerKelvin;
    private final double plateauLeast;
    private final double plateauMost;

    private final Melting meltTwo;
    private final Melting meltFour;
    private final Melting meltFive;
    private final Melting meltSix;
    private final double fastestMelting;

    private final Nucleation bornTwo;
    private final Nucleation bornFour;
    private final Nucleation bornFive;
    private final double stirredBirthGain;
    private final double bornFiveFadesCelsius;

    private final Growth growTwo;
    private final Growth growFour;
    private final Growth growFive;
    private final double powerOfFive;
    private final double leastThatRegrows;
    private final double newSeedShare;

    private final Turning twoToFour;
    private final Turning fourToFive;
    private final Turning fiveToSix;
    private final double stirredTurningGain;

    private final double[] heatKilojoulePerKilogram;
    private final Thickening thickening;
    private final double wallShare;
    private final double wallExchangePerMinute;

    /** The model with its packed constants for a chocolate's fat. */
    public static Kinetics of(Fat fat) {
        return new Kinetics(Constants.PACKED, fat);
    }

    /** As {@link #of} with other constants. */
    public Kinetics(Constants k, Fat fat) {
        this.constants = Objects.requireNonNull(k, "constants");
        this.fat = Objects.requireNonNull(fat, "fat");
        double milkFat = fat.milkFatInFatFraction();
        shiftKelvin = -k.value("kmf") * StrictMath.log(1 / (1 - milkFat));
        slowing = 1 - (1 - k.value("slow_milk")) * Math.min(1, milkFat / FULL_EFFECT_OF_MILK_FAT);
        halfEffectShear = k.value("gam_h");
        plateauAtTwenty = k.value("M20");
        plateauPerKelvin = k.value("Mslope");
        plateauLeast = k.value("Mmin");
        plateauMost = k.value("Mmax");
        meltTwo = Melting.of(k, Form.TWO, Double.POSITIVE_INFINITY, shiftKelvin);
        meltFour = Melting.of(k, Form.FOUR, Double.POSITIVE_INFINITY, shiftKelvin);
        meltFive = Melting.of(k, Form.FIVE, k.value("TVmax"), shiftKelvin);
        meltSix = Melting.of(k, Form.SIX, k.value("TSmax"), shiftKelvin);
        fastestMelting = k.value("mcap");
        bornTwo = new Nucleation(k.value("TnA") + shiftKelvin, k.value("bA"), slowing * k.value("JA"));
        bornFour = new Nucleation(k.value("TnB") + shiftKelvin, k.value("bB"), slowing * k.value("JB"));
        bornFive = new Nucleation(k.value("TnV") + shiftKelvin, k.value("bV"), slowing * k.value("JV"));
        stirredBirthGain = k.value("cB");
        bornFiveFadesCelsius = k.value("TlowV") + shiftKelvin;
        growTwo = new Growth(k.value("TA0") + shiftKelvin, k.value("dTcapA"), slowing * k.value("kA"), 0);
        growFour = new Growth(k.value("TB0") + shiftKelvin, k.value("dTcapB"), slowing * k.value("kB"), k.value("gB"));
        growFive = new Growth(k.value("TV0") + shiftKelvin, k.value("dTcapV"), slowing * k.value("kV"), k.value("gV"));
        powerOfFive = k.value("pV");
        leastThatRegrows = k.value("vc");
        newSeedShare = k.value("chi");
        twoToFour = new Turning(k.value("tauAB"), k.value("TAB"), k.value("thAB"), k.value("TABmax"));
        fourToFive = new Turning(k.value("tauBV"), k.value("TBV"), k.value("thBV"), k.value("TBVmax"));
        fiveToSix = new Turning(k.value("tauVS"), k.value("TVS"), k.value("thVS"), k.value("TVSmax"));
        stirredTurningGain = k.value("cBV");
        heatKilojoulePerKilogram = new double[] {k.value("LA"), k.value("LB"), k.value("LV"), k.value("LS")};
        thickening = Thickening.of(k, fat.fatFraction());
        wallShare = k.value("xWall");
        wallExchangePerMinute = k.value("kWall");
    }

    /** The fat it is for. */
    public Fat fat() {
        return fat;
    }

    /** How far milk fat moves melting, growth and nucleation, K; 0 for dark, else negative. Good to ±40 %. */
    public double shiftKelvin() {
        return shiftKelvin;
    }

    /** Share of the mass in the layer at the wall. */
    double wallShare() {
        return wallShare;
    }

    /** How fast that layer changes places with the rest, 1/s. */
    double wallExchangePerSecond() {
        return wallExchangePerMinute * PER_SECOND;
    }

    /**
     * Solid fraction of the fat that is in balance when only this form is there ("liquidus"):
     * {@code M(T) / (1 + exp((T − Tm − d) / w))} with {@code M} the most the fat can hold.
     *
     * @param celsius 0 to 70 °C
     */
    public double liquidus(Form form, double celsius) {
        return melting(form).solids(plateau(celsius), celsius);
    }

    /**
     * Temperature at which this much solid is in balance, °C; the inverse of {@link #liquidus} at one plateau.
     *
     * @param solids kg per kg of fat
     * @param celsius the temperature that sets the plateau, °C
     */
    public double balanceCelsius(Form form, double solids, double celsius) {
        return melting(form).balance(plateau(celsius), solids);
    }

    /**
     * How fast the crystals change.
     *
     * @param c what there is
     * @param celsius temperature, 0 to 70 °C
     * @param shearPerSecond shear rate, 1/s; less than 0 counts as 0
     * @throws IllegalArgumentException for a temperature outside the range or NaN
     */
    public Rates rates(Crystals c, double celsius, double shearPerSecond) {
        Require.within(celsius, LOWEST_CELSIUS, HIGHEST_CELSIUS, "celsius");
        double two = untraced(c.formTwo());
        double four = untraced(c.formFour());
        double five = untraced(c.formFive());
        double six = untraced(c.formSix());
        double seed = untraced(c.seedMass());
        double excess = Math.max(0, seed - five);
        seed = Math.min(seed, five);
        double solids = two + four + five + six;
        double stable = five + six;
        double s = stirring(shearPerSecond);
        double plateau = plateau(celsius);
        double roomFive = room(solids, meltFive.solids(plateau, celsius));

        double newTwo = bornTwo.perMinute(celsius);
        double newFour = (1 + stirredBirthGain * s) * bornFour.perMinute(celsius);
        double newFive = s == 0 ? 0 : s * bornFive.perMinute(celsius);
        double grownTwo = two * growTwo.squarePerMinute(celsius, s);
        double grownFour = four * growFour.squarePerMinute(celsius, s);
        if (newTwo > 0 || grownTwo > 0) {
            double room = room(solids, meltTwo.solids(plateau, celsius));
            newTwo *= room;
            grownTwo *= room;
        }
        if (newFour > 0 || grownFour > 0) {
            double room = room(solids, meltFour.solids(plateau, celsius));
            newFour *= room;
            grownFour *= room;
        }
        if (newFive > 0) newFive *= roomFive / (1 + StrictMath.exp(bornFiveFadesCelsius - celsius));
        double grownFive = stable == 0 || roomFive == 0 ? 0 : grownFive(seed + six, stable, celsius, s) * roomFive;

        double lostTwo = two * meltTwo.perMinute(plateau, solids, celsius, fastestMelting);
        double lostFour = four * meltFour.perMinute(plateau, four + stable, celsius, fastestMelting);
        double lostFive = five * meltFive.perMinute(plateau, stable, celsius, fastestMelting);
        double lostSix = six * meltSix.perMinute(plateau, six, celsius, fastestMelting);

        double toFour = two == 0 ? 0 : two * twoToFour.perMinute(celsius);
        double toFive = four == 0 ? 0 : four * (1 + stirredTurningGain * s) * fourToFive.perMinute(celsius);
        double toSix = five == 0 ? 0 : five * fiveToSix.perMinute(celsius);

        // A grown crystal shrinks before it vanishes, so seeds go with the fourth power of their share.
        double young = seed / Math.max(five, 1e-15);
        double seedShare = Math.min(1, newSeedShare * s);
        double seeds = newFive
                + seedShare * (young * grownFive + toFive)
                - young * young * young * young * lostFive
                - fastestMelting * excess;
        return new Rates(
                PER_SECOND * (grownTwo + newTwo - lostTwo - toFour),
                PER_SECOND * (grownFour + newFour - lostFour + toFour - toFive),
                PER_SECOND * (newFive + grownFive - lostFive + toFive - toSix),
                PER_SECOND * (toSix - lostSix),
                PER_SECOND * seeds,
                PER_SECOND
                        * (grownTwo + newTwo - lostTwo + grownFour + newFour - lostFour + newFive + grownFive - lostFive
                                - lostSix));
    }

    /** A temperature beyond the model's range counts as at its end. */
    static double within(double celsius) {
        return Math.min(HIGHEST_CELSIUS, Math.max(LOWEST_CELSIUS, celsius));
    }

    /**
     * One step of Euler's method: 1 s in a bowl, 0.25 s in a small cooling sample.
     *
     * @param celsius temperature at the start of the step, 0 to 70 °C
     * @param shearPerSecond shear rate, 1/s
     * @param seconds above 0 and at most {@link #LONGEST_STEP_SECONDS}
     */
    public Crystals step(Crystals c, double celsius, double shearPerSecond, double seconds) {
        return after(c, rates(c, celsius, shearPerSecond), seconds);
    }

    /**
     * A long step for a look ahead that is done often and need not be exact. Form IV, which would melt away within it,
     * ends at nothing; where form V melts as well it says too little of it.
     */
    Crystals leap(Crystals c, double celsius, double shearPerSecond, double seconds) {
        return moved(c, rates(c, celsius, shearPerSecond), seconds);
    }

    /** What there is after so many seconds at these rates. */
    Crystals after(Crystals c, Rates r, double seconds) {
        Require.within(seconds, Double.MIN_VALUE, LONGEST_STEP_SECONDS, "seconds");
        return moved(c, r, seconds);
    }

    private static Crystals moved(Crystals c, Rates r, double seconds) {
        double five = Math.max(0, c.formFive() + r.formFive() * seconds);
        return new Crystals(
                Math.max(0, c.formTwo() + r.formTwo() * seconds),
                Math.max(0, c.formFour() + r.formFour() * seconds),
                five,
                Math.max(0, c.formSix() + r.formSix() * seconds),
                Math.min(five, Math.max(0, c.seedMass() + r.seedMass() * seconds)));
    }

    /**
     * Heat set free, kW per kg of fat; negative while crystals melt. A chocolate of fat share φ and heat capacity c warms
     * by φ/c times as much. A measured temperature has it already; only a forecast or a simulation adds it.
     */
    public double heatKilowattPerKilogramFat(Rates r) {
        return heatKilojoulePerKilogram[0] * r.formTwo()
                + heatKilojoulePerKilogram[1] * r.formFour()
                + heatKilojoulePerKilogram[2] * r.formFive()
                + heatKilojoulePerKilogram[3] * r.formSix();
    }

    /**
     * How much thicker the crystals make the chocolate than it would be without them, 1 to 50.
     * {@code ((1 − φ₀/0.72) / (1 − φ/0.72))^1.8} with {@code φ = φ₀ + (1 − φ₀)·solids}; shape by Krieger and Dougherty.
     */
    public double thickness(Crystals c) {
        return thickening.ratio(c.solids());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Kinetics k && constants == k.constants && fat.equals(k.fat);
    }

    @Override
    public int hashCode() {
        return fat.hashCode();
    }

    @Override
    public String toString() {
        return "Kinetics[" + fat + "]";
    }

    private double grownFive(double surfaces, double stable, double celsius, double s) {
        double drive = growFive.drive(celsius);
        if (drive == 0) return 0;
        double mass = StrictMath.cbrt(stable);
        return growFive.perMinute()
                * (1 + growFive.stirGain() * s)
                * StrictMath.cbrt(surfaces)
                * mass
                * mass
                * StrictMath.pow(drive, powerOfFive)
                * (stable / (stable + leastThatRegrows));
    }

    private double stirring(double shearPerSecond) {
        double shear = Math.max(0, shearPerSecond);
        return shear / (shear + halfEffectShear);
    }

    private double plateau(double celsius) {
        double most = plateauAtTwenty - plateauPerKelvin * (celsius - 20);
        return Math.min(plateauMost, Math.max(plateauLeast, most));
    }

    private Melting melting(Form form) {
        return switch (form) {
            case TWO -> meltTwo;
            case FOUR -> meltFour;
            case FIVE -> meltFive;
            case SIX -> meltSix;
        };
    }

    private static double room(double solids, double limit) {
        return Math.max(0, 1 - solids / Math.max(limit, 1e-9));
    }

    private static double untraced(double value) {
        return value < TRACE ? 0 : value;
    }

    /** A form's melting range; all temperatures with the shift in them. */
    private record Melting(double celsius, double widthKelvin, double perMinute, double lastCelsius) {
        static Melting of(Constants k, Form form, double lastCelsius, double shift) {
            String f = form.letter();
            return new Melting(k.value("Tm" + f) + shift, k.value("w" + f), k.value("m" + f), lastCelsius + shift);
        }

        double solids(double plateau, double at) {
            double x = Math.min(60, Math.max(-60, (at - celsius) / widthKelvin));
            return plateau / (1 + StrictMath.exp(x));
        }

        double balance(double plateau, double solids) {
            double y = Math.min(0.999999 * plateau, Math.max(1e-12, solids));
            return celsius + widthKelvin * StrictMath.log(plateau / y - 1);
        }

        /** Share of a form that melts per minute where this much at least as stable solid is there. */
        double perMinute(double plateau, double solids, double at, double most) {
            if (solids == 0) return 0;
            double over = Math.max(0, at - Math.min(balance(plateau, solids), lastCelsius));
            return Math.min(perMinute * over * over, most);
        }
    }

    /** {@code J·exp(−(b / (Tn − T))²)}, exactly nothing from 0.2 K below Tn on. */
    private record Nucleation(double belowCelsius, double barrierKelvin, double perMinute) {
        private static final double NEAREST_KELVIN = 0.2;

        double perMinute(double celsius) {
            double below = belowCelsius - celsius;
            if (below <= NEAREST_KELVIN) return 0;
            double x = barrierKelvin / below;
            return perMinute * StrictMath.exp(-(x * x));
        }
    }

    /** Growth by how far below its origin the temperature is, no faster beyond a cap. */
    private record Growth(double originCelsius, double capKelvin, double perMinute, double stirGain) {
        double drive(double celsius) {
            return Math.min(capKelvin, Math.max(0, originCelsius - celsius));
        }

        double squarePerMinute(double celsius, double s) {
            double drive = drive(celsius);
            return perMinute * (1 + stirGain * s) * drive * drive;
        }
    }

    /** One form turning into the next within the solid. */
    private record Turning(double minutes, double atCelsius, double perKelvin, double fastestCelsius) {
        double perMinute(double celsius) {
            return StrictMath.exp((Math.min(celsius, fastestCelsius) - atCelsius) / perKelvin) / minutes;
        }
    }

    /** Krieger and Dougherty's shape with a share of particles that depends on the fat. */
    private record Thickening(double particles, double most, double power, double largest) {
        /** With less fat than this leaves, nothing would flow before the first crystal; the figure stops there. */
        private static final double DENSEST = 0.70;

        static Thickening of(Constants k, double fatFraction) {
            double scale = share(k, fatFraction) / share(k, k.value("fatRef"));
            return new Thickening(
                    Math.min(DENSEST, k.value("phi0") * scale), k.value("phim"), k.value("nvis"), k.value("thickMax"));
        }

        private static double share(Constants k, double fatFraction) {
            double particles = (1 - fatFraction) / k.value("rhoPart");
            return particles / (particles + fatFraction / k.value("rhoFat"));
        }

        double ratio(double solids) {
            double all = particles + (1 - particles) * solids;
            double thinning = (1 - particles / most) / Math.max(1e-3, 1 - all / most);
            return Math.min(largest, StrictMath.pow(thinning, power));
        }
    }
}
