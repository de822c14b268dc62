package fifthform.monitor.app;

import fifthform.curves.alarm.AlarmBank;
import fifthform.curves.alarm.AlarmState;
import fifthform.curves.alarm.Priority;
import fifthform.curves.cue.CueBoard;
import fifthform.curves.cue.CueId;
import fifthform.curves.cue.OpenCue;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Undoable;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction;
import fifthform.curves.input.MakerAction.AlarmAcknowledged;
import fifthform.curves.input.MakerAction.AlarmShelved;
import fifthform.curves.input.MakerAction.BowlConfirmed;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.Noted;
import fifthform.curves.input.MakerAction.OtherThermometer;
import fifthform.curves.input.MakerAction.PhaseConfirmed;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.MakerAction.ProbePutBack;
import fifthform.curves.input.MakerAction.ProbeTakenOut;
import fifthform.curves.input.MakerAction.SampleProved;
import fifthform.curves.input.MakerAction.SeedAdded;
import fifthform.curves.input.MakerAction.SetupChanged;
import fifthform.curves.input.MakerAction.StirringSaid;
import fifthform.curves.input.MakerAction.StirringSaid.Stirring;
import fifthform.curves.input.MakerAction.Undone;
import fifthform.curves.input.Sample;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.situation.ProbePlace;
import fifthform.monitor.model.Key;
import fifthform.monitor.model.KeyMap;
import fifthform.monitor.model.LookBack;
import fifthform.monitor.practice.OwnHands;
import fifthform.monitor.replay.AlarmNames;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.LiveText;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * What each key does to a session. Every act goes the way of a reading: into the intake queue, the journal, the engine.
 */
final class KeyDesk implements Consumer<Key> {
    /** Where nobody has said how much is in the bowl. Our own choice. */
    private static final double MOST_SEED_GRAMS = 1000;

    /** Long enough for a trip to the sink, shorter than a batch could be spoilt in. Our own choice. */
    private static final Duration ASIDE = Duration.ofMinutes(5);

    private final Supplier<SessionSnapshot> session;
    private final Consumer<Input> intake;
    private final InstantSource sessionClock;
    private final List<Recipe> recipes;
    private final Units units;
    private final KeyMap keys;
    private final Levers levers;
    private final LookingBack back;
    private final KeyLine line;
    private final NumberTyping typing;

    /** Of the key that says what a sample showed. */
    private int nextVerdict;

    /** What practice and recorded bytes let a key change. */
    interface Speed {
        void faster();

        void slower();
    }

    /** What lets another program have the probe's port for a while. */
    interface Grip {
        boolean isReleased();

        void letGo();

        void takeBack();
    }

    /**
     * What keys move beside the session itself.
     *
     * @param grip empty where there is no port: practice and recorded bytes
     * @param stop ends the session
     * @param hands what the keys move in training; empty where the bowl is in other hands
     */
    record Levers(Speed speed, Optional<Grip> grip, Runnable stop, Optional<OwnHands> hands) {
        Levers {
            Objects.requireNonNull(speed, "speed");
            Objects.requireNonNull(grip, "grip");
            Objects.requireNonNull(stop, "stop");
            Objects.requireNonNull(hands, "hands");
        }
    }

    KeyDesk(
            Supplier<SessionSnapshot> session,
            Consumer<Input> intake,
            InstantSource sessionClock,
            InstantSource handsClock,
            List<Recipe> recipes,
            Units units,
            KeyMap keys,
            Levers levers) {
        this.session = Objects.requireNonNull(session, "session");
        this.intake = Objects.requireNonNull(intake, "intake");
        this.sessionClock = Objects.requireNonNull(sessionClock, "sessionClock");
        this.recipes = List.copyOf(recipes);
        this.units = Objects.requireNonNull(units, "units");
        this.keys = Objects.requireNonNull(keys, "keys");
        this.levers = Objects.requireNonNull(levers, "levers");
        this.back = new LookingBack(handsClock, keys);
        this.line = new KeyLine(handsClock);
        this.typing = new NumberTyping(handsClock, this::keep);
    }

    /** How far back the curve is looked at. */
    LookBack back() {
        return back.now(session.get().state());
    }

    /** The key that is to be pressed again for its next meaning. */
    Optional<Key> again() {
        return line.again();
    }

    /** The line to show after a key, while it is news. */
    Optional<String> line() {
        return typing.words(units)
                .or(line::words)
                .or(() -> back.line(session.get().state()));
    }

