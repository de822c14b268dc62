package fifthform.curves.engine;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.ProbeId;
import java.time.Instant;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/**
 * The smallest kitchen that coasts, for stories about the engine: chocolate and wall as two lumps, no crystals. The
 * simulator's own kitchen is richer and is used where whole batches are judged.
 */
final class StoryKitchen {
    static final ProbeId BOWL = new ProbeId("bowl");
    private static final double STEP_SECONDS = 0.05;

    private final double chocolateFollowsWallSeconds;
    private final double wallShare;
    private final double waterFilm;
    private final SplittableRandom noise = new SplittableRandom(5);
    private double chocolateCelsius;
    private double wallCelsius;
    private double tipCelsius;
    private double waterCelsius;
    private Place place;
    private Instant at;

    /**
     * A kitchen.
     *
     * @param chocolateFollowsWallSeconds time constant of the chocolate behind the wall, s
     * @param wallShare heat capacity of the wall by that of the chocolate
     * @param waterFilm how much better water couples to the wall than chocolate does
     */
    StoryKitchen(
            Instant start, double celsius, double chocolateFollowsWallSeconds, double wallShare, double waterFilm) {
        this.at = start;
        this.chocolateCelsius = celsius;
        this.wallCelsius = celsius;
        this.tipCelsius = celsius;
        this.chocolateFollowsWallSeconds = chocolateFollowsWallSeconds;
        this.wallShare = wallShare;
        this.waterFilm = waterFilm;
        this.place = Place.TABLE;
    }

    void put(Place to, double celsius) {
        place = to;
        waterCelsius = celsius;
    }

    Place place() {
        return place;
    }

    double chocolateCelsius() {
        return chocolateCelsius;
    }

    Instant at() {
        return at;
    }

    /** Half a second later: what the probe reads, in steps of 0.05 K. */
    Sample read() {
        for (int i = 0; i < 10; i++) step();
        at = at.plusMillis(500);
        double read = tipCelsius + 0.03 * gaussian();
        double rounded = Math.round(read / 0.05) * 0.05;
        return reading(at, Math.round(rounded * 1e6) / 1e6);
    }

    /** A reading as the wire could have said it. */
    static Sample reading(Instant at, double celsius) {
        return new Sample(at, BOWL, celsius, 0.015, OptionalDouble.empty(), OptionalDouble.empty());
    }

    private void step() {
        double toChocolate = (wallCelsius - chocolateCelsius) / chocolateFollowsWallSeconds;
        double fromWater = place == Place.TABLE
                ? 0
                : waterFilm * (waterCelsius - wallCelsius) / chocolateFollowsWallSeconds / wallShare;
        chocolateCelsius += STEP_SECONDS * (toChocolate - (chocolateCelsius - 21) / 2700);
        wallCelsius += STEP_SECONDS * (fromWater - toChocolate / wallShare);
        tipCelsius += STEP_SECONDS * (chocolateCelsius - tipCelsius) / 4;
    }

    private double gaussian() {
        double sum = 0;
        for (int i = 0; i < 12; i++) sum += noise.nextDouble();
        return sum - 6;
    }
}
