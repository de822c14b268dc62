package fifthform.simulator.maker;

import fifthform.simulator.bowl.Spot;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Set;

/** What somebody does about a cue or an alarm, in the stages in which it makes sense. */
sealed interface Response {
    /** The stages in which the hands obey; in others the maker has already done it or thinks it odd. */
    Set<Stage> stages();

    void carryOut(Course course, Instant at);

    /** On to this stage. */
    record GoOn(Stage next, Set<Stage> stages) implements Response {
        static GoOn to(Stage next, Stage first, Stage... others) {
            return new GoOn(next, EnumSet.of(first, others));
        }

        @Override
        public void carryOut(Course course, Instant at) {
            course.begin(at, next);
        }
    }

    /** The bowl stands there for a while, then on the table again. */
    record Visit(Spot spot, Duration time, Set<Stage> stages) implements Response {
        static Visit of(Spot spot, Duration time) {
            return new Visit(spot, time, EnumSet.of(Stage.SETTLING, Stage.POURING));
        }

        @Override
        public void carryOut(Course course, Instant at) {
            course.visit(at, spot, time);
        }
    }

    /** Off the bath while it warms, on to a cool cloth when it is already off. */
    record CoolDown(Duration time) implements Response {
        @Override
        public Set<Stage> stages() {
            return EnumSet.of(Stage.WARMING, Stage.SETTLING, Stage.POURING);
        }

        @Override
        public void carryOut(Course course, Instant at) {
            if (course.stage() == Stage.WARMING) course.begin(at, Stage.SETTLING);
            else course.visit(at, Spot.COOL_CLOTH, time);
        }
    }
}
