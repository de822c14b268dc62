package fifthform.probe.protocol;

import fifthform.curves.check.Problem;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Asks one question over and over and finds its answers in what arrives. After every byte it looks whether the newest bytes
 * are a whole message with a right CRC; so an answer is found at once, whatever stands before it and wherever chunks end,
 * and no pause between bytes needs to be seen. Whether the question was asked lately makes no difference, so that a
 * recording, whose times are not ours, means the same.
 */
final class RegisterDecoder implements ProbeProtocol.Decoder {
    /** A message has 256 bytes at most (MODBUS over Serial Line V1.02, 2.5.1; from memory). */
    private static final int LONGEST_MESSAGE = 256;

    private static final int ACKNOWLEDGE = 5;
    private static final int BUSY = 6;

    private final RegisterQuestion question;
    private final RegisterMap map;
    private final PollPace pace;
    private final RegisterComplaint complaint;
    private final byte[] pending = new byte[2 * LONGEST_MESSAGE];
    private int length;

    RegisterDecoder(RegisterQuestion question, RegisterMap map, Duration every, Duration timeout) {
        this.question = question;
        this.map = map;
        this.pace = new PollPace(every, timeout);
        this.complaint = new RegisterComplaint(question);
    }

    @Override
    public void feed(byte[] bytes, Consumer<? super Signal> out) {
        if (bytes.length > 0) pace.heard();
        for (byte b : bytes) {
            if (length == pending.length) giveUp(LONGEST_MESSAGE, out);
            pending[length++] = b;
            look(out);
        }
    }

    private void look(Consumer<? super Signal> out) {
        int answer = length - question.answerLength();
        int refusal = length - RegisterQuestion.REFUSAL_LENGTH;
        int echo = length - RegisterQuestion.LENGTH;
        if (answer >= 0 && question.isAnsweredBy(pending, answer, length)) {
            answered(answer, out);
        } else if (refusal >= 0 && question.isRefusedBy(pending, refusal, length)) {
            refused(refusal, out);
        } else if (echo >= 0 && question.isEchoedBy(pending, echo, length)) {
            complaint.echoed();
            aside(echo, out);
        } else if (length == RegisterQuestion.foreignLength(pending, 0, length) && Crc16.closes(pending, 0, length)) {
            complaint.foreign();
            aside(0, out);
        } else if (answer >= 0 && question.hasLooksOfAnswer(pending, answer)) {
            complaint.damaged();
        }
    }

    private void answered(int from, Consumer<? super Signal> out) {
        giveUp(from, out);
        int data = RegisterQuestion.ANSWER_HEAD;
        List<Signal> signals = map.signals(Arrays.copyOfRange(pending, data, data + 2 * question.count()));
        if (signals.isEmpty()) out.accept(new Signal.Unreadable(length));
        else signals.forEach(out);
        length = 0;
        pace.answered();
        if (signals.isEmpty()) complaint.dead();
        else complaint.answered();
    }

    private void refused(int from, Consumer<? super Signal> out) {
        int exception = pending[from + 2];
        aside(from, out);
        complaint.refused(exception);
        pace.answered();
        if (exception == BUSY || exception == ACKNOWLEDGE) pace.again();
    }

    private void aside(int from, Consumer<? super Signal> out) {
        giveUp(from, out);
        out.accept(new Signal.Aside(length));
        length = 0;
    }

    /** The oldest bytes belong to no message. */
    private void giveUp(int count, Consumer<? super Signal> out) {
        if (count == 0) return;
        out.accept(new Signal.Unreadable(count));
        System.arraycopy(pending, count, pending, 0, length - count);
        length -= count;
    }

    @Override
    public Optional<byte[]> ask(Instant now, Consumer<? super Signal> out) {
        pace.look(now);
        if (pace.isBroken(now)) giveUp(length, out);
        if (pace.givesUp(now)) complaint.unanswered();
        if (!pace.isTime(now)) return Optional.empty();
        pace.asksForReading(now);
        return Optional.of(question.bytes());
    }

    @Override
    public Optional<Problem> complaint() {
        return complaint.told();
    }

    @Override
    public Optional<String> channelName(int channel) {
        if (channel < 0 || channel >= map.channels().size()) return Optional.empty();
        return Optional.of("register " + map.channels().get(channel));
    }
}
