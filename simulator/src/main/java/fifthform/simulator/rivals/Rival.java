package fifthform.simulator.rivals;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.Phase;
import fifthform.simulator.bench.Program;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** A program that forecasts where the chocolate turns if it is lifted now, and says when to lift. */
public interface Rival extends Program {
    /** What it says now of the turning point; empty where it says nothing. */
    Optional<Said> said();

    /** Where it thinks that the bowl stands; empty where it never says. */
    default Optional<Place> place() {
        return Optional.empty();
    }

    /** Which phase it thinks it is; empty where it never says. */
    default Optional<Phase> phase() {
        return Optional.empty();
    }

    @Override
    default OptionalDouble turnIfLiftedCelsius() {
        return said().map(s -> OptionalDouble.of(s.celsius())).orElse(OptionalDouble.empty());
    }

    /**
     * A turning point as somebody forecasts it, in the readings' scale.
     *
     * @param celsius the middle, °C
     * @param lowerCelsius the 5 % point, °C; the middle where no band is given
     * @param upperCelsius the 95 % point, °C; the middle where no band is given
     */
    record Said(double celsius, double lowerCelsius, double upperCelsius) {
        /** Without a band. */
        static Said at(double celsius) {
            return new Said(celsius, celsius, celsius);
        }

        boolean holds(double truthCelsius) {
            return lowerCelsius <= truthCelsius && truthCelsius <= upperCelsius;
        }

        double widthKelvin() {
            return upperCelsius - lowerCelsius;
        }
    }

    /** Nothing to say. */
    static Heard silent(Rival after) {
        return new Heard(Objects.requireNonNull(after, "after"), List.of());
    }
}
