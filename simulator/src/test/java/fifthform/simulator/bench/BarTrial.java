package fifthform.simulator.bench;

import fifthform.curves.engine.Engine;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Step;
import fifthform.curves.fault.Clue;
import fifthform.curves.fault.Clues;
import fifthform.curves.fault.CurveClues;
import fifthform.curves.fault.Diagnosis;
import fifthform.curves.fault.FaultBook;
import fifthform.curves.fault.FaultFinder;
import fifthform.curves.input.Input;
import fifthform.curves.learning.BarLook;
import fifthform.curves.learning.Bloom;
import fifthform.curves.learning.Gloss;
import fifthform.curves.learning.Release;
import fifthform.curves.learning.Snap;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.review.Causes;
import fifthform.curves.review.Tally;
import fifthform.curves.setting.Condensation;
import fifthform.curves.setting.CoolingPlace;
import fifthform.curves.setting.SetInput;
import fifthform.curves.setting.SetPlan;
import fifthform.curves.setting.SetRecord;
import fifthform.curves.setting.SetTime;
import fifthform.curves.setting.SettingWatch;
import fifthform.curves.setting.StoreRecord;
import fifthform.curves.setting.StoreWatch;
import fifthform.curves.setup.Setup;
import fifthform.simulator.bars.BarsInTime;
import fifthform.simulator.bars.Fate;
import fifthform.simulator.bars.Mould;
import fifthform.simulator.bars.SetBar;
import fifthform.simulator.bench.BatchRun.Presses;
import fifthform.simulator.bowl.Chocolate;
import fifthform.simulator.bowl.Forms;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.device.Truth;
import fifthform.simulator.scenario.Scenario;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * One batch from the simulated kitchen through the engine, its bars through mould and store, the looks at them, and what
 * the finder makes of it. What is in {@link Mishap} and {@code simulator.bars} knows nothing of the finder's rules.
 *
 * @param heated whether it really went above the warning temperature after the cool step
 * @param cooled whether it really was cold enough for crystals
 * @param bars how the bars really are
 * @param looks what the maker saw
 * @param before what the finder said before it asked anything
 * @param after what it said in the end
 * @param asked how many questions it asked
 */
