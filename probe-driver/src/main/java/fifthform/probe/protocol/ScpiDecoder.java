package fifthform.probe.protocol;

import fifthform.curves.check.Problem;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Cuts what an instrument says into lines and tells them apart by their form, whether asked for lately or not; so a
 * recording, whose questions were asked at other times, means the same. What to ask is {@link ScpiDialogue}'s.
 *
 * <p>What comes before the first line end of a link may be the rear half of a line, unless a question went out into a quiet
 * line before it: such a line is never a reading.
 */
final class ScpiDecoder implements ProbeProtocol.Decoder, LineCutter.Lines {
    /** SCPI-1999 volume 1, 7.2.1.4 and 7.2.1.5: 9.9E37 stands for infinity, 9.91E37 for no number (from memory). */
    private static final double OVERLOAD = 9.9e37;

    private static final Label BARE = Label.of("");

    private final ScpiPlan plan;
    private final PollPace pace;
    private final ScpiDialogue dialogue;
    private final LineCutter cutter = new LineCutter(this);
    private boolean torn = true;

    ScpiDecoder(ScpiPlan plan) {
        this.plan = plan;
        this.pace = new PollPace(plan.every(), plan.timeout());
        this.dialogue = new ScpiDialogue(plan);
    }

    @Override
    public void feed(byte[] bytes, Consumer<? super Signal> out) {
        if (bytes.length > 0) pace.heard();
        cutter.feed(bytes, out);
    }

    @Override
    public void unreadable(int count, Consumer<? super Signal> out) {
        if (count > 0) out.accept(new Signal.Unreadable(count));
        dialogue.garbled();
        torn = false;
    }

    @Override
    public void line(byte[] bytes, int from, int to, Consumer<? super Signal> out) {
        if (from == to) return;
        String text = new String(bytes, from, to - from, StandardCharsets.ISO_8859_1).strip();
        if (!text.isEmpty()) {
            List<Signal> signals = torn ? List.of() : readings(text);
            if (!signals.isEmpty()) {
                signals.forEach(out);
                if (dialogue.readingCame()) pace.answered();
            } else {
                out.accept(said(text) ? new Signal.Aside(to - from) : new Signal.Unreadable(to - from));
            }
        }
        torn = false;
    }

    /** Whether the line was understood, without being a reading. */
    private boolean said(String text) {
        ScpiDialogue.Reply reply = dialogue.said(text);
        if (reply == ScpiDialogue.Reply.ANSWER) pace.answered();
        if (reply == ScpiDialogue.Reply.NOTHING) dialogue.garbled();
        return reply != ScpiDialogue.Reply.NOTHING;
    }

    /** One signal a channel; empty where the line is something else. */
    private List<Signal> readings(String text) {
        Optional<Signal> fault = plan.numbers() == 1 ? FaultWords.read(text) : Optional.empty();
        if (fault.isPresent()) return List.of(fault.get());
        List<ScpiAnswer.Reading> readings = ScpiAnswer.readings(text);
        if (readings.size() != plan.numbers()) {
            if (!readings.isEmpty()) dialogue.wrongCount(readings.size());
            return List.of();
        }
        List<Signal> signals = new ArrayList<>();
        for (ScpiAnswer.Reading reading : readings) {
            Optional<Unit> unit = reading.unit() == Unit.UNSAID ? dialogue.unit() : Optional.of(reading.unit());
            if (unit.isEmpty()) return List.of();
            Optional<Signal> signal = signal(signals.size(), reading.number(), unit.get());
            if (signal.isEmpty()) return List.of();
            signals.add(signal.get());
        }
        return signals;
    }

    private static Optional<Signal> signal(int channel, Written number, Unit unit) {
        if (number.value() >= OVERLOAD) return Optional.of(new Signal.OpenCircuit(channel));
        return Temperatures.one(channel, new Field(BARE, Optional.of(number), unit), Optional.empty());
    }

    @Override
    public Optional<byte[]> ask(Instant now, Consumer<? super Signal> out) {
        pace.look(now);
        // Half a line and a long pause: whatever follows would be taken for its rest.
        if (cutter.isWithinLine() && pace.isBroken(now)) cutter.spoil();
        if (pace.givesUp(now)) dialogue.silent();
        ScpiDialogue.Step step = dialogue.next();
        if (step.isPaced() ? !pace.isTime(now) : !pace.mayAsk()) return Optional.empty();
        if (step.isPaced()) pace.asksForReading(now);
        else pace.asks(now);
        if (!cutter.isWithinLine()) torn = false;
        return Optional.of((dialogue.asks(step) + plan.lineEnd()).getBytes(StandardCharsets.US_ASCII));
    }

    @Override
    public Optional<Problem> complaint() {
        return dialogue.complaint();
    }

    @Override
    public Optional<String> channelName(int channel) {
        if (plan.channel(channel).isPresent())
            return Optional.of("channel " + plan.channel(channel).getAsInt());
        return channel == 0 ? dialogue.model() : Optional.empty();
    }
}
