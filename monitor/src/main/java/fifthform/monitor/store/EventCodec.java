package fifthform.monitor.store;

import fifthform.curves.alarm.Priority;
import fifthform.curves.bowlcheck.OtherBowl;
import fifthform.curves.crystal.SeedRange;
import fifthform.curves.crystal.SeedWord;
import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.AlarmCleared;
import fifthform.curves.engine.Event.AlarmRaised;
import fifthform.curves.engine.Event.AlarmSeen;
import fifthform.curves.engine.Event.BowlDoubted;
import fifthform.curves.engine.Event.BowlSeen;
import fifthform.curves.engine.Event.CueEnded;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.engine.Event.LagMeasured;
import fifthform.curves.engine.Event.OtherCompared;
import fifthform.curves.engine.Event.PhaseChanged;
import fifthform.curves.engine.Event.ProbeBack;
import fifthform.curves.engine.Event.ProbeLost;
import fifthform.curves.engine.Event.ReadingDoubted;
import fifthform.curves.engine.Event.SeedJudged;
import fifthform.curves.engine.Event.SeedLost;
import fifthform.curves.engine.Event.Turned;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.signal.Doubt;
import fifthform.curves.situation.Reason;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.texts.FileText;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Events as journal lines and back. An event's line is the same, byte for byte, whenever and wherever the event is found
 * again, so what was told can be compared with what a replay computes.
 */
public final class EventCodec {
    private static final String EVENT = "e";
    /** Figures are for people; a millikelvin is more than they can use. */
    private static final int FIGURE_PLACES = 3;

    private final SessionTime time;

    public EventCodec(Instant start) {
        this.time = new SessionTime(start);
    }

    /**
     * The line for an event.
     *
     * @param sequence of the input that led to it
     */
    public String write(long sequence, Event event) {
        JsonLine line = new JsonLine()
                .text(LineKind.KEY, LineKind.EVENT.letter)
                .whole("s", sequence)
                .raw(SessionTime.KEY, time.text(event.at()));
        return event.fold(new Writing(line)).end();
    }

    /**
     * The event that a line tells, its figures rounded to thousandths.
     *
     * @throws UnreadableJson something in it is missing, impossible or from a newer program
     */
    public Event read(String line) throws UnreadableJson {
        try {
            JsonObject json = JsonObject.parse(line);
            return event(json, time.read(json));
        } catch (IllegalArgumentException e) {
            throw new UnreadableJson(e.getMessage());
        }
    }

    private static Event event(JsonObject line, Instant at) throws UnreadableJson {
        String name = line.text(EVENT);
        return switch (name) {
            case "phase-changed" ->
                new PhaseChanged(
                        at,
                        line.choice("from", Phase.values(), Phase::word),
                        line.choice("to", Phase.values(), Phase::word));
            case "bowl-seen" ->
                new BowlSeen(
                        at,
                        line.choice("place", Place.values(), Place::word),
                        line.choice("evidence", BowlSeen.Evidence.values(), EventCodec::word));
            case "alarm-raised" ->
                new AlarmRaised(
                        at,
                        alarm(line),
                        line.choice("priority", Priority.values(), Priority::word),
                        line.optionalNumber("figure_c"));
            case "alarm-cleared" -> new AlarmCleared(at, alarm(line));
            case "alarm-seen" -> new AlarmSeen(at, alarm(line));
            case "cue-given" -> new CueGiven(at, cue(line), line.optionalNumber("figure"), reason(line));
            case "cue-ended" -> new CueEnded(at, cue(line));
            case "turned" -> new Turned(at, line.number("c"), line.number("coast_k"));
            case "probe-lost" ->
                new ProbeLost(at, new ProbeId(line.text("p")), line.choice("why", Cause.values(), Cause::word));
            case "probe-back" -> new ProbeBack(at, new ProbeId(line.text("p")), line.number("gone_s"));
            case "reading-doubted" ->
                new ReadingDoubted(at, new ProbeId(line.text("p")), line.choice("doubt", Doubt.values(), Doubt::word));
            case "lag-measured" ->
                new LagMeasured(at, new ProbeId(line.text("p")), line.number("lag_s"), line.number("u_s"));
            case "other-compared" ->
                new OtherCompared(at, line.number("c"), line.optionalNumber("above_k"), line.number("within_k"));
            case "bowl-doubted" -> new BowlDoubted(at, line.choice("like", OtherBowl.values(), OtherBowl::word));
            case "seed-judged" ->
                new SeedJudged(
                        at,
                        word(line),
                        line.choice("thick", Thick.values(), Thick::word) == Thick.YES,
                        range(line, ""));
            case "seed-lost" ->
                new SeedLost(
                        at,
                        line.number("highest_c"),
                        line.number("above_s"),
                        range(line, "before_"),
                        range(line, "left_"));
            default -> throw new UnreadableJson(FileText.E_IS_WHICH_IS_NOT_KNOWN.say(name));
        };
    }

    private static AlarmId alarm(JsonObject line) throws UnreadableJson {
        return line.choice("alarm", AlarmId.values(), AlarmId::word);
    }

