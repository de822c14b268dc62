package fifthform.monitor.store;

import fifthform.curves.input.AlarmId;
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
import fifthform.curves.input.MakerAction.Undone;
import fifthform.curves.recipe.Phase;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.texts.FileText;
import java.time.Instant;

/** The part of an {@code a} line that tells what the maker did. */
final class ActionCodec {
    private static final String DO = "do";

    private ActionCodec() {}

    /** The action with its numbers as a journal keeps them. */
    static MakerAction asStored(MakerAction action) {
        try {
            return read(JsonObject.parse(write(new JsonLine(), action).end()), action.at());
        } catch (UnreadableJson e) {
            throw new IllegalArgumentException("action cannot be kept in a journal: " + e.getMessage(), e);
        }
    }

    static JsonLine write(JsonLine line, MakerAction action) {
        return action.act(new Writing(line));
    }

    static MakerAction read(JsonObject line, Instant at) throws UnreadableJson {
        String what = line.text(DO);
        return switch (what) {
            case "bowl-moved" -> new BowlMoved(at, line.choice("to", Place.values(), Place::word));
            case "stirring-said" ->
                new StirringSaid(at, line.choice("is", StirringSaid.Stirring.values(), StirringSaid.Stirring::word));
            case "seed-added" -> new SeedAdded(at, line.number("grams"));
            case "phase-confirmed" -> new PhaseConfirmed(at, line.choice("phase", Phase.values(), Phase::word));
            case "alarm-acknowledged" -> new AlarmAcknowledged(at, alarm(line));
            case "alarm-shelved" -> new AlarmShelved(at, alarm(line), SessionTime.duration(line, "for_s"));
            case "sample-proved" ->
                new SampleProved(at, line.choice("verdict", SampleProved.Verdict.values(), SampleProved.Verdict::word));
            case "noted" -> new Noted(at, line.text("text"));
            case "probe-taken-out" -> new ProbeTakenOut(at);
            case "probe-put-back" -> new ProbePutBack(at);
            case "other-thermometer" -> new OtherThermometer(at, line.number("c"));
            case "bowl-confirmed" -> new BowlConfirmed(at);
            case "setup-changed" -> new SetupChanged(at, SetupCodec.read(line.object("setup")));
            case "undone" -> new Undone(at, line.whole("of"));
            default -> throw new UnreadableJson(FileText.DO_IS_WHICH_IS_NOT_KNOWN.say(what));
        };
    }

    private static AlarmId alarm(JsonObject line) throws UnreadableJson {
        return line.choice("alarm", AlarmId.values(), AlarmId::word);
    }

    private record Writing(JsonLine line) implements MakerAction.Acts<JsonLine> {
        @Override
        public JsonLine bowlMoved(BowlMoved action) {
            return line.text(DO, "bowl-moved").text("to", action.to().word());
        }

        @Override
        public JsonLine stirringSaid(StirringSaid action) {
            return line.text(DO, "stirring-said").text("is", action.stirring().word());
        }

        @Override
        public JsonLine seedAdded(SeedAdded action) {
            return line.text(DO, "seed-added").number("grams", action.grams());
        }

        @Override
        public JsonLine phaseConfirmed(PhaseConfirmed action) {
            return line.text(DO, "phase-confirmed").text("phase", action.phase().word());
        }

        @Override
        public JsonLine alarmAcknowledged(AlarmAcknowledged action) {
            return line.text(DO, "alarm-acknowledged")
                    .text("alarm", action.alarm().word());
        }

        @Override
        public JsonLine alarmShelved(AlarmShelved action) {
            return line.text(DO, "alarm-shelved")
                    .text("alarm", action.alarm().word())
                    .raw("for_s", SessionTime.text(action.duration()));
        }

        @Override
        public JsonLine sampleProved(SampleProved action) {
            return line.text(DO, "sample-proved")
                    .text("verdict", action.verdict().word());
        }

        @Override
        public JsonLine noted(Noted action) {
            return line.text(DO, "noted").text("text", action.text());
        }

        @Override
        public JsonLine probeTakenOut(ProbeTakenOut action) {
            return line.text(DO, "probe-taken-out");
        }

        @Override
        public JsonLine probePutBack(ProbePutBack action) {
            return line.text(DO, "probe-put-back");
        }

        @Override
        public JsonLine otherThermometer(OtherThermometer action) {
            return line.text(DO, "other-thermometer").number("c", action.celsius());
        }

        @Override
        public JsonLine bowlConfirmed(BowlConfirmed action) {
            return line.text(DO, "bowl-confirmed");
        }

        @Override
        public JsonLine setupChanged(SetupChanged action) {
            return line.text(DO, "setup-changed").object("setup", SetupCodec.write(action.setup()));
        }

        @Override
        public JsonLine undone(Undone action) {
            return line.text(DO, "undone").whole("of", action.sequence());
        }
    }
}