    @Override
    public void accept(Key key) {
        State state = session.get().state();
        Instant at = sessionClock.instant();
        back.touched();
        switch (key) {
            case SEEN -> seen(state, at);
            case STEP_DONE -> stepDone(state, at);
            case BOWL_MOVED -> moved(otherPlace(state), at);
            case MARK -> act(new Noted(at, ""), LiveText.MARK_PLACED.say());
            case NOTE -> act(new Noted(at, LiveText.NOTE_TO_WRITE.say()), LiveText.MARKED_FOR_A_NOTE.say());
            case UNDO -> undo(state, at);
            case PROBE_OUT -> probe(state, at);
            case OTHER -> typing.begin(NumberTyping.Number.OTHER_THERMOMETER);
            case STIR -> levers.hands().ifPresentOrElse(hands -> train(key, hands, at), () -> stirring(state, at));
            case COLD_WATER, SEED, DRY ->
                levers.hands()
                        .ifPresentOrElse(
                                hands -> train(key, hands, at),
                                () -> say(LiveText.THAT_KEY_IS_FOR_TRAINING_ONLY.say()));
            case CHOCOLATE -> chocolate(at);
            case SET_ASIDE -> setAside(state, at);
            case LET_GO -> letGo();
            case IT_IS_THE_BOWL -> itIsTheBowl(state, at);
            case PROVED -> proved(at);
            case FASTER -> levers.speed().faster();
            case SLOWER -> levers.speed().slower();
            case EARLIER, LATER, NOW -> {
                line.clear();
                back.pressed(key, state).ifPresent(this::say);
            }
            case QUIT -> quit();
            // These change how a screen looks; the screen itself does that.
            case THEME, FULL_SCREEN, WHY, HELP -> {}
        }
    }

    /** Each press within some seconds says the next verdict instead; the last one counts. */
    private void proved(Instant at) {
        SampleProved.Verdict[] verdicts = SampleProved.Verdict.values();
        boolean again = line.wasAsked(Key.PROVED);
        nextVerdict = again ? (nextVerdict + 1) % verdicts.length : 0;
        SampleProved.Verdict verdict = verdicts[nextVerdict];
        tell(new SampleProved(at, verdict));
        SampleProved.Verdict next = verdicts[(nextVerdict + 1) % verdicts.length];
        ask(
                LiveText.SAMPLE_PROVED.say(
                        InWords.of(verdict), keys.fill(LiveText.PROVED_AGAIN.say()), InWords.of(next)),
                Key.PROVED);
    }

    private void itIsTheBowl(State state, Instant at) {
        if (state.coasting().bowl().doubt().isEmpty()) say(LiveText.NOBODY_DOUBTS_THAT_IT_IS_THE.say());
        else act(new BowlConfirmed(at), LiveText.IT_IS_THE_BOWL_KEPT.say());
    }

    /** What the readings cannot always show: one press says stirred, the next one left alone. */
    private void stirring(State state, Instant at) {
        Optional<Stirring> told =
                state.crystals().flatMap(temper -> temper.stir().told());
        boolean still = told.filter(s -> s == Stirring.STIRRED).isPresent();
        act(
                new StirringSaid(at, still ? Stirring.STILL : Stirring.STIRRED),
                keys.fill(
                        still
                                ? LiveText.IT_IS_LEFT_ALONE_STIR_AGAIN.say()
                                : LiveText.IT_IS_STIRRED_STIR_AGAIN_LEFT.say()));
    }

    private void train(Key key, OwnHands hands, Instant at) {
        switch (key) {
            case COLD_WATER -> moved(Place.COLD_WATER, at);
            case SEED -> typing.begin(NumberTyping.Number.SEED_GRAMS);
            case STIR -> {
                Stirring now = hands.otherStirring();
                act(
                        new StirringSaid(at, now),
                        now == Stirring.STIRRED ? LiveText.STIRRING.say() : LiveText.LEFT_ALONE.say());
            }
            case DRY -> {
                hands.wipe();
                say(LiveText.DRYING_THE_BOWL.say());
            }
            default -> throw new IllegalArgumentException(key + " is no key of training");
        }
    }

    /** A character for the number that is being typed; answers whether it was one. */
    boolean typed(char character) {
        return typing.typed(character);
    }

    private void keep(NumberTyping.Number number, double value) {
        switch (number) {
            case OTHER_THERMOMETER -> compared(units.celsius(value));
            case SEED_GRAMS -> seeded(value);
        }
    }

    private void seeded(double grams) {
        double most = session.get().setup().bowl().amountGrams().orElse(MOST_SEED_GRAMS);
        if (grams >= 1 && grams <= most)
            act(new SeedAdded(sessionClock.instant(), grams), LiveText.G_OF_SEED_IN.say(Math.round(grams)));
        else
            say(LiveText.NOT_THROWN_IN_SEED_IS_1.say(Math.round(most), keys.fill(LiveText.G_SEED_TO_TYPE_AGAIN.say())));
    }

