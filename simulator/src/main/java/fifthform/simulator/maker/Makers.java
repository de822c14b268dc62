package fifthform.simulator.maker;

/** The makers there are, each at the beginning of a batch. */
public final class Makers {
    private Makers() {}

    /**
     * Does what the program says, a reaction time later. Where it says nothing, goes on unasked when patience is at an
     * end or the thermometer is far past.
     */
    public static Maker followsCues(Habits habits, Luck luck) {
        return Person.beginning(Traits.FOLLOWS_CUES, habits, luck);
    }

    /**
     * Goes by the thermometer and takes no notice of the program: acts a reaction time after the number is there, and so
     * learns of the heat under way only when it has arrived.
     */
    public static Maker ownWay(Habits habits, Luck luck) {
        return Person.beginning(Traits.OWN_WAY, habits, luck);
    }

    /** Lifts early, holds long, stirs well, wipes at once, puts back what has become too cool. */
    public static Maker careful(Habits habits, Luck luck) {
        return Person.beginning(Traits.CAREFUL, habits, luck);
    }

    /** Skips the hold, stirs in bursts, hardly wipes, presses half the keys. */
    public static Maker hasty(Habits habits, Luck luck) {
        return Person.beginning(Traits.HASTY, habits, luck);
    }

    /** Answers the phone, forgets, takes the probe out. */
    public static Maker distracted(Habits habits, Luck luck) {
        return Person.beginning(Traits.DISTRACTED, habits, luck);
    }

    /** Slow, stirs gently, unsure of the numbers, puts back for too long. */
    public static Maker beginner(Habits habits, Luck luck) {
        return Person.beginning(Traits.BEGINNER, habits, luck);
    }

    /**
     * Explores: melts, cools in one or several goes, and dips in drawn ways from a touch of seconds to minutes too long,
     * within 45 min in all. Takes no notice of the program. For training; nobody tempers like this.
     */
    public static Exploring explorer(Habits habits, Luck luck) {
        return Explorer.beginning(habits, luck);
    }

    /**
     * Melts, cools and holds by the thermometer, leaves the cold water so that the trough comes near the cool range, and
     * does with the rewarm what is asked and no more.
     */
    public static Judging judge(Rewarm rewarm, Habits habits, Luck luck) {
        return Judge.beginning(rewarm, habits, luck);
    }
}
