package fifthform.monitor.model;

import fifthform.curves.alarm.AlarmConditions;
import fifthform.curves.engine.State;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.estimate.Freshness;
import fifthform.curves.forecast.Forecast;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.StoreTrouble;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.Role;
import fifthform.curves.signal.Doubt;
import fifthform.curves.signal.Judgement;
import fifthform.curves.signal.Lag;
import fifthform.curves.signal.Track;
import fifthform.curves.situation.ProbePlace;
import fifthform.monitor.model.WatchPicture.AlarmRow;
import fifthform.monitor.model.WatchPicture.Band;
import fifthform.monitor.model.WatchPicture.Crystals;
import fifthform.monitor.model.WatchPicture.Direction;
import fifthform.monitor.model.WatchPicture.Kitchen;
import fifthform.monitor.model.WatchPicture.Mark;
import fifthform.monitor.model.WatchPicture.Notice;
import fifthform.monitor.model.WatchPicture.Numeral;
import fifthform.monitor.model.WatchPicture.Outlook;
import fifthform.monitor.model.WatchPicture.Tile;
import fifthform.monitor.model.WatchPicture.Tone;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.WatchText;
import java.time.Duration;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** A session's snapshot as the picture that every screen draws: a pure function. */
public final class WatchModel {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    /** What a dip showed stands at the foot for so long; later H tells it. */
    private static final Duration NEWS = Duration.ofMinutes(1);

    private static final WatchText PROVE = WatchText.TEMPERATURE_DOES_NOT_PROVE;

    private final SessionSnapshot snapshot;
    private final State state;
    private final Recipe recipe;
    private final Look look;
    private final Units units;
    private final Phrases phrases;

    private WatchModel(SessionSnapshot snapshot, Look look) {
        this.snapshot = snapshot;
        this.state = snapshot.state();
        this.recipe = snapshot.setup().recipe();
        this.look = look;
        this.units = look.units();
        this.phrases = new Phrases(units, recipe, look.assigned());
    }

    public static WatchPicture picture(SessionSnapshot snapshot, Look look) {
        return new WatchModel(snapshot, look).picture();
    }

    private WatchPicture picture() {
        BandModel band = new BandModel(snapshot.setup(), state, phrases, look);
        return new WatchPicture(
                snapshot.setup().origin() == Origin.SIMULATED ? Kitchen.SIMULATED : Kitchen.REAL,
                heading(),
                subject(),
                marks(),
                CLOCK.format(state.at().atZone(look.zone())),
                snapshot.fault().map(this::faultBand).orElseGet(band::band),
                numeral(),
                rate(),
                outlooks(),
                new LadderModel(recipe, state, units, phrases).ladder(),
                new TraceModel(recipe, state, snapshot.trace(), look).trace(),
                tiles(),
                foot(),
                alarms(band),
                look.keys(),
                look.undo(),
                look.banner(),
                Notice.STANDING,
                snapshot.fault().isPresent() ? List.of() : band.why(),
                snapshot.fault().isPresent() ? Crystals.NONE : crystals(),
                asked());
    }

    /** Whoever reads a question must find its key, also with a pointer. */
    private Set<Key> asked() {
        Set<Key> asked = EnumSet.noneOf(Key.class);
        // What a second press means is answered where the first one was.
        look.again().filter(key -> key == Key.STIR || key == Key.PROVED).ifPresent(asked::add);
        if (!crystals().question().isEmpty()) asked.add(Key.STIR);
        if (state.coasting().bowl().doubt().isPresent()) asked.add(Key.IT_IS_THE_BOWL);
        boolean proves = phase() == Phase.WORK && !Pouring.isProved(state);
        if (proves || state.alarms().standing().contains(AlarmId.MELT_OUT)) asked.add(Key.PROVED);
        return asked;
    }

    private Crystals crystals() {
        return state.crystals()
                .map(temper -> new CrystalModel(temper, state, look.asking(), look.assigned())
                        .crystals(new SurvivedWords(temper, snapshot.setup(), snapshot.tally(), units)
                                .line(state.at())
                                .orElse("")))
                .orElse(Crystals.NONE);
    }