    private void compared(double celsius) {
        if (celsius < Sample.LOWEST_CELSIUS || celsius > Sample.HIGHEST_CELSIUS) {
            say(LiveText.NOT_KEPT_A_THERMOMETER_IN_A.say(
                    units.plain(Sample.LOWEST_CELSIUS),
                    units.plain(Sample.HIGHEST_CELSIUS),
                    units.symbol(),
                    keys.fill(LiveText.OTHER_TO_TYPE_AGAIN.say())));
            return;
        }
        act(
                new OtherThermometer(sessionClock.instant(), celsius),
                LiveText.OTHER_THERMOMETER_SAYS_KEPT.say(units.withUnit(celsius)));
    }

    private void seen(State state, Instant at) {
        state.alarms().standing().forEach(id -> intake.accept(new AlarmAcknowledged(at, id)));
    }

    /** The step on the screen is done: the cue that is due, or else the whole phase. */
    private void stepDone(State state, Instant at) {
        CueBoard cues = state.cues();
        StepMeant meant = StepMeant.at(state, session.get().setup().recipe());
        switch (meant) {
            case OFF_THE_WATER -> moved(Place.TABLE, at);
            case ON_THE_BATH -> moved(Place.BATH, at);
            case INTO_COLD_WATER -> moved(Place.COLD_WATER, at);
            case SEED_IS_IN -> seeded(cues.open().get(CueId.SEED_NOW).figure().orElseThrow());
            case WARM_AIR_WAS_GIVEN ->
                levers.hands()
                        .ifPresentOrElse(hands -> blow(cues, hands), () -> say(LiveText.WARM_AIR_NEEDS_NO_KEY.say()));
            case HOLD_IS_SEEN_TO -> {
                levers.hands().ifPresent(hands -> turnBox(cues, hands));
                say(LiveText.NOTHING_MORE_TO_SAY.say());
            }
            case MELTS_AGAIN -> act(new PhaseConfirmed(at, Phase.MELT), LiveText.MELTING_AGAIN.say());
            case COOLS_AGAIN -> act(new PhaseConfirmed(at, Phase.COOL), LiveText.COOLING_AGAIN.say());
            case SAMPLE_IS_IN_TEMPER ->
                act(new SampleProved(at, SampleProved.Verdict.IN_TEMPER), LiveText.SAMPLE_PROVED_IN_TEMPER.say());
            case CARE_IS_TAKEN ->
                say(levers.hands()
                        .map(hands -> cared(cues, hands))
                        .orElse(LiveText.GOOD_THE_CURVE_SHOWS_THE_REST)
                        .say());
            case TOO_SOON -> {
                if (line.wasAsked(Key.STEP_DONE)) phaseOver(state, at);
                else ask(keys.fill(LiveText.BELOW_THE_WORKING_RANGE_PRESS.say()), Key.STEP_DONE);
            }
            case PHASE_IS_OVER -> phaseOver(state, at);
        }
    }

    private void phaseOver(State state, Instant at) {
        state.batch()
                .phase()
                .following()
                .ifPresent(next -> act(new PhaseConfirmed(at, next), LiveText.NOW.say(InWords.of(next))));
    }

    private void blow(CueBoard cues, OwnHands hands) {
        OpenCue asked = cues.open().get(CueId.TOUCH_OF_WARM_AIR);
        double seconds = asked.figure().orElse(0);
        hands.blow(asked.since(), seconds);
        say(LiveText.BLOWING.say(Long.toString(Math.round(seconds))));
    }

    private static LiveText cared(CueBoard cues, OwnHands hands) {
        return cues.openSince(CueId.WEAK_BATH)
                .filter(hands::warmBath)
                .map(poured -> LiveText.HOT_WATER_INTO_THE_BATH)
                .orElse(LiveText.D_DRIES_THE_BOWL_S_STIRS);
    }

    private static void turnBox(CueBoard cues, OwnHands hands) {
        for (CueId turn : List.of(CueId.BOX_WARMER, CueId.BOX_COOLER)) {
            OpenCue asked = cues.open().get(turn);
            if (asked == null) continue;
            double kelvin = asked.figure().orElse(0);
            hands.turnBox(asked.since(), turn == CueId.BOX_WARMER ? kelvin : -kelvin);
        }
    }

    /** Into or out of the water of this phase; while crystals are melting the only water to go to is cold. */
    private static Place otherPlace(State state) {
        boolean tooHot = isStanding(state, AlarmId.NEAR_MELT_OUT) || isStanding(state, AlarmId.MELT_OUT);
        if (tooHot && state.batch().place() == Place.TABLE) return Place.COLD_WATER;
        return state.batch().contact().otherPlace(state.batch().phase());
    }

    private static boolean isStanding(State state, AlarmId id) {
        return state.alarms().standing().contains(id);
    }

