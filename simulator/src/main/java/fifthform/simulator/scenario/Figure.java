package fifthform.simulator.scenario;

import fifthform.simulator.device.AdapterSettings;
import java.util.Optional;

/** The numbers a scenario may set: word, unit, range, and the value where the file says nothing. */
enum Figure {
    /** Same seed, same batch. */
    SEED("seed", "", 0, 1e15, 1),
    AMOUNT("amount", "g", 100, 5000, 500),
    WALL("wall", "mm", 0.2, 12, 0.8),
    /** Mass of the whole bowl over that of its wetted part; a guess. */
    RIM("rim", "x", 1, 4, 1.3),
    /** Wetted area over that of the usual bowl: below 1 deep, above 1 wide. */
    SHAPE("shape", "x", 0.5, 2, 1),
    /** Water that clings outside; a guess. */
    FILM("film", "mm", 0.05, 1, 0.2),
    /** From the wall to the chocolate at it, from there to the bulk when stirred well and left alone; guesses. */
    WALL_CONTACT("wall contact", "W/m2K", 20, 1000, 200),
    STIRRED("stirred exchange", "W/m2K", 30, 2000, 260),
    STILL("still exchange", "W/m2K", 1, 200, 26),
    /** Share of the chocolate that makes up the layer at the wall; a guess. */
    LAYER("layer", "%", 2, 40, 8),
    /** Convection to the room, without radiation and evaporation; a guess. */
    DRAUGHT("draught", "W/m2K", 0, 50, 5),
    ROOM("room", "C", 5, 40, 21),
    HUMIDITY("humidity", "%", 5, 100, 50),
    FRIDGE("fridge", "C", -5, 20, 5),
    SPOON("spoon", "J/K", 2, 200, 20),
    HOT_BATH("hot bath", "C", 40, 98, 70),
    /** Where the burner is turned down to; from 103 on it never is, and the water boils. */
    HELD("hot bath held", "C", 30, 110, 52),
    HOT_WATER("hot water", "kg", 0.1, 20, 1.5),
    BURNER("burner", "W", 0, 5000, 900),
    /** From the water to what of the bowl stands in it: about 550; a guess. */
    HOT_CONTACT("hot contact", "W/m2K", 10, 1500, 550),
    /** How much of the bowl stands in the water, 0 to 1; steam heats the rest. */
    HOT_DIP("hot dip", "x", 0, 1, 0.3),
    /** Metal of the pot. A thick one is warmer than its water and goes on heating. */
    POT("pot", "J/K", 50, 5000, 400),
    WARM_BATH("warm bath", "C", 25, 80, 46),
    WARM_WATER("warm water", "kg", 0.1, 20, 2),
    COLD_BATH("cold bath", "C", 0, 30, 16),
    COLD_WATER("cold water", "kg", 0.1, 50, 4),
    /** Beckett ed. 2009, pp. 667–668: dark 46, milk 44. */
    LATENT_HEAT("latent heat", "kJ/kg", 0, 100, 46),
    MELTS_FROM("melts from", "C", 15, 35, 28),
    MELTS_TO("melts to", "C", 20, 40, 34),
    /** Against the middle of what is known of cocoa butter; see {@link fifthform.simulator.bowl.Fat}. */
    NUCLEATION("nucleation", "x", 0.1, 10, 1),
    CRYSTAL_GROWTH("crystal growth", "x", 0.2, 5, 1),
    CRYSTAL_MELTING("crystal melting", "x", 0.2, 5, 1),
    REACTION("reaction", "s", 0.2, 30, 2.5),
    REACTION_SPREAD("reaction spread", "", 0, 1.5, 0.35),
    MELTED_AT("melted at", "C", 30, 60, 47),
    COOL_AT("cool at", "C", 15, 32, 28),
    HOLD("hold", "min", 0, 30, 5),
    WARM_AT("warm at", "C", 25, 36, 31.5),
    /** What a warm box is set to at first. */
    BOX("box", "C", 15, 60, 32),
    POUR("pour", "min", 0, 60, 6),
    /** How much of their usual vigour the hands put into stirring; 0 is a spoon that stays away. */
    STIRRING("stirring", "x", 0, 1, 1),
    /** None unless the scenario says so. */
    SEED_ADDED("seed added", "g", 0, 2000, 0),
    /** Just below where seed melts; common practice, no source. */
    SEED_AT("seed at", "C", 20, 40, 33.5),
    /** Water that comes over the rim when the bowl goes into the cold water. */
    SPLASH("splash", "g", 0, 500, 0),
    PROBE_LAG("probe lag", "s", 0.2, 120, 4),
    PROBE_DEPTH("probe depth", "mm", 2, 150, 30),
    /** How much of the wall the probe feels where it rests: 0 hangs free, 0.4 leans on it. */
    PROBE_WALL("probe wall", "x", 0, 1, 0),
    RESOLUTION("resolution", "K", 0.001, 5, 0.05),
    NOISE("noise", "K", 0, 5, 0.03),
    OFFSET("offset", "K", -10, 10, 0),
    GAIN("gain", "x", 0.9, 1.1, 1),
    DRIFT("drift", "K/h", -10, 10, 0),
    JUNCTION("junction", "C", 0, 60, AdapterSettings.USUAL_JUNCTION_CELSIUS),
    INTERVAL("interval", "s", 0.125, 10, 0.5);

    private final String word;
    private final String unit;
    private final double low;
    private final double high;
    private final double usual;

    Figure(String word, String unit, double low, double high, double usual) {
        this.word = word;
        this.unit = unit;
        this.low = low;
        this.high = high;
        this.usual = usual;
    }

    String word() {
        return word;
    }

    /** Empty for a bare number. */
    String unit() {
        return unit;
    }

    double low() {
        return low;
    }

    double high() {
        return high;
    }

    double usual() {
        return usual;
    }

    static Optional<Figure> fromWord(String word) {
        for (Figure figure : values()) if (figure.word.equals(word)) return Optional.of(figure);
        return Optional.empty();
    }
}
