package fifthform.monitor.replay;

import fifthform.curves.engine.Event;
import fifthform.curves.engine.State;
import fifthform.curves.input.Recorded;
import fifthform.monitor.intake.InputSource;
import fifthform.monitor.session.SessionLoop;
import fifthform.monitor.session.SessionRecord;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.store.EventCodec;
import fifthform.monitor.store.JournalPass;
import fifthform.monitor.texts.ReplayText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Takes a recording through the engine of today, by the same loop as live, and keeps the state at each minute, so that
 * any moment is at most a minute of steps away. One thread runs it; any thread may ask how far it is.
 */
public final class SecondPass implements Runnable {
    static final long MINUTE_NANOS = 60_000_000_000L;

    /**
     * A state on the way.
     *
     * @param nanos up to when all inputs are in it, ns since the start
     * @param offset where the line of the next input begins
     */
    record Kept(long nanos, long offset, State state) {}

    /** What is told now; its line is as the journal's would be. */
    public record Computed(Event event, String line, long sequence) {}

    private final Recording recording;
    private final Findings findings;
    private final WhatIfs whatIfs;
    private final EventCodec codec;
    private final List<Kept> kept = new ArrayList<>();
    private final List<Computed> computed = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();
    private volatile boolean stopped;
    private volatile long doneNanos;
    private volatile Optional<Whole> whole = Optional.empty();

    /**
     * What is known once all is gone through.
     *
     * @param last the end of the batch
     * @param findings what went wrong
     * @param whatIfs what would have been
     */
    public record Whole(SessionSnapshot last, List<Finding> findings, List<WhatIf> whatIfs) {
        public Whole {
            Objects.requireNonNull(last, "last");
            findings = List.copyOf(findings);
            whatIfs = List.copyOf(whatIfs);
        }
    }

    public SecondPass(Recording recording, Findings findings, WhatIfs whatIfs) {
        this.recording = Objects.requireNonNull(recording, "recording");
        this.findings = Objects.requireNonNull(findings, "findings");
        this.whatIfs = Objects.requireNonNull(whatIfs, "whatIfs");
        this.codec = new EventCodec(recording.start());
    }

    /** Goes through all; returns at its end, or soon after {@link #stop}. */
    @Override
    public void run() {
        try (JournalPass pass = JournalPass.from(recording.file(), recording.header(), 0)) {
            through(pass);
        } catch (IOException | UncheckedIOException e) {
            fault(ReplayText.THE_FILE_COULD_NOT_BE_READ.say(e.getMessage()));
        }
    }

    private void through(JournalPass pass) {
        Source source = new Source(pass);
        SessionLoop loop = new SessionLoop(
                recording.setup(),
                recording.start(),
                source,
                new Heard(),
                List.of((now, events) -> findings.follow(source.last.orElseThrow(), now, events)),
                () -> 0);
        source.loop = Optional.of(loop);
        loop.run();
        if (stopped) return;
        SessionSnapshot last = loop.snapshot();
        keep(new Kept(recording.endNanos(), Long.MAX_VALUE, last.state()));
        doneNanos = Long.MAX_VALUE;
        List<Finding> found = findings.found(recording, last);
        // What is found is said at once; what would have been may take a while.
        whole = Optional.of(new Whole(last, found, List.of()));
        whole = Optional.of(new Whole(last, found, whatIfs.answers(recording, last)));
    }

    /** Ends it before its time. */
    public void stop() {
        stopped = true;
    }

    /** Up to when all is computed, ns since the start; beyond all times once it is through. */
    public long doneNanos() {
        return doneNanos;
    }

    /** What is known once all is gone through. */
    public Optional<Whole> whole() {
        return whole;
    }

    /** What is told now, as far as it has come. */
    public List<Computed> computed() {
        synchronized (computed) {
            return List.copyOf(computed);
        }
    }

    /** How much is told now, as far as it has come. */
    int computedSize() {
        synchronized (computed) {
            return computed.size();
        }
    }

    /** What the engine stumbled over. */
    public List<String> faults() {
        synchronized (faults) {
            return List.copyOf(faults);
        }
    }

    /** The last state kept at or before this time; empty where it has not come so far. */
    Optional<Kept> keptBefore(long nanos) {
        if (nanos > doneNanos) return Optional.empty();
        synchronized (kept) {
            int low = 0;
            int high = kept.size();
            while (low < high) {
                int middle = (low + high) >>> 1;
                if (kept.get(middle).nanos() <= nanos) low = middle + 1;
                else high = middle;
            }
            return low == 0 ? Optional.empty() : Optional.of(kept.get(low - 1));
        }
    }

    private void keep(Kept state) {
        synchronized (kept) {
            kept.add(state);
        }
    }

    private void fault(String words) {
        synchronized (faults) {
            faults.add(words);
        }
    }

    /** Hands over the inputs; keeps the state whenever one of another minute comes. */
    private final class Source implements InputSource {
        private final JournalPass pass;
        private Optional<SessionLoop> loop = Optional.empty();
        private Optional<Recorded> last = Optional.empty();
        private long nextMinute;

        Source(JournalPass pass) {
            this.pass = pass;
        }

        @Override
        public Optional<Recorded> next() {
            try {
                while (!stopped && pass.next()) {
                    switch (pass.kind()) {
                        case READING, INPUT -> {
                            if (pass.nanos() >= nextMinute) keepHere();
                            last = Optional.of(pass.recorded());
                            return last;
                        }
                        case TOLD, NOTE, CLOSING -> {}
                    }
                }
                return Optional.empty();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private void keepHere() {
            long now = pass.nanos();
            // The state is that before this input: good for every moment up to it.
            keep(new Kept(
                    nextMinute == 0 ? 0 : now - 1,
                    pass.offset(),
                    loop.orElseThrow().snapshot().state()));
            nextMinute = (now / MINUTE_NANOS + 1) * MINUTE_NANOS;
            doneNanos = Math.max(doneNanos, now - 1);
        }
    }

    private final class Heard implements SessionRecord {
        @Override
        public void input(Recorded recorded) {}

        @Override
        public void event(long sequence, Event event) {
            synchronized (computed) {
                computed.add(new Computed(event, codec.write(sequence, event), sequence));
            }
        }

        @Override
        public void note(Instant at, String about, String text) {
            fault(text);
        }

        @Override
        public void force() {}
    }
}