    private String heading() {
        return WatchText.OF_THE_BATCH.say(
                InWords.of(phase()),
                Spans.minutes(Duration.between(state.batch().progress().since(), state.at())),
                Spans.minutes(elapsed()));
    }

    private String subject() {
        Bowl bowl = snapshot.setup().bowl();
        String amount = bowl.amountGrams().isPresent()
                ? ", " + Amounts.words(bowl.amountGrams().getAsDouble())
                : "";
        String vessel = bowl.material() == BowlMaterial.UNKNOWN ? "" : WatchText.BOWL.say(InWords.of(bowl.material()));
        String kind = AgainWords.kind(snapshot.setup().beginning());
        return recipe.name() + amount + vessel + named(bowl) + (kind.isEmpty() ? "" : ", " + kind);
    }

    /** Where two bowls are watched at once, each screen says whose it is; practice and recorded ones have no name of theirs. */
    private String named(Bowl bowl) {
        boolean known = bowl.id().equals(Bowl.ANY.id())
                || bowl.id().equals(bowl.material().word());
        boolean own = snapshot.setup().origin() == Origin.REAL;
        return own && !known ? ", “" + bowl.id() + "”" : "";
    }

    private List<Mark> marks() {
        List<Mark> marks = new ArrayList<>(look.marks());
        boolean saved = state.storeTrouble()
                .filter(t -> t != StoreTrouble.What.SPACE_LOW)
                .isEmpty();
        marks.add(new Mark(saved ? WatchText.SAVED.say() : WatchText.NOT_SAVED.say(), saved));
        boolean good = state.estimate().filter(Estimate::isUsable).isPresent();
        // The first reading may take its time; that none comes is said once it is an alarm.
        boolean waiting =
                state.estimate().isEmpty() && state.alarms().standing().isEmpty();
        if (!waiting) marks.add(new Mark(good ? WatchText.READING.say() : WatchText.NO_READING.say(), good));
        return marks;
    }

    private Numeral numeral() {
        if (snapshot.fault().isPresent() && snapshot.rawCelsius().isPresent()) {
            return number(snapshot.rawCelsius().getAsDouble(), Optional.of(WatchText.RAW_READING.say()));
        }
        if (state.estimate().isEmpty()) return new Numeral("–", "", units.symbol(), Optional.empty(), "", List.of());
        Estimate e = state.estimate().get();
        Optional<String> stale = Optional.empty();
        if (state.probe() == ProbePlace.OUT) stale = Optional.of(WatchText.PROBE_IS_OUT.say());
        else if (e.freshness() == Freshness.DOUBTFUL)
            stale = Optional.of(isSettling() ? WatchText.SETTLING.say() : WatchText.IN_DOUBT.say());
        else if (e.freshness() == Freshness.OLD) {
            stale = Optional.of(WatchText.OLD.say(Spans.words(Duration.between(e.at(), state.at()))));
        }
        // In doubt, the way to where the chocolate would be has no ground: what the tip itself says is all that is
        // known.
        return number(
                e.freshness() == Freshness.DOUBTFUL ? tip().orElse(e.chocolateCelsius()) : e.chocolateCelsius(), stale);
    }