record BarTrial(
        Mishap mishap,
        boolean heated,
        boolean cooled,
        BarsInTime bars,
        List<BarLook> looks,
        Diagnosis before,
        Diagnosis after,
        int asked,
        Clues clues) {
    private static final FaultFinder FINDER = new FaultFinder(FaultBook.PACKED);
    private static final int MOST_QUESTIONS = 6;
    /** How often somebody says no to what was, and yes to what was not. Invented. */
    private static final double WRONG_NO = 0.05;

    private static final double WRONG_YES = 0.015;
    private static final double NO_ANSWER = 0.08;

    /** What is known of a bowl when it is poured. */
    private record Poured(
            Causes causes,
            Tally tally,
            Forms forms,
            double celsius,
            double meltedCelsius,
            double hottestCelsius,
            double coolestCelsius,
            Scenario scenario,
            Recipe recipe) {}

    /** A batch of this number with this mishap. */
    static BarTrial of(Fleet fleet, long number, Mishap mishap) {
        SplittableRandom luck = new SplittableRandom(31 * fleet.seed() + 1009 * number + mishap.ordinal());
        Poured poured = pour(fleet, number, mishap, luck);
        return new Kitchen(poured, mishap, luck).trial();
    }

    /** What befalls bars, and nothing, each on the bars of one and the same bowl: the kitchen is gone through once. */
    static List<BarTrial> ofOneBowl(Fleet fleet, long number) {
        Poured poured = pour(fleet, number, Mishap.NONE, new SplittableRandom(number));
        return Stream.of(Mishap.values())
                .filter(mishap -> !mishap.isOfTheBowl())
                .map(mishap ->
                        new Kitchen(poured, mishap, new SplittableRandom(1009 * number + mishap.ordinal())).trial())
                .toList();
    }

    private static Poured pour(Fleet fleet, long number, Mishap mishap, SplittableRandom luck) {
        Scenario scenario = CauseTrial.scenario(fleet, number, mishap.lines(luck), mishap.name());
        Recipe recipe = RecipeShelf.recipe(scenario.chocolate());
        Watching program = new Watching(EngineProgram.beginning(scenario, recipe, BatchRun.BEGINS));
        BatchRecord batch = BatchRun.run(scenario, number, program, Presses.PRESSED);
        double melted = Double.NEGATIVE_INFINITY;
        double coolest = Double.POSITIVE_INFINITY;
        double hottest = Double.NEGATIVE_INFINITY;
        boolean cooled = false;
        boolean warmed = false;
        for (Truth truth : batch.truth()) {
            cooled |= truth.spot() == Spot.COLD_WATER;
            warmed |= cooled && truth.spot() == Spot.WARM_BATH;
            if (!cooled) melted = Math.max(melted, truth.bulkCelsius());
            else if (!warmed) coolest = Math.min(coolest, truth.bulkCelsius());
            if (warmed) hottest = Math.max(hottest, truth.bulkCelsius());
        }
        Truth last = batch.truth().get(batch.truth().size() - 1);
        return new Poured(
                program.causes,
                program.tally,
                last.forms().orElseThrow(),
                last.bulkCelsius(),
                melted,
                hottest,
                coolest,
                scenario,
                recipe);
    }

    /** Whether the bars really are bad, as anybody would see them. */
    boolean isBad() {
        return looks.stream().anyMatch(BarTrial::isBad);
    }

    private static boolean isBad(BarLook look) {
        return !look.bloom().contains(Bloom.NONE)
                || look.snap().filter(s -> s != Snap.CLEAN).isPresent()
                || look.gloss().filter(g -> g == Gloss.DULL).isPresent()
                || look.release()
                        .filter(r -> r == Release.STUCK || r == Release.SOME_STUCK)
                        .isPresent();
    }

    /** Whether its chocolate really was in temper. */
    boolean isTempered() {
        return bars.untempered() < 0.12 && bars.thick() < 0.25;
    }

    /** Whether the mishap did what it was meant to: the bars are bad, and by it alone. */
    boolean shows() {
        if (mishap == Mishap.NONE) return isTempered();
        boolean bowl = mishap.isOfTheBowl();
        double seed = bars.set().poured().stableFraction();
        return switch (mishap) {
            case LATE_LIFT, WORKED_HOT -> isBad() && bars.untempered() > 0.5 && cooled;
            case COOLED_WARM, HELD_SHORT, SEED_MELTED -> isBad() && bars.untempered() > 0.5 && !heated;
            case UNSTIRRED, MILD_MELT -> isBad() && bars.untempered() > 0.5 && !heated && cooled;
            case PROBE_READS_LOW -> isBad() && bars.untempered() > 0.5;
            case FREEZER -> isBad() && seed > 0.006 && seed < 0.07;
            case HELD_LONG -> isBad() && bars.thick() > 0.6 && bars.untempered() < 0.3;
            default -> isBad() && (bowl ? bars.untempered() < 0.5 : isTempered());
        };
    }

    /** Whether it shows causes at all: as the likely one, as possible ones, or as what a weak sign may come from. */
    boolean names() {
        return after.word() == Diagnosis.Word.LIKELY
                || after.word() == Diagnosis.Word.OPEN
                || after.word() == Diagnosis.Word.WEAK;
    }

    boolean isFirst() {
        return names() && after.suspects().get(0).fault() == mishap.truth();
    }

    boolean isAmongThree() {
        return names() && after.suspects().stream().limit(3).anyMatch(s -> s.fault() == mishap.truth());
    }

    boolean wasFirstUnasked() {
        return before.suspects().get(0).fault() == mishap.truth();
    }

    /** The bars of one bowl, and the maker who answers for them. */
    private static final class Kitchen {
        private final Poured poured;
        private final Mishap mishap;
        private final SplittableRandom luck;
        private Fate fate;
        private double millimetres;
        private double watts = 12;
        private double airCelsius;
        private double roomCelsius;
        private boolean oldStock;
        private boolean pieces;
        private boolean fridge;

        Kitchen(Poured poured, Mishap mishap, SplittableRandom luck) {
            this.poured = poured;
            this.mishap = mishap;
            this.luck = luck;
        }

        private double between(double low, double high) {
            return low + (high - low) * luck.nextDouble();
        }

        BarTrial trial() {
            roomCelsius = between(18, 23);
            millimetres = between(6, 11);
            airCelsius = between(11, 17);
            fridge = airCelsius < 13;
            oldStock = luck.nextDouble() < 0.12;
            pieces = luck.nextDouble() < 0.1;
            double store = between(15.5, 19.5);
            double swing = between(0.2, 1);
            fate = Fate.GOOD
                    .withMould(between(20.5, 26), between(0, 0.2))
                    .storedAt(h -> store + swing * Math.sin(2 * Math.PI * h / 24))
                    .withOil(pieces ? between(0, 3) : 0);
            if (mishap.isOfTheBowl()) bowl();
            else bars();
            return seen(set());
        }

        private void bowl() {
            if (mishap == Mishap.MILD_MELT) {
                oldStock = true;
                double over = poured.meltedCelsius() - 37;
                fate = fate.withOldCrystals(between(7, 14) * Math.exp(-Math.max(0, over) / 5));
            }
            if (mishap == Mishap.SPLASH) {
                double grams = poured.scenario().kitchen().chocolate().kilograms() * 1000;
                fate = fate.withWater(100 * 12 / grams * between(0.8, 1.4));
            }
            double bears = poured.scenario().chocolate().equals("dark") ? 55 : 50;
            fate = fate.withBurnt(Math.max(0, poured.meltedCelsius() - bears));
        }

        private void bars() {
            switch (mishap) {
                case WARM_AND_THICK -> {
                    airCelsius = between(22.5, 25.5);
                    millimetres = between(13, 22);
                    watts = between(4, 7);
                    fridge = false;
                }
                case FREEZER -> {
                    airCelsius = between(-25, -15);
                    watts = between(20, 35);
                    millimetres = between(4, 7);
                    fridge = true;
                }
                case COLD_MOULD -> fate = fate.withMould(between(6, 15.5), fate.roughness());
                case ROUGH_MOULD -> fate = fate.withMould(fate.mouldCelsius(), between(0.6, 1));
                case OPENED_COLD -> {
                    airCelsius = between(5, 9);
                    fridge = true;
                    fate = fate.withDew(Fate.dewGrams(airCelsius + 1, between(22, 28), between(58, 85)));
                }
                case STORED_HOT -> {
                    double hot = between(25.5, 29);
                    double from = between(60, 200);
                    double hours = between(15, 60);
                    double usual = fate.storeCelsius().applyAsDouble(0);
                    fate = fate.storedAt(h -> h > from && h < from + hours ? hot : usual);
                }
                case STORED_SWINGING -> {
                    double swing = between(3.6, 6);
                    fate = fate.storedAt(h -> 18.5 + swing * Math.sin(2 * Math.PI * h / 24));
                }
                case NUTS -> {
                    pieces = true;
                    fate = fate.withOil(between(7, 16));
                }
                case UNMIXED_PART -> fate = fate.withUnmixed(between(0.1, 0.4));
                default -> {}
            }
        }

        private BarsInTime set() {
            double air = airCelsius;
            double from = roomCelsius;
            DoubleUnaryOperator course = m -> air + (from - air) * Math.exp(-m / 4);
            Mould mould = new Mould(fate.mouldCelsius(), millimetres, watts, course);
            Chocolate chocolate = poured.scenario().kitchen().chocolate();
            double minutes = mishap == Mishap.WARM_AND_THICK ? 150 : mishap == Mishap.FREEZER ? 40 : 75;
            SetBar bar = SetBar.after(chocolate, poured.forms(), poured.celsius(), mould, minutes);
            double out = minutes;
            double solid = 1;
            if (mishap == Mishap.OUT_EARLY) {
                out = between(9, 17);
                SetBar early = SetBar.after(chocolate, poured.forms(), poured.celsius(), mould, out);
                solid = early.solid() / bar.solid();
            }
            fate = fate.outAfter(out);
            return new BarsInTime(bar, solid, fate);
        }

        private BarTrial seen(BarsInTime bars) {
            List<BarLook> looks = new ArrayList<>();
            double[] ages = switch (mishap) {
                case YEAR_OLD -> new double[] {24, 24 * between(300, 480)};
                case NUTS, STORED_HOT, STORED_SWINGING -> new double[] {24, 168, 24 * between(26, 34)};
                default -> luck.nextDouble() < 0.5 ? new double[] {24, 168} : new double[] {between(20, 60)};
            };
            for (double age : ages) looks.add(bars.look(age, luck));
            Clues clues = Clues.none().seen(looks);
            clues = CurveClues.with(clues, poured.causes().faults(), poured.tally());
            boolean setLogged = luck.nextDouble() < 0.5;
            boolean storeLogged = luck.nextDouble() < 0.5;
            if (setLogged) clues = clues.set(Optional.of(setRecord(bars.set())));
            if (storeLogged) clues = clues.stored(Optional.of(storeRecord(ages[ages.length - 1])));
            Diagnosis before = FINDER.find(clues);
            Diagnosis now = before;
            int asked = 0;
            List<Clue> unknown = new ArrayList<>();
            while (now.question().isPresent() && asked < MOST_QUESTIONS) {
                Clue question = now.question().get();
                asked++;
                Optional<Boolean> answer = answer(question, bars);
                if (answer.isEmpty()) unknown.add(question);
                else clues = clues.with(question, answer.get());
                now = FINDER.find(clues, unknown);
            }
            boolean heated = poured.hottestCelsius() > poured.recipe().meltOut().warnCelsius();
            boolean cooled =
                    poured.coolestCelsius() <= poured.recipe().cool().range().highCelsius() + 0.7;
            return new BarTrial(mishap, heated, cooled, bars, looks, before, now, asked, clues);
        }

        private SetRecord setRecord(SetBar bar) {
            Optional<Condensation> air = Optional.of(Condensation.in(roomCelsius, 50));
            CoolingPlace place = fridge ? CoolingPlace.FRIDGE : CoolingPlace.COOL;
            SettingWatch watch = SettingWatch.of(
                    SetPlan.of(place, OptionalDouble.empty(), SetTime.Air.STILL, Math.max(1, millimetres), air));
            Instant at = BatchRun.BEGINS;
            for (double celsius : bar.besideCelsius()) {
                watch = watch.next(new SetInput.Reading(at, celsius)).after();
                at = at.plusSeconds(10);
            }
            SetRecord record = watch.record();
            boolean wet = fate.wetGrams() > 5;
            return new SetRecord(
                    record.place(),
                    record.coldestEarlyCelsius(),
                    record.coldestCelsius(),
                    record.warm(),
                    record.fastestKelvinPerMinute(),
                    record.stayed(),
                    OptionalDouble.of(wet ? airCelsius + 1 : 17),
                    OptionalDouble.of(wet ? 15 : 9));
        }

        private StoreRecord storeRecord(double hours) {
            StoreWatch watch = StoreWatch.START;
            long minutes = Math.min(40 * 24 * 60, Math.round(60 * hours));
            for (long minute = 0; minute < minutes; minute += 5) {
                double celsius = fate.storeCelsius().applyAsDouble(minute / 60.0);
                watch = watch.next(new SetInput.Reading(BatchRun.BEGINS.plusSeconds(60 * minute), celsius))
                        .after();
            }
            return watch.end().after().record();
        }

        /** As somebody answers who was there: mostly right, sometimes not knowing, seldom wrong. */
        private Optional<Boolean> answer(Clue question, BarsInTime bars) {
            if (luck.nextDouble() < NO_ANSWER) return Optional.empty();
            boolean truth = truth(question, bars);
            return Optional.of(truth ? luck.nextDouble() >= WRONG_NO : luck.nextDouble() < WRONG_YES);
        }

        private boolean truth(Clue question, BarsInTime bars) {
            return switch (question) {
                case SAID_WATER -> fate.waterPercent() > 0.7;
                case SAID_OLD_STOCK -> oldStock;
                case SAID_UNSTIRRED -> mishap == Mishap.UNSTIRRED;
                case SAID_THICK_BOWL -> poured.forms().stableFraction() > 0.07 || fate.waterPercent() > 0.7;
                case SAID_ICE_OFF -> Math.abs(poured.scenario().bowlAdapter().offsetKelvin()) > 0.5;
                case SAID_SEED_BAD -> mishap == Mishap.SEED_MELTED;
                case SAID_UNMIXED -> fate.unmixedShare() > 0.05;
                case SAID_BURNT -> fate.burntKelvin() > 2;
                case SAID_WARM_PLACE -> airCelsius > 21 || millimetres > 12;
                case SAID_FREEZER -> airCelsius < 6;
                case SAID_OUT_EARLY -> bars.solidWhenOut() < 0.8 || fate.outMinutes() < 20;
                case SAID_MOULD_COLD -> fate.mouldCelsius() < 18;
                case SAID_MOULD_DIRTY -> fate.roughness() > 0.4;
                case SAID_OPENED_COLD -> fate.wetGrams() > 5;
                case SAID_STORED_WARM -> mishap == Mishap.STORED_HOT || mishap == Mishap.STORED_SWINGING;
                case SAID_PIECES -> pieces;
                default -> throw new IllegalStateException("nobody is asked " + question);
            };
        }
    }

    private static final class Watching implements Function<Input, List<Event>> {
        private final Setup setup;
        private State state;
        private Causes causes;
        private Tally tally;

        Watching(EngineProgram program) {
            setup = program.setup();
            state = program.state();
            causes = Causes.start(setup, state);
            tally = Tally.start(state);
        }

        @Override
        public List<Event> apply(Input input) {
            Step step = Engine.step(setup, state, input);
            Setup inForce = step.after().setupInForce(setup);
            causes = causes.with(inForce, state, input, step);
            tally = tally.with(inForce.recipe(), state, step);
            state = step.after();
            return step.events();
        }
    }
}
