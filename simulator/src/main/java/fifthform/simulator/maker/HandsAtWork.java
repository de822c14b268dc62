package fifthform.simulator.maker;

import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.ProbePutBack;
import fifthform.curves.input.MakerAction.ProbeTakenOut;
import fifthform.curves.input.MakerAction.SeedAdded;
import fifthform.curves.input.StoreTrouble;
import fifthform.curves.setup.Holding.Warmth;
import fifthform.simulator.bowl.Blower;
import fifthform.simulator.bowl.Hands;
import fifthform.simulator.bowl.Hands.Towel;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Acts.Probe;
import fifthform.simulator.maker.Intention.Reason;
import fifthform.simulator.maker.Response.GoOn;
import fifthform.simulator.maker.Response.PutBack;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;

/** One look of a {@link Person} at the kitchen and what the hands then do. Lives within one {@link Person#next}. */
final class HandsAtWork {
    /** So far past the usual temperature nobody waits for a cue any more, K. Our own choice. */
    private static final double FAR_PAST_KELVIN = 3.5;

    /** Over the aim by this much the bowl still settles before the pouring, K. Our own choice. */
    private static final double SETTLED_KELVIN = 0.5;

    /** So far below the aim it has become too thick to pour, K. Our own choice. */
    private static final double TOO_COOL_KELVIN = 1.5;

    /** Nobody puts a bowl back that was moved so lately. Our own choice. */
    private static final Duration LATELY = Duration.ofSeconds(90);

    private final KitchenView view;
    private final Instant at;
    private final List<Input> presses = new ArrayList<>(0);
    private Person person;
    private Course course;
    private Spoon spoon;
    private Distractions distractions;
    private Optional<Instant> wipeAt;
    private double seedLeftGrams;
    private Luck luck;
    private double splashGrams;

    HandsAtWork(Person person, KitchenView view) {
        this.view = view;
        at = view.at();
        takeUp(person);
    }

    private void takeUp(Person other) {
        person = other;
        course = other.course();
        spoon = other.spoon();
        distractions = other.distractions();
        wipeAt = other.wipeAt();
        seedLeftGrams = other.seedLeftGrams();
        luck = other.luck();
    }

    Next next() {
        if (course.stageSince().isEmpty()) moveTo(course.begin(at, first()));
        Distractions.Disk before = distractions.disk();
        distractions = distractions.at(at);
        if (distractions.disk() != before) presses.add(storeTrouble());
        boolean away = distractions.handsAway(at);
        Towel towel = Towel.LEFT;
        double seedGrams = 0;
        double warmed = course.bathWarmedKelvin();
        if (!away) {
            moveTo(course.visitOver(at));
            doWhatIsDue();
            judge();
            moveTo(distractions.visits(course, at));
            moveTo(intoTheBox());
            towel = wipe();
            seedGrams = seed();
            spoon = spoon.at(at);
        }
        Probe probe = probe();
        Blower blower = away ? Blower.OFF : course.isBlowing(at) ? Blower.HAIR_DRYER : distractions.blower(at);
        Hands hands = new Hands(
                course.spot(),
                away ? 0 : spoon.vigourFraction(),
                towel,
                blower,
                distractions.unnoticed(at),
                boxCelsius());
        return new Next(
                after(person.intentions(), probe),
                new Acts(hands, probe, seedGrams, splashGrams, course.bathWarmedKelvin() - warmed, presses));
    }

    /** Who has chocolate in temper waits to be told; all others melt. */
    private Stage first() {
        return person.habits().plan().beginning().isInTemper() ? Stage.HOLDING : Stage.MELTING;
    }

    private Course intoTheBox() {
        boolean stands = course.stage() == Stage.POURING && course.spot() == Spot.TABLE;
        boolean boxed = person.habits().plan().holdsBy(Warmth.BOX);
        return stands && boxed ? course.visit(at, Spot.WARM_BOX, person.habits().pouring()) : course;
    }

    private double boxCelsius() {
        return Math.max(15, Math.min(60, person.habits().plan().boxCelsius() + course.boxTurnedKelvin()));
    }

    private void moveTo(Course next) {
        Spot from = course.spot();
        Spot to = next.spot();
        course = next;
        if (from == to) return;
        spoon = spoon.keptOn(at);
        if (from == Spot.HOT_BATH && to == Spot.COLD_WATER) {
            splashGrams = person.habits().plan().splashGrams();
        }
        distractions = distractions.stoodAt(at, to);
        boolean wipes = to == Spot.TABLE && chance() < person.traits().slips().wipesFraction();
        wipeAt = wipes ? Optional.of(at.plus(person.traits().slips().wipesAfter())) : Optional.empty();
        if (Places.of(from) != Places.of(to)) press(new BowlMoved(at, Places.of(to)));
    }

    private void doWhatIsDue() {
        List<Intention> left = person.intentions();
        if (left.isEmpty() || at.isBefore(left.get(0).due())) return;
        left = new ArrayList<>(left);
        while (!left.isEmpty() && !at.isBefore(left.get(0).due())) {
            Response response = left.remove(0).response();
            if (response.stages().contains(course.stage())) moveTo(response.carryOut(course, at));
        }
        person = after(left, person.probe());
    }

