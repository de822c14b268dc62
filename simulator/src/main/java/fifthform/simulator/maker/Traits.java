package fifthform.simulator.maker;

import java.time.Duration;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;

/**
 * What makes one maker differ from another. The numbers of each kind are invented, and so are the kinds; the README of
 * this module lists them.
 *
 * @param listening what the program is to them
 * @param ownJudgement the stages in which they go by the thermometer whatever the program says
 * @param pace how quick and how exact
 * @param stirring how they stir
 * @param slips what they leave out
 * @param phone what calls the hands away
 * @param probeOut how often the probe is out of the chocolate
 * @param touch how long they put a bowl back that has become too cool to pour; zero where they never think of it
 */
record Traits(
        Listening listening,
        Set<Stage> ownJudgement,
        Pace pace,
        Stirring stirring,
        Slips slips,
        Disturbance phone,
        Disturbance probeOut,
        Duration touch) {
    /** Careful hands do not let the spoon rest while a rewarm and its coast last. */
    static final Traits FOLLOWS_CUES = new Traits(
            Listening.ALWAYS,
            EnumSet.noneOf(Stage.class),
            Pace.USUAL,
            new Stirring(0.95, 0.06, 45, 15, Duration.ofSeconds(90)),
            Slips.NONE,
            Disturbance.NEVER,
            Disturbance.NEVER,
            Duration.ZERO);

    /** The spoon rests now and then, and heat gathers at the wall. */
    static final Traits OWN_WAY = new Traits(
            Listening.DEAF,
            EnumSet.allOf(Stage.class),
            Pace.USUAL,
            new Stirring(0.95, 0.06, 45, 15, Duration.ofSeconds(40)),
            Slips.NONE,
            Disturbance.NEVER,
            Disturbance.NEVER,
            Duration.ZERO);

    /** Knows of the heat under way, wipes at once and lets nothing interrupt. */
    static final Traits CAREFUL = new Traits(
            Listening.WHEN_SPOKEN_TO,
            EnumSet.noneOf(Stage.class),
            new Pace(0.8, 0.8, 1.2, 0.8, 0.1),
            new Stirring(0.9, 0.06, 90, 8, Duration.ofSeconds(120)),
            new Slips(0, 1, 1, Duration.ofSeconds(5), 1),
            Disturbance.NEVER,
            Disturbance.NEVER,
            Duration.ofSeconds(6));

    /** No time for crystals, none to settle, and half the keys. */
    static final Traits HASTY = new Traits(
            Listening.WHEN_SPOKEN_TO,
            EnumSet.of(Stage.HOLDING, Stage.SETTLING),
            new Pace(0.7, 1.2, 0, -0.2, 0.3),
            new Stirring(0.8, 0.15, 20, 20, Duration.ofSeconds(15)),
            new Slips(0.03, 20, 0.2, Duration.ofSeconds(8), 0.5),
            Disturbance.NEVER,
            Disturbance.NEVER,
            Duration.ofSeconds(12));

    /** Means well; the phone rings. */
    static final Traits DISTRACTED = new Traits(
            Listening.WHEN_SPOKEN_TO,
            EnumSet.noneOf(Stage.class),
            new Pace(1.3, 1.3, 1, 0, 0.2),
            new Stirring(0.8, 0.15, 40, 20, Duration.ofSeconds(40)),
            new Slips(0.15, 40, 0.6, Duration.ofSeconds(30), 0.6),
            new Disturbance(8, 40, 0.6),
            new Disturbance(20, 25, 0.5),
            Duration.ofSeconds(8));

    /** Slow, gentle, unsure of the numbers, and too long on the bath when putting back. */
    static final Traits BEGINNER = new Traits(
            Listening.WHEN_SPOKEN_TO,
            EnumSet.noneOf(Stage.class),
            new Pace(2, 1.4, 1, 0, 0.7),
            new Stirring(0.5, 0.2, 25, 25, Duration.ofSeconds(30)),
            new Slips(0.05, 30, 0.3, Duration.ofSeconds(30), 0.7),
            Disturbance.NEVER,
            new Disturbance(15, 20, 0.5),
            Duration.ofSeconds(15));

    Traits {
        Objects.requireNonNull(listening, "listening");
        ownJudgement = Set.copyOf(ownJudgement);
        Objects.requireNonNull(pace, "pace");
        Objects.requireNonNull(stirring, "stirring");
        Objects.requireNonNull(slips, "slips");
        Objects.requireNonNull(phone, "phone");
        Objects.requireNonNull(probeOut, "probeOut");
        Objects.requireNonNull(touch, "touch");
    }
}