    private void moved(Place to, Instant at) {
        String where = switch (to) {
            case BATH -> LiveText.BOWL_ON_THE_BATH.say();
            case TABLE -> LiveText.BOWL_OFF_THE_WATER.say();
            case COLD_WATER -> LiveText.BOWL_IN_COLD_WATER.say();
        };
        act(new BowlMoved(at, to), where);
    }

    private void probe(State state, Instant at) {
        boolean out = state.probe() == ProbePlace.OUT;
        act(
                out ? new ProbePutBack(at) : new ProbeTakenOut(at),
                out ? LiveText.PROBE_BACK_IN.say() : LiveText.PROBE_IS_OUT.say());
    }

    /** The next chocolate in the list. */
    private void chocolate(Instant at) {
        SessionSnapshot now = session.get();
        List<String> ids = recipes.stream().map(Recipe::id).toList();
        Recipe next = recipes.get((ids.indexOf(now.setup().recipe().id()) + 1) % recipes.size());
        act(new SetupChanged(at, now.setup().withRecipe(next)), LiveText.CHOCOLATE.say(next.name()));
    }

    private void undo(State state, Instant at) {
        Optional<Undoable> last = state.undoable();
        if (last.isEmpty()) {
            say(LiveText.NOTHING_TO_TAKE_BACK.say());
            return;
        }
        tell(new Undone(at, last.get().sequence()));
        say(LiveText.TAKEN_BACK.say());
    }

    private void quit() {
        if (line.wasAsked(Key.QUIT)) levers.stop().run();
        else ask(keys.fill(LiveText.PRESS_QUIT_AGAIN_TO_STOP.say()), Key.QUIT);
    }

    /** The most pressing alarm that may wait; where none is left, the one that was set aside comes back. */
    private void setAside(State state, Instant at) {
        AlarmBank alarms = state.alarms();
        List<AlarmId> aside = Stream.of(AlarmId.values())
                .filter(id -> alarms.of(id).state() instanceof AlarmState.Shelved)
                .toList();
        Optional<AlarmId> next = alarms.standing().stream()
                .filter(id -> !aside.contains(id) && alarms.of(id).state().isStanding())
                .filter(id -> alarms.of(id).priority() != Priority.URGENT)
                .max(Comparator.comparing(id -> alarms.of(id).priority()));
        if (next.isPresent() && aside.size() >= AlarmBank.MOST_SHELVED) {
            say(LiveText.ASIDE_TWO.say());
        } else if (next.isPresent()) {
            tell(new AlarmShelved(at, next.get(), ASIDE));
            say(LiveText.ASIDE_SET.say(AlarmNames.of(next.get()), keys.cap(Key.SET_ASIDE)));
        } else if (!aside.isEmpty()) {
            tell(new AlarmShelved(at, aside.get(0), Duration.ZERO));
            say(LiveText.ASIDE_BACK.say(AlarmNames.of(aside.get(0))));
        } else {
            say(LiveText.ASIDE_NONE.say());
        }
    }

    /** So that another program can use the port for a while; the batch goes on without readings. */
    private void letGo() {
        if (levers.grip().isEmpty()) {
            say(LiveText.THERE_IS_NO_PORT_TO_LET.say());
            return;
        }
        Grip grip = levers.grip().get();
        if (grip.isReleased()) {
            grip.takeBack();
            say(LiveText.THE_PROBES_PORT_IS_TAKEN_BACK.say());
        } else if (line.wasAsked(Key.LET_GO)) {
            grip.letGo();
            say(keys.fill(LiveText.THE_PROBES_PORT_IS_FREE_FOR.say()));
        } else {
            ask(keys.fill(LiveText.PRESS_LET_GO_AGAIN_TO_LET.say()), Key.LET_GO);
        }
    }

    private void act(MakerAction input, String words) {
        tell(input);
        boolean undoable = !(input instanceof Noted
                || input instanceof SampleProved
                || input instanceof OtherThermometer
                || input instanceof StirringSaid
                || input instanceof BowlConfirmed
                || input instanceof SeedAdded);
        say(undoable ? words + keys.fill(LiveText.UNDO_TAKES_IT_BACK.say()) : words);
    }

    /** In training what is said is also done. */
    private void tell(MakerAction action) {
        Phase phase = session.get().state().batch().phase();
        levers.hands().ifPresent(hands -> hands.did(action, phase));
        intake.accept(action);
    }

    /** What a key could not do, since the program stumbled over it. */
    void stumbled(Key key) {
        say(LiveText.KEY_STUMBLED.say(keys.cap(key)));
    }

    private void say(String words) {
        line.say(words);
    }

    private void ask(String words, Key again) {
        line.ask(words, again);
    }
}
