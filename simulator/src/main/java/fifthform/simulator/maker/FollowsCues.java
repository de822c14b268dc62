package fifthform.simulator.maker;

import fifthform.curves.engine.Event;
import fifthform.curves.input.MakerAction;
import fifthform.simulator.bowl.Hands;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Does what the program says, a reaction time later. Where it says nothing, goes on unasked when patience is at an end
 * or the thermometer is far past.
 */
public final class FollowsCues implements Maker {
    /** Careful hands do not let the spoon rest while a rewarm and its coast last. A guess (no source). */
    private static final Duration STIRRED_AFTER_A_MOVE = Duration.ofSeconds(90);

    /** So far past the usual temperature nobody waits for a cue any more, K. Our own choice. */
    private static final double FAR_PAST_KELVIN = 3.5;

    private record Intention(Instant due, Response response) {}

    private final Habits habits;
    private final Reaction reaction;
    private final Course course;
    private final Training training = new Training();
    private final List<Intention> intentions = new ArrayList<>();

    public FollowsCues(Habits habits, SplittableRandom random) {
        this.habits = habits;
        reaction = new Reaction(habits, random.split());
        course = new Course(new StirRhythm(random.split()), STIRRED_AFTER_A_MOVE);
    }

    @Override
    public void told(Event event) {
        event.fold(training).ifPresent(response -> intend(event.at(), response));
    }

    private void intend(Instant at, Response response) {
        intentions.add(new Intention(at.plus(reaction.draw()), response));
        intentions.sort(Comparator.comparing(Intention::due));
    }

    @Override
    public Hands next(KitchenView view) {
        while (!intentions.isEmpty() && !view.at().isBefore(intentions.get(0).due())) {
            Response response = intentions.remove(0).response();
            if (response.stages().contains(course.stage())) response.carryOut(course, view.at());
        }
        if (outOfPatience(view)) course.begin(view.at(), course.stage().following());
        return course.hands(view.at());
    }

    private boolean outOfPatience(KitchenView view) {
        boolean longEnough =
                course.inStageFor(view.at()).compareTo(course.stage().patience()) >= 0;
        double shown =
                view.shownCelsius().orElse(Double.NaN); // compares as false: a dark display changes nobody's mind
        return switch (course.stage()) {
            case MELTING -> longEnough || shown >= habits.meltedCelsius() + FAR_PAST_KELVIN;
            case COOLING -> longEnough || shown <= habits.coolCelsius() - FAR_PAST_KELVIN;
            case WARMING -> longEnough || shown >= habits.warmCelsius() + FAR_PAST_KELVIN;
            case HOLDING, SETTLING -> longEnough;
            case POURING -> course.inStageFor(view.at()).compareTo(habits.pouring()) >= 0;
            case GONE -> false;
        };
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
