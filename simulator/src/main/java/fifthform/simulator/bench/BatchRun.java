package fifthform.simulator.bench;

import fifthform.curves.engine.Event;
import fifthform.curves.input.Input;
import fifthform.curves.input.Tick;
import fifthform.curves.setup.ProbeId;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.link.Arrival;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.simulator.device.Language;
import fifthform.simulator.device.RunningKitchen;
import fifthform.simulator.device.Truth;
import fifthform.simulator.scenario.Scenario;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * One whole batch in virtual time on the caller's thread: kitchen → bytes → decoder → inputs → program → maker. The same
 * scenario, seed and program give the same record.
 */
public final class BatchRun {
    /** When every batch of the bench begins. Invented: the bench has no clock. */
    public static final Instant BEGINS = Instant.parse("2026-01-10T09:00:00Z");

    public static final ProbeId BOWL = new ProbeId("bowl");
    public static final ProbeId BATH = new ProbeId("bath");

    /** The program is told that time passes when nothing else came for so long, as in a live session. */
    private static final Duration QUIET = Duration.ofMillis(250);

    private final Language language;
    private final RunningKitchen kitchen;
    private final Function<Input, List<Event>> program;
    private final Presses presses;
    private final List<Input> inputs = new ArrayList<>();
    private final List<Event> events = new ArrayList<>();
    private final List<Truth> truth = new ArrayList<>();
    private final LineJudge bowlJudge = new LineJudge(BOWL, this::offer);
    private final LineJudge bathJudge = new LineJudge(BATH, this::offer);
    private Instant lastInputAt = BEGINS;

    /** Whether the maker tells the program by key what the hands do. */
    public enum Presses {
        PRESSED,
        FORGOTTEN
    }

    private BatchRun(Language language, RunningKitchen kitchen, Function<Input, List<Event>> program, Presses presses) {
        this.language = language;
        this.kitchen = kitchen;
        this.program = program;
        this.presses = presses;
    }

    /**
     * Goes through the scenario from beginning to end.
     *
     * @param program takes each input and answers with what it has to say; it may keep a state of its own
     */
    public static BatchRecord run(Scenario scenario, Function<Input, List<Event>> program, Presses presses) {
        return run(scenario, scenario.seed(), program, presses);
    }

    /** The same batch with other luck. */
    public static BatchRecord run(Scenario scenario, long seed, Function<Input, List<Event>> program, Presses presses) {
        BatchRun run = new BatchRun(scenario.bowlAdapter().language(), scenario.start(BEGINS, seed), program, presses);
        try {
            run.wholeBatch();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted within a batch", e);
        }
        return new BatchRecord(run.inputs, run.events, run.truth, Outcome.of(run.truth));
    }

    private void wholeBatch() throws InterruptedException {
        truth.add(kitchen.truth());
        BathLine bath = new BathLine(kitchen);
        bathJudge.opened(BEGINS);
        while (!kitchen.done()) {
            Optional<ByteLink> line = opened();
            if (line.isPresent()) listen(line.get(), bath);
            else gone();
        }
        bath.close();
    }

    private Optional<ByteLink> opened() {
        try {
            return Optional.of(kitchen.bowlSource().open());
        } catch (LinkException stillUnplugged) {
            return Optional.empty(); // the kitchen let half a second pass; its adapter comes back in the kitchen's time
        }
    }

    /** Until the line is gone or the batch is over. */
    private void listen(ByteLink line, BathLine bath) throws InterruptedException {
        ProbeProtocol.Decoder decoder = language.protocol().newDecoder();
        bowlJudge.opened(kitchen.now());
        try (line) {
            Optional<Arrival> arrival = line.read();
            while (arrival.isPresent()) {
                passTime();
                bytes(arrival.get(), bowlJudge, decoder);
                ask(arrival.get().at(), line, decoder);
                for (Arrival fromBath : bath.waiting()) bytes(fromBath, bathJudge, bath.decoder());
                arrival = line.read();
            }
        } catch (LinkException gone) {
            gone();
        }
    }

    /** As the reader of a real line: after each arrival, be it a silence. */
    private void ask(Instant at, ByteLink line, ProbeProtocol.Decoder decoder) throws LinkException {
        Optional<byte[]> question = decoder.ask(at, signal -> bowlJudge.heard(at, signal));
        if (question.isPresent()) line.write(question.get());
    }

    private void gone() {
        passTime();
        bowlJudge.unplugged(kitchen.now());
    }

    private void bytes(Arrival arrival, LineJudge judge, ProbeProtocol.Decoder decoder) {
        quietUntil(arrival.at());
        decoder.feed(arrival.bytes(), signal -> judge.heard(arrival.at(), signal));
        judge.passed(arrival.at());
    }

    /** After the kitchen went on: what really is, the keys pressed meanwhile, and ticks where nothing else came. */
    private void passTime() {
        truth.add(kitchen.truth());
        for (Input press : kitchen.takePresses()) {
            if (presses == Presses.FORGOTTEN) continue;
            quietUntil(press.at());
            offer(press);
        }
        quietUntil(kitchen.now());
    }

    /** Tells that time passes up to just before this moment. */
    private void quietUntil(Instant at) {
        while (lastInputAt.plus(QUIET).isBefore(at)) offer(new Tick(lastInputAt.plus(QUIET)));
    }

    private void offer(Input input) {
        lastInputAt = input.at();
        inputs.add(input);
        for (Event event : program.apply(input)) {
            events.add(event);
            kitchen.told(event);
        }
    }
}
