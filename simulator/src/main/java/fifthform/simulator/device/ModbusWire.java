package fifthform.simulator.device;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * A transmitter with its temperatures in registers, slave on a serial line. Sources: MODBUS Application Protocol
 * Specification V1.1b3, 6.3, 6.4 and 7; MODBUS over Serial Line V1.02, 2.5.1 and 6.2.2 (from memory).
 *
 * <p>What it has to say is the block of its registers, two bytes each, from the first that the talk names to the last. The
 * first channel is the probe; the others and the junction are at the temperature of the board.
 */
final class ModbusWire implements Wire {
    private final ModbusPlan plan;
    private final double junctionCelsius;

    /** @param settings those of the talk, found good by the driver */
    ModbusWire(Map<String, String> settings, double junctionCelsius) {
        this.plan = ModbusPlan.of(settings);
        this.junctionCelsius = junctionCelsius;
    }

    @Override
    public Said measured(double tipCelsius) {
        long number = plan.number(tipCelsius);
        return Said.number(block(plan.bits(number, tipCelsius)), plan.celsius(number, tipCelsius));
    }

    @Override
    public Said openCircuit() {
        return Said.noNumber(block(plan.openBits()));
    }

    @Override
    public Said dead() {
        return Said.noNumber(new byte[2 * plan.count()]);
    }

    private byte[] block(long tipBits) {
        byte[] block = new byte[2 * plan.count()];
        long others = plan.bits(plan.number(junctionCelsius), junctionCelsius);
        for (int register : plan.others()) plan.put(block, register, others);
        plan.put(block, plan.tip(), tipBits);
        return block;
    }

    @Override
    public byte[] garbage(SplittableRandom random) {
        return Garbage.bytes(random);
    }

    @Override
    public Set<Trouble> troubles() {
        return EnumSet.complementOf(EnumSet.of(Trouble.SHORT_CIRCUIT));
    }

    /** The answer to the usual question, as when a receiver hangs and the last answer is sent again and again. */
    @Override
    public byte[] unasked(Said said) {
        return answer(said.bytes(), 0, plan.count());
    }

    private byte[] answer(byte[] block, int from, int count) {
        byte[] head = {(byte) plan.unit(), (byte) plan.function(), (byte) (2 * count)};
        byte[] answer = new byte[head.length + 2 * count];
        System.arraycopy(head, 0, answer, 0, head.length);
        System.arraycopy(block, 2 * from, answer, head.length, 2 * count);
        return CheckSum.closed(answer);
    }

    @Override
    public Optional<Ear> newEar() {
        return Optional.of(new Slave());
    }

    /** Cuts questions out of what is written: eight bytes that begin with its unit and whose check sum is right. */
    private final class Slave implements Ear {
        private static final int QUESTION = 8;
        private static final int ILLEGAL_FUNCTION = 1;
        private static final int ILLEGAL_ADDRESS = 2;
        private static final int REFUSED = 0x80;

        private byte[] heard = new byte[0];

        @Override
        public List<byte[]> hears(byte[] written, Said said) {
            List<byte[]> answers = new ArrayList<>();
            for (byte next : written) {
                int keep = Math.min(heard.length, QUESTION - 1);
                byte[] last = new byte[keep + 1];
                System.arraycopy(heard, heard.length - keep, last, 0, keep);
                last[keep] = next;
                heard = last;
                if (isQuestion()) {
                    answers.add(answered(said));
                    heard = new byte[0];
                }
            }
            return answers;
        }

        private boolean isQuestion() {
            return heard.length == QUESTION && (heard[0] & 0xFF) == plan.unit() && CheckSum.closes(heard);
        }

        private byte[] answered(Said said) {
            int function = heard[1] & 0xFF;
            int from = word(2) - plan.first();
            int count = word(4);
            if (function != plan.function()) return refusal(function, ILLEGAL_FUNCTION);
            if (from < 0 || count < 1 || from + count > plan.count()) return refusal(function, ILLEGAL_ADDRESS);
            return answer(said.bytes(), from, count);
        }

        private byte[] refusal(int function, int code) {
            return CheckSum.closed(new byte[] {(byte) plan.unit(), (byte) (function | REFUSED), (byte) code});
        }

        private int word(int at) {
            return (heard[at] & 0xFF) << 8 | heard[at + 1] & 0xFF;
        }
    }
}
