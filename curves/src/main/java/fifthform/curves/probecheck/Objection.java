package fifthform.curves.probecheck;

/** Why a point cannot be taken as things are, with what to do. */
public enum Objection {
    NO_READING("No temperature comes from the probe. Push its plugs in and look at the lead."),
    NOT_IN("The reading is nowhere near the point. Put the tip into the water."),
    STILL_FALLING("The reading is still falling. Leave the tip in and wait."),
    STILL_RISING("The reading is still rising. Leave the tip in and wait; for ice, add ice and stir."),
    RESTLESS("The reading jumps. Keep the tip off walls, ice lumps and the bottom, and stir gently."),
    TOO_FAR(
            "The reading is steady more than 5 K off. Is the tip in the air, or the water without ice, or not at a rolling boil? If it is in: the probe or its type is wrong."),
    STUCK(
            "The number does not move at all. A dead line shows this too. Hold the tip between two fingers until the number moves, then put it back.");

    private final String words;

    Objection(String words) {
        this.words = words;
    }

    /** For people: what is wrong and what to do. */
    public String words() {
        return words;
    }
}
