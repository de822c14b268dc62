package fifthform.curves.network;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * Networks that were trained to guess, from the readings so far, where a lifted bowl would turn; their answers are
 * averaged. It holds weights only; what it remembers of a session is handed in and out as {@link Memory}.
 */
public final class Network {
    /** Five points if lifted now, five if lifted later, three logits of the place, bulk less base. */
    public static final int OUTPUTS = 14;

    private static final int POINTS = 5;
    private static final Network PACKED = PackedWeights.read(PackedWeights.NAME);

    private final List<Member> members;
    private final List<String> provenance;
    private final int memorySize;

    Network(List<Member> members, List<String> provenance) {
        this.members = List.copyOf(members);
        this.provenance = List.copyOf(provenance);
        this.memorySize = members.stream().mapToInt(Member::memorySize).sum();
    }

    /** The network that comes with the program; read once. */
    public static Network packed() {
        return PACKED;
    }

    /**
     * The network in this text.
     *
     * @param lines as {@link WeightText} says
     * @param source what the text is called in complaints
     * @throws IllegalArgumentException if it is no network that can be told {@value Blocks#INPUTS} numbers and answers
     *     with {@value #OUTPUTS}
     */
    public static Network of(List<String> lines, String source) {
        return WeightText.read(lines, source);
    }

    /**
     * What one step leads to.
     *
     * @param memory from then on
     * @param guess what it says
     */
    public record Step(Memory memory, Guess guess) {
        public Step {
            Objects.requireNonNull(memory, "memory");
            Objects.requireNonNull(guess, "guess");
        }
    }

    /** How the weights were made, line by line: {@code key = value}. */
    public List<String> provenance() {
        return provenance;
    }

    /** Before the first step it remembers nothing. */
    public Memory nothing() {
        return new Memory(new double[memorySize]);
    }

    /** One step of {@value Blocks#STEP_SECONDS} s. */
    public Step step(Memory memory, Moment moment) {
        if (memory.size() != memorySize) {
            throw new IllegalArgumentException(
                    "memory must be of this network, " + memorySize + " units, was " + memory.size());
        }
        double[] inputs = moment.inputs();
        double[] after = new double[memorySize];
        double[] answers = new double[OUTPUTS];
        int from = 0;
        for (Member member : members) {
            double[] said = member.step(inputs, memory.units(), after, from);
            for (int i = 0; i < OUTPUTS; i++) answers[i] += said[i];
            from += member.memorySize();
        }
        for (int i = 0; i < OUTPUTS; i++) answers[i] /= members.size();
        return new Step(new Memory(after), guess(moment, answers));
    }

    private static Guess guess(Moment moment, double[] answers) {
        double most = Math.max(answers[10], Math.max(answers[11], answers[12]));
        double bath = StrictMath.exp(answers[10] - most);
        double table = StrictMath.exp(answers[11] - most);
        double cold = StrictMath.exp(answers[12] - most);
        double all = bath + table + cold;
        return new Guess(
                moment.endSeconds(),
                moment.baseCelsius(),
                moment.readSeconds(),
                moment.readCelsius(),
                points(answers, 0),
                points(answers, POINTS),
                bath / all,
                table / all,
                cold / all,
                answers[13]);
    }

    /** Trained one by one, the points may cross; in order they are no worse. */
    private static Points points(double[] answers, int from) {
        double[] p = Arrays.copyOfRange(answers, from, from + POINTS);
        Arrays.sort(p);
        return new Points(p[0], p[1], p[2], p[3], p[4]);
    }
}