    private static CueId cue(JsonObject line) throws UnreadableJson {
        return line.choice("cue", CueId.values(), CueId::word);
    }

    /** Sessions of before reasons were kept have none. */
    private static Optional<Reason> reason(JsonObject line) throws UnreadableJson {
        return line.has("why") ? Optional.of(ReasonCodec.read(line.object("why"))) : Optional.empty();
    }

    private static SeedWord word(JsonObject line) throws UnreadableJson {
        return line.choice("word", SeedWord.values(), SeedWord::word);
    }

    /** Percent of the fat: of the copies that read lower, as it is, and higher. */
    private static SeedRange range(JsonObject line, String prefix) throws UnreadableJson {
        return new SeedRange(
                line.number(prefix + "lower_pct") / 100,
                line.number(prefix + "middle_pct") / 100,
                line.number(prefix + "higher_pct") / 100);
    }

    private enum Thick {
        YES,
        NO;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private static String word(BowlSeen.Evidence evidence) {
        return evidence.name().toLowerCase(Locale.ROOT);
    }

    private record Writing(JsonLine line) implements Event.Cases<JsonLine> {
        @Override
        public JsonLine phaseChanged(PhaseChanged event) {
            return named("phase-changed")
                    .text("from", event.from().word())
                    .text("to", event.to().word());
        }

        @Override
        public JsonLine bowlSeen(BowlSeen event) {
            return named("bowl-seen").text("place", event.place().word()).text("evidence", word(event.evidence()));
        }

        @Override
        public JsonLine alarmRaised(AlarmRaised event) {
            named("alarm-raised")
                    .text("alarm", event.alarm().word())
                    .text("priority", event.priority().word());
            return figure("figure_c", event.figureCelsius());
        }

        @Override
        public JsonLine alarmCleared(AlarmCleared event) {
            return named("alarm-cleared").text("alarm", event.alarm().word());
        }

        @Override
        public JsonLine alarmSeen(AlarmSeen event) {
            return named("alarm-seen").text("alarm", event.alarm().word());
        }

        @Override
        public JsonLine cueGiven(CueGiven event) {
            named("cue-given").text("cue", event.cue().word());
            figure("figure", event.figure());
            event.reason().ifPresent(why -> line.object("why", ReasonCodec.write(why)));
            return line;
        }

        @Override
        public JsonLine cueEnded(CueEnded event) {
            return named("cue-ended").text("cue", event.cue().word());
        }

        @Override
        public JsonLine turned(Turned event) {
            return named("turned")
                    .number("c", event.celsius(), FIGURE_PLACES)
                    .number("coast_k", event.coastKelvin(), FIGURE_PLACES);
        }

        @Override
        public JsonLine probeLost(ProbeLost event) {
            return named("probe-lost")
                    .text("p", event.probe().name())
                    .text("why", event.cause().word());
        }

        @Override
        public JsonLine probeBack(ProbeBack event) {
            return named("probe-back")
                    .text("p", event.probe().name())
                    .number("gone_s", event.goneSeconds(), FIGURE_PLACES);
        }

        @Override
        public JsonLine readingDoubted(ReadingDoubted event) {
            return named("reading-doubted")
                    .text("p", event.probe().name())
                    .text("doubt", event.doubt().word());
        }

        @Override
        public JsonLine lagMeasured(LagMeasured event) {
            return named("lag-measured")
                    .text("p", event.probe().name())
                    .number("lag_s", event.seconds(), FIGURE_PLACES)
                    .number("u_s", event.sigmaSeconds(), FIGURE_PLACES);
        }

        @Override
        public JsonLine otherCompared(OtherCompared event) {
            named("other-compared").number("c", event.celsius(), FIGURE_PLACES);
            return figure("above_k", event.aboveKelvin()).number("within_k", event.withinKelvin(), FIGURE_PLACES);
        }

        @Override
        public JsonLine bowlDoubted(BowlDoubted event) {
            return named("bowl-doubted").text("like", event.like().word());
        }

        @Override
        public JsonLine seedJudged(SeedJudged event) {
            named("seed-judged")
                    .text("word", event.word().word())
                    .text("thick", (event.thick() ? Thick.YES : Thick.NO).word());
            return range("", event.seed());
        }

        @Override
        public JsonLine seedLost(SeedLost event) {
            named("seed-lost")
                    .number("highest_c", event.highestCelsius(), FIGURE_PLACES)
                    .number("above_s", event.aboveSeconds(), FIGURE_PLACES);
            range("before_", event.before());
            return range("left_", event.left());
        }

        private JsonLine range(String prefix, SeedRange seed) {
            return line.number(prefix + "lower_pct", 100 * seed.lower(), FIGURE_PLACES)
                    .number(prefix + "middle_pct", 100 * seed.middle(), FIGURE_PLACES)
                    .number(prefix + "higher_pct", 100 * seed.higher(), FIGURE_PLACES);
        }

        private JsonLine named(String name) {
            return line.text(EVENT, name);
        }

        private JsonLine figure(String key, OptionalDouble value) {
            return value.isPresent() ? line.number(key, value.getAsDouble(), FIGURE_PLACES) : line;
        }
    }
}
