package fifthform.monitor.store;

import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.Recorded;
import fifthform.curves.input.Sample;
import fifthform.curves.input.StoreTrouble;
import fifthform.curves.input.Tick;
import fifthform.curves.setup.ProbeId;
import fifthform.monitor.json.Decimal;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import java.time.Instant;
import java.util.OptionalDouble;

/** Inputs as journal lines and back. */
public final class InputCodec {
    private static final String SEQUENCE = "s";
    private static final double SMALLEST_SIGMA_KELVIN = 1e-6;

    private final SessionTime time;

    public InputCodec(Instant start) {
        this.time = new SessionTime(start);
    }

    /**
     * The input with its numbers as a journal keeps them: rounded to millionths. The engine must be given this one, so
     * that a replay sees the very same bits.
     */
    public static Input asStored(Input input) {
        return input.fold(new Input.Cases<>() {
            @Override
            public Input sample(Sample sample) {
                return new Sample(
                        sample.at(),
                        sample.probe(),
                        Decimal.rounded(sample.tipCelsius()),
                        Math.max(SMALLEST_SIGMA_KELVIN, Decimal.rounded(sample.sigmaKelvin())),
                        rounded(sample.junctionCelsius()),
                        rounded(sample.emfMillivolts()));
            }

            @Override
            public Input fault(ProbeFault fault) {
                return fault;
            }

            @Override
            public Input action(MakerAction action) {
                return ActionCodec.asStored(action);
            }

            @Override
            public Input storeTrouble(StoreTrouble trouble) {
                return trouble;
            }

            @Override
            public Input tick(Tick tick) {
                return tick;
            }
        });
    }

    private static OptionalDouble rounded(OptionalDouble value) {
        return value.isPresent() ? OptionalDouble.of(Decimal.rounded(value.getAsDouble())) : value;
    }

    /** The line for an input; numbers with more than six decimals lose the rest, see {@link #asStored}. */
    public String write(Recorded recorded) {
        long sequence = recorded.sequence();
        return recorded.input()
                .fold(new Input.Cases<JsonLine>() {
                    @Override
                    public JsonLine sample(Sample sample) {
                        return begin(LineKind.SAMPLE, sequence, sample)
                                .text("p", sample.probe().name())
                                .number("c", sample.tipCelsius())
                                .number("u", sample.sigmaKelvin())
                                .number("j", sample.junctionCelsius())
                                .number("mv", sample.emfMillivolts());
                    }

                    @Override
                    public JsonLine fault(ProbeFault fault) {
                        return begin(LineKind.FAULT, sequence, fault)
                                .text("p", fault.probe().name())
                                .text("why", fault.cause().word());
                    }

                    @Override
                    public JsonLine action(MakerAction action) {
                        return ActionCodec.write(begin(LineKind.ACTION, sequence, action), action);
                    }

                    @Override
                    public JsonLine storeTrouble(StoreTrouble trouble) {
                        return begin(LineKind.STORE_TROUBLE, sequence, trouble)
                                .text("what", trouble.what().word());
                    }

                    @Override
                    public JsonLine tick(Tick tick) {
                        return begin(LineKind.TICK, sequence, tick);
                    }
                })
                .end();
    }

    private JsonLine begin(LineKind kind, long sequence, Input input) {
        return new JsonLine()
                .text(LineKind.KEY, kind.letter)
                .whole(SEQUENCE, sequence)
                .raw(SessionTime.KEY, time.text(input.at()));
    }

    /**
     * The input that a line of this kind tells.
     *
     * @throws UnreadableJson something in it is missing or impossible
     */
    Recorded read(LineKind kind, JsonObject line) throws UnreadableJson {
        try {
            return new Recorded(line.whole(SEQUENCE), input(kind, line, time.read(line)));
        } catch (IllegalArgumentException e) {
            throw new UnreadableJson(e.getMessage());
        }
    }

    private static Input input(LineKind kind, JsonObject line, Instant at) throws UnreadableJson {
        return switch (kind) {
            case SAMPLE ->
                new Sample(
                        at,
                        new ProbeId(line.text("p")),
                        line.number("c"),
                        line.number("u"),
                        line.optionalNumber("j"),
                        line.optionalNumber("mv"));
            case FAULT ->
                new ProbeFault(
                        at,
                        new ProbeId(line.text("p")),
                        line.choice("why", ProbeFault.Cause.values(), ProbeFault.Cause::word));
            case TICK -> new Tick(at);
            case ACTION -> ActionCodec.read(line, at);
            case STORE_TROUBLE ->
                new StoreTrouble(at, line.choice("what", StoreTrouble.What.values(), StoreTrouble.What::word));
            case HEADER, EVENT, NOTE, CHECK, CLOSING -> throw new IllegalArgumentException(kind + " is no input");
        };
    }
}
