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
final class ScpiDecoder implements ProbeProtocol.Decoder {
    /** An instrument's answer is far shorter. */
    private static final int LONGEST_LINE = 1024;

    /** SCPI-1999 volume 1, 7.2.1.4 and 7.2.1.5: 9.9E37 stands for infinity, 9.91E37 for no number (from memory). */
    private static final double OVERLOAD = 9.9e37;

    private static final Label BARE = Label.of("");

    private final ScpiPlan plan;
    private final PollPace pace;
    private final ScpiDialogue dialogue;
    private final byte[] line = new byte[LONGEST_LINE];
    private int length;
    /** What is in {@link #line} is not a whole line: too long, or broken off. */
    private boolean spoiled;

    private boolean torn = true;

    ScpiDecoder(ScpiPlan plan) {
        this.plan = plan;
        this.pace = new PollPace(plan.every(), plan.timeout());
        this.dialogue = new ScpiDialogue(plan);
    }

    @Override
    public void feed(byte[] bytes, Consumer<? super Signal> out) {
        if (bytes.length > 0) pace.heard();
        for (byte b : bytes) {
            if (b == '\n' || b == '\r') {
                if (length > 0) end(out);
            } else {
                if (length == LONGEST_LINE) overflow(out);
                line[length++] = b;
            }
        }
    }

    private void overflow(Consumer<? super Signal> out) {
        out.accept(new Signal.Unreadable(length));
        length = 0;
        spoiled = true;
    }

    private void end(Consumer<? super Signal> out) {
        String text = new String(line, 0, length, StandardCharsets.ISO_8859_1).strip();
        if (spoiled) {
            out.accept(new Signal.Unreadable(length));
            dialogue.garbled();
        } else if (!text.isEmpty()) {
            List<Signal> signals = torn ? List.of() : readings(text);
            if (!signals.isEmpty()) {
                signals.forEach(out);
                if (dialogue.readingCame()) pace.answered();
            } else {
                out.accept(said(text) ? new Signal.Aside(length) : new Signal.Unreadable(length));
            }
        }
        length = 0;
        spoiled = false;
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
        if (length > 0 && pace.isBroken(now)) spoiled = true;
        if (pace.givesUp(now)) dialogue.silent();
        ScpiDialogue.Step step = dialogue.next();
        if (step.isPaced() ? !pace.isTime(now) : !pace.mayAsk()) return Optional.empty();
        if (step.isPaced()) pace.asksForReading(now);
        else pace.asks(now);
        if (length == 0) torn = false;
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
