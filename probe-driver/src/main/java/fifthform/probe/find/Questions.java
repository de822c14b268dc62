package fifthform.probe.find;

import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.ProbeProtocol.Manner;
import fifthform.probe.link.Arrival;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.TunableLink;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Asks in the language of each protocol that has to be asked, at each of its settings, until somebody answers. */
final class Questions {
    static final Questions NONE = new Questions(List.of());

    /** Instruments answer within a few tenths of a second (common practice, no source). */
    private static final Duration PATIENCE = Duration.ofMillis(900);
    /** For one that answers, but not yet with three readings. */
    private static final Duration LONGEST = Duration.ofSeconds(8);
    /** Answers that mean nothing: another language, or another speed. */
    private static final int MOST_UNREADABLE = 4;

    private final List<Question> all;
    private final List<Ear> asked = new ArrayList<>();

    private record Question(ProbeProtocol protocol, LineSettings line) {}

    private Questions(List<Question> all) {
        this.all = all;
    }

    /** The usual settings of every protocol before the less usual ones; the strictest protocol first. */
    static Questions of(List<ProbeProtocol> protocols) {
        List<ProbeProtocol> answering = protocols.stream()
                .filter(p -> p.manner() == Manner.ANSWERS)
                .sorted(Comparator.comparingInt(Breadth::of))
                .toList();
        List<Question> all = new ArrayList<>();
        int longest = answering.stream().mapToInt(p -> p.lines().size()).max().orElse(0);
        for (int rank = 0; rank < longest; rank++)
            for (ProbeProtocol p : answering)
                if (rank < p.lines().size()) all.add(new Question(p, p.lines().get(rank)));
        return new Questions(List.copyOf(all));
    }

    boolean isEmpty() {
        return all.isEmpty();
    }

    int count() {
        return asked.size();
    }

    /** @param time is told the link's time as it passes */
    Optional<Ear> ask(TunableLink link, Consumer<Instant> time) throws LinkException, InterruptedException {
        for (Question question : all) {
            Ear ear = new Ear(question.protocol(), question.line());
            asked.add(ear);
            link.tune(question.line());
            if (answers(link, ear, time)) return Optional.of(ear);
        }
        return Optional.empty();
    }

    private static boolean answers(TunableLink link, Ear ear, Consumer<Instant> time)
            throws LinkException, InterruptedException {
        Optional<Arrival> arrival = link.read();
        Instant begun = arrival.map(Arrival::at).orElse(Instant.MIN);
        Instant lastByte = begun;
        while (arrival.isPresent()) {
            Instant now = arrival.get().at();
            time.accept(now);
            ear.hear(arrival.get().bytes(), now);
            if (!arrival.get().isSilence()) lastByte = now;
            if (ear.isConvincing()) return true;
            boolean silent = Duration.between(lastByte, now).compareTo(PATIENCE) > 0 && !ear.understoodSomething();
            boolean late = Duration.between(begun, now).compareTo(LONGEST) > 0;
            if (silent || late || !ear.understoodSomething() && ear.unreadablePieces() >= MOST_UNREADABLE) return false;
            Optional<byte[]> question = ear.ask(now);
            if (question.isPresent()) link.write(question.get());
            arrival = link.read();
        }
        return false;
    }

    List<Candidate> candidates() {
        return asked.stream()
                .map(ear -> ear.candidate(ear.evidence().rejection()))
                .toList();
    }
}
