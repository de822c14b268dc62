package fifthform.simulator.training;

import fifthform.curves.recipe.Recipe;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.maker.Places;
import java.util.List;
import java.util.Objects;

/**
 * A session that was gone through, with its truth.
 *
 * @param number of the session and its kitchen
 * @param recipe of its chocolate
 * @param kitchen the physics
 * @param vigour how the chocolate is usually stirred
 * @param steps what was lived through
 * @param dips to which dip each step belongs
 * @param turns where it would have turned
 * @param readings the thermometer
 */
record Gone(
        long number,
        Recipe recipe,
        Kitchen kitchen,
        double vigour,
        List<Lived> steps,
        Dips dips,
        Turns turns,
        Readings readings) {
    Gone {
        Objects.requireNonNull(recipe, "recipe");
        Objects.requireNonNull(kitchen, "kitchen");
        steps = List.copyOf(steps);
        Objects.requireNonNull(dips, "dips");
        Objects.requireNonNull(turns, "turns");
        Objects.requireNonNull(readings, "readings");
    }

    static Gone through(
            long number, Kitchen kitchen, Recipe recipe, List<Lived> steps, Readings readings, double vigour) {
        Dips dips = Dips.of(steps, recipe);
        Turns turns = Turns.of(kitchen, vigour, steps, dips);
        return new Gone(number, recipe, kitchen, vigour, steps, dips, turns, readings);
    }

    /** As a lesson: everything in the readings' scale and relative to the step's base. */
    Session session() {
        int count = steps.size();
        float[] inputs = new float[count * Session.INPUTS];
        float[] turn = new float[count];
        float[] later = new float[count];
        byte[] place = new byte[count];
        float[] bulk = new float[count];
        int[] dip = new int[count];
        double[] turnCelsius = new double[count];
        for (int k = 0; k < count; k++) {
            Lived step = steps.get(k);
            double base = step.moment().baseCelsius();
            step.moment().copyInto(inputs, k * Session.INPUTS);
            turnCelsius[k] = readings.inItsScale(turns.turnCelsius(k));
            turn[k] = (float) (turnCelsius[k] - base);
            later[k] = (float) (readings.inItsScale(turns.laterCelsius(k)) - base);
            bulk[k] = (float) (readings.inItsScale(step.kitchen().bulkCelsius()) - base);
            place[k] = place(step);
            dip[k] = dips.dip(k);
        }
        return new Session(number, inputs, turn, later, place, bulk, Weights.of(steps, dips, turnCelsius, recipe), dip);
    }

    private static byte place(Lived step) {
        return switch (Places.of(step.spot())) {
            case BATH -> Session.BATH;
            case TABLE -> Session.TABLE;
            case COLD_WATER -> Session.COLD_WATER;
        };
    }
}