    private Optional<Double> tip() {
        return state.tracks()
                .of(snapshot.setup(), Role.BOWL)
                .map(Track::lastCelsius)
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble);
    }

    /** Just dipped: nothing is wrong, but the number is still on its way. */
    private boolean isSettling() {
        return state.tracks()
                .of(snapshot.setup(), Role.BOWL)
                .flatMap(Track::doubt)
                .filter(doubt -> doubt == Doubt.SETTLING)
                .isPresent();
    }

    private Numeral number(double celsius, Optional<String> stale) {
        String text = Units.format("%.2f", units.shown(celsius));
        return new Numeral(
                text.substring(0, text.length() - 1),
                text.substring(text.length() - 1),
                units.symbol(),
                stale,
                doubt(),
                trust());
    }

    private String doubt() {
        Correction correction = snapshot.setup().bowlProbe().correction();
        return state.budget(snapshot.setup())
                .map(budget -> WatchText.WITHIN.say(units.difference(budget.expandedKelvin())))
                .map(size -> size + CheckAge.words(snapshot.setup().origin(), correction, state.at()))
                .orElse("");
    }

    private List<String> trust() {
        return state.budget(snapshot.setup())
                .map(budget ->
                        TrustWords.all(budget, units, lag(), snapshot.setup().bowlProbe()))
                .orElse(List.of());
    }

    private Optional<Lag> lag() {
        return state.tracks().judgementOf(snapshot.setup().bowlProbe().id()).flatMap(Judgement::lag);
    }

    private String rate() {
        if (state.forecast().isEmpty()) return "";
        double rate = state.estimate().orElseThrow().rateKelvinPerMinute();
        return ReasonWords.rate(rate, units);
    }

    private List<Outlook> outlooks() {
        if (state.forecast().isEmpty()) {
            return state.estimate().isEmpty()
                    ? List.of()
                    : List.of(new Outlook(
                            WatchText.NO_FORECAST.say(), "", WatchText.WHILE_THERE_IS_NO_GOOD_READING.say()));
        }
        Forecast f = state.forecast().get();
        List<Outlook> lines = new ArrayList<>();
        Place place = state.batch().place();
        String turns = place == Place.TABLE
                ? WatchText.OFF_THE_WATER_IT_TURNS_AT.say()
                : WatchText.LIFTED_NOW_IT_TURNS_AT.say();
        if (Ahead.turn(state).isPresent()) lines.add(turn(turns, f));
        String left = place == Place.TABLE
                ? WatchText.LEFT_TO_ITSELF.say()
                : place == Place.BATH ? WatchText.LEFT_ON_THE_BATH.say() : WatchText.LEFT_IN_THE_WATER.say();
        lines.add(Ahead.course(state)
                .map(course -> new Outlook(
                        left,
                        units.oneDecimal(course.at(Forecast.HORIZON).celsius()),
                        WatchText.IN_THREE_MINUTES.say()))
                .orElse(new Outlook(left, "–", WatchText.NOT_SETTLED_YET.say())));
        return lines;
    }

    /** A middle with its band; where the band is too wide for one lift, the band itself. */
    private Outlook turn(String turns, Forecast f) {
        String middle = units.oneDecimal(f.ifLifted().celsius());
        String band = WatchText.FROM_TO.say(
                units.oneDecimal(f.ifLifted().lowerCelsius()),
                units.oneDecimal(f.ifLifted().upperCelsius()));
        String in = f.ifLifted().seconds() < 1
                ? ""
                : WatchText.IN.say(Spans.about(f.ifLifted().seconds()));
        boolean warms = state.batch().place() == Place.BATH;
        return warms && CalmModel.isWide(snapshot.setup(), f.ifLifted())
                ? new Outlook(turns, band, WatchText.UNSURE.say())
                : new Outlook(turns, middle, band + in);
    }

    private List<Tile> tiles() {
        List<Tile> tiles = new ArrayList<>();
        measured(Role.BATH).ifPresent(celsius -> tiles.add(bath(celsius)));
        measured(Role.ROOM)
                .ifPresent(celsius -> tiles.add(plain(WatchText.ROOM.say(), units.shown(celsius), 1, units.symbol())));
        // Alone it would come and go with the rate, and the number would grow and shrink; the band says it as well.
        OptionalDouble left = new HoldLine(snapshot.setup(), state).minutesToPour();
        boolean pours = phase() == Phase.WORK
                && !Pouring.isTooFew(state, recipe)
                && !state.alarms().standing().contains(AlarmId.MELT_OUT);
        if (pours && !tiles.isEmpty() && left.isPresent())
            tiles.add(plain(WatchText.TO_POUR.say(), left.getAsDouble(), 0, WatchText.MIN.say()));
        return tiles;
    }

    private Optional<Double> measured(Role role) {
        return state.tracks()
                .of(snapshot.setup(), role)
                .filter(t -> t.freshAt(state.at()))
                .map(t -> t.lastCelsius().orElseThrow());
    }

    /**
     * Only the warm bath has a plan to pass; the melting bath is meant to be hot. While the bowl is cooled it is the one
     * that is being made ready, and not the water that the rows speak of.
     */
    private Tile bath(double celsius) {
        Phase aimedFor = Ahead.aimedFor(state);
        boolean cools = aimedFor == Phase.COOL || aimedFor == Phase.SEED;
        boolean elsewhere = cools && celsius >= recipe.cool().range().lowCelsius();
        boolean planned = phase() == Phase.REWARM || phase() == Phase.WORK;
        // While it is made ready it may be too cool, and is too hot once its alarm says so.
        boolean tooHot = planned || state.alarms().of(AlarmId.BATH_HOT).state().isStanding();
        double plan = snapshot.setup().bathCelsius().orElse(recipe.rewarmBathCelsius());
        return new Tile(
                elsewhere ? WatchText.WARM_BATH.say() : WatchText.BATH.say(),
                units.shown(celsius),
                1,
                units.symbol(),
                planned ? units.shown(recipe.work().range().lowCelsius()) : Double.NEGATIVE_INFINITY,
                tooHot ? units.shown(plan + AlarmConditions.BATH_MARGIN_KELVIN) : Double.POSITIVE_INFINITY);
    }

    private static Tile plain(String title, double value, int decimals, String unit) {
        return new Tile(title, value, decimals, unit, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    private String foot() {
        Crystals crystals = crystals();
        Optional<String> held = new HoldLine(snapshot.setup(), state).line(look.zone());
        // Alarms fill their strip after an overshoot, and this must not be what is left out.
        if (!crystals.survived().isEmpty()) return crystals.survived();
        // What stands first is read most.
        List<String> said = new ArrayList<>();
        if (!crystals.question().isEmpty()) said.add(crystals.question());
        held.or(this::news).ifPresent(said::add);
        if (held.isEmpty())
            BowlLine.doubt(snapshot.setup().bowl(), state.coasting()).ifPresent(said::add);
        // The word about the crystals says it already.
        if (said.isEmpty() && !crystals.isSaid()) said.add(PROVE.say());
        return String.join(" · ", said);
    }

    /** What a dip or another thermometer showed; what is known of the bowl is for who asks. */
    private Optional<String> news() {
        return lag().filter(lag -> lag.at().plus(NEWS).isAfter(state.at()))
                .map(TrustWords::dip)
                .or(() -> state.otherReadings().stream()
                        .findFirst()
                        .map(other -> OtherWords.of(other, units, look.zone())));
    }

    /** What is wrong, and last what is no alarm, since nothing burns, but must be seen: another bowl, a seed left out. */
    private List<AlarmRow> alarms(BandModel band) {
        List<AlarmRow> rows = new ArrayList<>(band.rows());
        BowlLine.notice(snapshot.setup().bowl(), state.coasting())
                .ifPresent(words ->
                        rows.add(AlarmRow.notice(words, look.assigned().fill(WatchText.IT_IS_THE_BOWL.say()))));
        seedUnsaid().ifPresent(words -> rows.add(AlarmRow.notice(words, WatchText.TO_KNOW.say())));
        return rows;
    }

    /** The step that asked for it is gone; whether it went in matters for the batch and for its record. */
    private Optional<String> seedUnsaid() {
        boolean goesUp = phase() == Phase.REWARM || phase() == Phase.WORK;
        OptionalDouble planned = snapshot.setup().seedGrams();
        if (!goesUp || planned.isEmpty() || !state.cues().done().isSeedUnsaid()) return Optional.empty();
        return Optional.of(WatchText.THE_PLANNED_SEED_G_WAS_NOT.say(
                Math.round(planned.getAsDouble()),
                units.withUnit(recipe.meltOut().limitCelsius())));
    }

    private Band faultBand(String fault) {
        return new Band(
                Tone.PROMPT,
                Direction.NONE,
                WatchText.FAULT_OF_THE_PROGRAM_USE_THE.say(),
                WatchText.READINGS_ARE_RECORDED_ALL_THE.say(),
                false);
    }

    private Duration elapsed() {
        return Duration.between(state.started(), state.at());
    }

    private Phase phase() {
        return state.batch().phase();
    }
}
