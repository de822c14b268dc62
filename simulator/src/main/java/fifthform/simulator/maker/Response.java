package fifthform.simulator.maker;

import fifthform.simulator.bowl.Spot;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Set;

/** What somebody does about a cue, an alarm or the thermometer, in the stages in which it makes sense. */
sealed interface Response {
    /** The stages in which the hands do it; in others the maker has already done it or thinks it odd. */
    Set<Stage> stages();

    Course carryOut(Course course, Instant at);

    /** On to this stage. */
    record GoOn(Stage next, Set<Stage> stages) implements Response {
        static GoOn to(Stage next, Stage first, Stage... others) {
            return new GoOn(next, EnumSet.of(first, others));
        }

        @Override
        public Course carryOut(Course course, Instant at) {
            return course.begin(at, next);
        }
    }

    /** Out of the water: on to the next stage from the stage that is spent in it, else the end of a visit. */
    record OutOfTheWater(Stage spentIn, Set<Stage> stages) implements Response {
        static OutOfTheWater of(Stage spentIn, Stage first, Stage... others) {
            return new OutOfTheWater(spentIn, EnumSet.of(first, others));
        }

        @Override
        public Course carryOut(Course course, Instant at) {
            return course.stage() == spentIn ? course.begin(at, spentIn.following()) : course.backOnTable(at);
        }
    }

    /** Back into the water for a while: cold while crystals are made, warm when the rewarm fell short. */
    record PutBack(Duration time, Set<Stage> stages) implements Response {
        @Override
        public Course carryOut(Course course, Instant at) {
            return course.visit(at, course.stage() == Stage.HOLDING ? Spot.COLD_WATER : Spot.WARM_BATH, time);
        }
    }

    /** On from making crystals by a first short dip: the bowl is back on the table after it, and settles. */
    record FirstDip(Duration time, Set<Stage> stages) implements Response {
        static FirstDip of(Duration time, Stage first, Stage... others) {
            return new FirstDip(time, EnumSet.of(first, others));
        }

        @Override
        public Course carryOut(Course course, Instant at) {
            return course.begin(at, Stage.SETTLING).visit(at, Spot.WARM_BATH, time);
        }
    }

    /** Warm air at the chocolate for a while; the bowl stays where it is. */
    record WarmAir(Duration time, Set<Stage> stages) implements Response {
        @Override
        public Course carryOut(Course course, Instant at) {
            return course.blowing(at.plus(time));
        }
    }

    /** The knob of the warm box. */
    record TurnBox(double kelvin, Set<Stage> stages) implements Response {
        @Override
        public Course carryOut(Course course, Instant at) {
            return course.boxTurned(kelvin);
        }
    }

    /** Some hot water into the bath that the bowl stands over. */
    record WarmBath(double kelvin, Set<Stage> stages) implements Response {
        @Override
        public Course carryOut(Course course, Instant at) {
            return course.bathWarmed(at, kelvin);
        }
    }

    /** Off the bath while it warms, on to a cool cloth when it is already off. */
    record CoolDown(Duration time) implements Response {
        @Override
        public Set<Stage> stages() {
            return EnumSet.of(Stage.WARMING, Stage.SETTLING, Stage.POURING);
        }

        @Override
        public Course carryOut(Course course, Instant at) {
            if (course.stage() == Stage.WARMING) return course.begin(at, Stage.SETTLING);
            return course.visit(at, Spot.COOL_CLOTH, time);
        }
    }
}