    /** Who is guided acts at once when it is far past; who goes by the thermometer takes a reaction time. */
    private void judge() {
        boolean guided = guided();
        if (timeToGoOn(guided)) {
            Response on = GoOn.to(course.stage().following(), course.stage());
            if (guided) moveTo(on.carryOut(course, at));
            else intend(on);
        } else if (!guided && tooCoolToPour()) {
            intend(new PutBack(person.traits().touch(), EnumSet.of(Stage.SETTLING, Stage.POURING)));
        }
    }

    private void intend(Response response) {
        for (Intention each : person.intentions()) if (each.reason() == Reason.SEEN) return;
        takeUp(after(person.intentions(), person.probe()).intending(at, response, Reason.SEEN));
    }

    private boolean guided() {
        Traits traits = person.traits();
        boolean listens = traits.listening() == Listening.ALWAYS
                || traits.listening() == Listening.WHEN_SPOKEN_TO
                        && person.spokenToAt().isPresent();
        return listens && !traits.ownJudgement().contains(course.stage());
    }

    private boolean timeToGoOn(boolean guided) {
        Habits habits = person.habits();
        double past = guided ? FAR_PAST_KELVIN : 0;
        double shown = shown();
        Duration lasted = course.inStageFor(at);
        boolean longEnough = lasted.compareTo(course.stage().patience()) >= 0;
        return switch (course.stage()) {
            case MELTING -> longEnough || shown >= habits.meltedCelsius() + past;
            case COOLING -> longEnough || shown <= habits.coolCelsius() - past;
            case HOLDING -> guided ? longEnough : lasted.compareTo(habits.hold()) >= 0;
            case WARMING -> longEnough || shown >= habits.warmCelsius() + past;
            case SETTLING -> longEnough || !guided && settled(lasted, shown);
            case POURING -> lasted.compareTo(habits.pouring()) >= 0;
            case GONE -> false;
        };
    }

    private boolean settled(Duration lasted, double shown) {
        return lasted.toSeconds() >= 60 && shown <= person.habits().warmCelsius() + SETTLED_KELVIN;
    }

    private boolean tooCoolToPour() {
        boolean off = (course.stage() == Stage.SETTLING || course.stage() == Stage.POURING)
                && course.spot() == Spot.TABLE
                && !person.traits().touch().isZero();
        boolean lately =
                course.movedAt().filter(m -> at.isBefore(m.plus(LATELY))).isPresent();
        return off && !lately && shown() < person.habits().warmCelsius() - TOO_COOL_KELVIN;
    }

    /** Compares as false where nothing is shown: a dark display changes nobody's mind. */
    private double shown() {
        return view.shownCelsius().orElse(Double.NaN);
    }

    private Towel wipe() {
        if (wipeAt.isEmpty() || at.isBefore(wipeAt.get())) return Towel.LEFT;
        wipeAt = Optional.empty();
        return Towel.WIPING;
    }

    /** All of it at once, when it has cooled far enough. */
    private double seed() {
        boolean now = seedLeftGrams > 0
                && course.stage() == Stage.COOLING
                && shown() <= person.habits().plan().seedAtCelsius();
        if (!now) return 0;
        double grams = seedLeftGrams;
        seedLeftGrams = 0;
        press(new SeedAdded(at, grams));
        return grams;
    }

    private Probe probe() {
        Probe now = distractions.probeOut(at) ? Probe.OUT : Probe.IN_THE_CHOCOLATE;
        if (now != person.probe()) press(now == Probe.OUT ? new ProbeTakenOut(at) : new ProbePutBack(at));
        return now;
    }

    private void press(MakerAction action) {
        if (chance() < person.traits().slips().pressesFraction()) presses.add(action);
    }

    /** What the journal would say of a full disk, and of one that is not full any more. */
    private StoreTrouble storeTrouble() {
        boolean full = distractions.disk() == Distractions.Disk.FULL;
        return new StoreTrouble(at, full ? StoreTrouble.What.CANNOT_WRITE : StoreTrouble.What.WRITES_AGAIN);
    }

    private double chance() {
        double drawn = luck.uniform();
        luck = luck.after();
        return drawn;
    }

    /** The person as things stand now; the same one where nothing has changed. */
    private Person after(List<Intention> intentions, Probe probe) {
        boolean same = course == person.course()
                && spoon == person.spoon()
                && distractions == person.distractions()
                && intentions == person.intentions()
                && wipeAt == person.wipeAt()
                && seedLeftGrams == person.seedLeftGrams()
                && probe == person.probe()
                && luck == person.luck();
        if (same) return person;
        return new Person(
                person.traits(),
                person.habits(),
                course,
                spoon,
                person.reaction(),
                distractions,
                intentions,
                person.spokenToAt(),
                wipeAt,
                seedLeftGrams,
                probe,
                luck);
    }
}
