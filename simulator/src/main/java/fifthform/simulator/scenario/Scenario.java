package fifthform.simulator.scenario;

import fifthform.curves.check.Parsed;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.device.AdapterSettings;
import fifthform.simulator.device.Language;
import fifthform.simulator.device.PlannedFault;
import fifthform.simulator.device.RunningKitchen;
import fifthform.simulator.maker.Habits;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.maker.Maker;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/**
 * An invented batch, ready to be gone through.
 *
 * @param id its name in commands: that of its file
 * @param title a few words for lists
 * @param about one sentence on what it shows
 * @param demo the words that say that it is invented
 * @param chocolate id of the recipe it is tempered by
 * @param seed same seed, same batch
 * @param kitchen what stands in the kitchen
 * @param begins how the kitchen is found
 * @param maker who tempers
 * @param habits how
 * @param bowlAdapter the adapter of the probe in the chocolate
 * @param expected how it should end
 */
public record Scenario(
        String id,
        String title,
        String about,
        String demo,
        String chocolate,
        long seed,
        Kitchen kitchen,
        KitchenState begins,
        MakerKind maker,
        Habits habits,
        AdapterSettings bowlAdapter,
        Expected expected) {
    public Scenario {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(about, "about");
        Objects.requireNonNull(demo, "demo");
        Objects.requireNonNull(chocolate, "chocolate");
        Objects.requireNonNull(kitchen, "kitchen");
        Objects.requireNonNull(begins, "begins");
        Objects.requireNonNull(maker, "maker");
        Objects.requireNonNull(habits, "habits");
        Objects.requireNonNull(bowlAdapter, "bowlAdapter");
        Objects.requireNonNull(expected, "expected");
    }

    /** The batch from its beginning, with its own seed. */
    public RunningKitchen start(Instant at) {
        return start(at, seed);
    }

    /** The same batch with other luck. */
    public RunningKitchen start(Instant at, long otherSeed) {
        SplittableRandom random = new SplittableRandom(otherSeed);
        return start(at, maker.with(habits, new Luck(random.split().nextLong())), random);
    }

    /** The batch from its beginning in these hands, for somebody who is none of the kinds. */
    public RunningKitchen startWith(Maker hands, Instant at) {
        return start(at, hands, new SplittableRandom(seed));
    }

    private RunningKitchen start(Instant at, Maker hands, SplittableRandom random) {
        return new RunningKitchen(kitchen, begins, hands, bowlAdapter, AdapterSettings.USUAL_BATH, at, random.split());
    }

    /** The same kitchen and habits in the hands of somebody else, which may end in any way. */
    public Scenario madeBy(MakerKind other) {
        return new Scenario(
                id,
                title,
                about,
                demo,
                chocolate,
                seed,
                kitchen,
                begins,
                other,
                habits,
                bowlAdapter,
                Expected.ANYTHING);
    }

    /**
     * The same batch with an adapter of another language.
     *
     * @return refused where such an adapter cannot have the faults of this scenario
     */
    public Parsed<Scenario> speaking(Language other) {
        for (PlannedFault fault : bowlAdapter.faults()) {
            if (other.troubles().contains(fault.trouble())) continue;
            return Parsed.refused(
                    "scenario \"" + id + "\"",
                    "An adapter that speaks " + other.talk().protocol() + " cannot have the fault \""
                            + fault.trouble().word() + "\" of this scenario.",
                    "Take another scenario or another --talk.");
        }
        AdapterSettings adapter = bowlAdapter.speaking(other);
        return Parsed.accepted(new Scenario(
                id, title, about, demo, chocolate, seed, kitchen, begins, maker, habits, adapter, expected));
    }

    /** What a maker would tell the program of this bowl: its material and the amount, nothing learned. */
    public Bowl bowl() {
        BowlMaterial material = switch (kitchen.bowl().material()) {
            case STEEL -> BowlMaterial.STEEL;
            case GLASS -> BowlMaterial.GLASS;
            case PLASTIC -> BowlMaterial.PLASTIC;
            case ALUMINIUM -> BowlMaterial.ALUMINIUM;
        };
        double grams = kitchen.chocolate().kilograms() * 1000;
        return new Bowl("practice-" + id, material, OptionalDouble.of(grams), Optional.empty());
    }
}
