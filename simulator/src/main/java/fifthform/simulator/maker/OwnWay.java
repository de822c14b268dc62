package fifthform.simulator.maker;

import fifthform.curves.engine.Event;
import fifthform.curves.input.MakerAction;
import fifthform.simulator.bowl.Hands;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Goes by the thermometer and takes no notice of the program: acts a reaction time after the number is there, and so
 * learns of the heat under way only when it has arrived.
 */
public final class OwnWay implements Maker {
    /** Then the spoon rests now and then, and heat gathers at the wall. A guess (no source). */
    private static final Duration STIRRED_AFTER_A_MOVE = Duration.ofSeconds(40);

    /** Over the aim by this much the bowl still settles before the pouring, K. Our own choice. */
    private static final double SETTLED_KELVIN = 0.5;

    private final Habits habits;
    private final Reaction reaction;
    private final Course course;
    private Optional<Instant> actsAt = Optional.empty();

    public OwnWay(Habits habits, SplittableRandom random) {
        this.habits = habits;
        reaction = new Reaction(habits, random.split());
        course = new Course(new StirRhythm(random.split()), STIRRED_AFTER_A_MOVE);
    }

    @Override
    public void told(Event event) {
        // Nobody is listening; that is the point of this maker.
    }

    @Override
    public Hands next(KitchenView view) {
        if (actsAt.isEmpty() && timeToAct(view)) actsAt = Optional.of(view.at().plus(reaction.draw()));
        if (actsAt.isPresent() && !view.at().isBefore(actsAt.get())) {
            actsAt = Optional.empty();
            course.begin(view.at(), course.stage().following());
        }
        return course.hands(view.at());
    }

    private boolean timeToAct(KitchenView view) {
        boolean patienceEnds =
                course.inStageFor(view.at()).compareTo(course.stage().patience()) >= 0;
        double shown =
                view.shownCelsius().orElse(Double.NaN); // compares as false: a dark display changes nobody's mind
        return switch (course.stage()) {
            case MELTING -> patienceEnds || shown >= habits.meltedCelsius();
            case COOLING -> patienceEnds || shown <= habits.coolCelsius();
            case HOLDING -> course.inStageFor(view.at()).compareTo(habits.hold()) >= 0;
            case WARMING -> patienceEnds || shown >= habits.warmCelsius();
            case SETTLING -> patienceEnds || settled(view, shown);
            case POURING -> course.inStageFor(view.at()).compareTo(habits.pouring()) >= 0;
            case GONE -> false;
        };
    }

    private boolean settled(KitchenView view, double shown) {
        return course.inStageFor(view.at()).toSeconds() >= 60 && shown <= habits.warmCelsius() + SETTLED_KELVIN;
    }

    @Override
    public List<MakerAction> presses() {
        return course.takePresses();
    }

    @Override
    public boolean done() {
        return course.stage() == Stage.GONE;
    }
}
