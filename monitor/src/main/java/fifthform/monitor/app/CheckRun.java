package fifthform.monitor.app;

import fifthform.curves.probecheck.Agreement;
import fifthform.curves.probecheck.CheckEvent;
import fifthform.curves.probecheck.CheckInput;
import fifthform.curves.probecheck.CheckInput.Enter;
import fifthform.curves.probecheck.CheckInput.Reading;
import fifthform.curves.probecheck.Objection;
import fifthform.curves.probecheck.Point;
import fifthform.curves.probecheck.PointCheck;
import fifthform.curves.probecheck.SideBySide;
import fifthform.curves.probecheck.Target;
import fifthform.probe.link.LinkException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** Leads the maker through the points of a check. */
final class CheckRun {
    private static final Duration LONGEST_SIDE_BY_SIDE = Duration.ofMinutes(10);

    private final CheckDesk desk;

    CheckRun(CheckDesk desk) {
        this.desk = Objects.requireNonNull(desk, "desk");
    }

    /** How a point ended: with its value, or with what kept it from being taken and the last reading. */
    record Ended(Optional<Point> point, Optional<Objection> objection, OptionalDouble lastCelsius) {
        /** For people: the last reading, what is wrong with it and what to do. */
        String why(CheckDesk desk) {
            String last = lastCelsius.isPresent() ? "It read " + desk.celsius(lastCelsius.getAsDouble()) + ". " : "";
            return last + objection.map(Objection::words).orElse("");
        }
    }

    /** One point, from the instructions to the value. */
    Ended point(CheckSubject subject, CheckEar ear, Target target, String step) throws Refusal, InterruptedException {
        desk.say("");
        desk.say(step + " · true here: " + desk.celsius(target.trueCelsius()) + " ±"
                + desk.kelvin(2 * target.sigmaKelvin()));
        CheckNotices.of(target).forEach(line -> desk.say("  " + line));
        desk.say("  It begins and ends by itself."
                + (desk.manner() == CheckDesk.Manner.AT_A_TERMINAL ? " Enter begins, and takes it sooner." : ""));
        subject.dip().accept(target);
        PointCheck check = PointCheck.of(target);
        OptionalDouble last = OptionalDouble.empty();
        Instant at = Instant.MIN;
        while (!check.isOver()) {
            Optional<List<CheckInput>> heard = listen(ear, subject);
            if (heard.isEmpty()) check = tell(check.ended(at));
            for (CheckInput input : heard.orElse(List.of())) {
                at = input.at();
                if (input instanceof Reading reading) last = OptionalDouble.of(reading.celsius());
                check = tell(check.next(input));
            }
            if (heard.isPresent() && desk.entered()) check = tell(check.next(new Enter(at)));
            if (last.isPresent() && !check.isOver())
                desk.value(at, desk.celsius(last.getAsDouble()) + "   " + words(check));
        }
        return new Ended(check.point(), check.objection(), last);
    }

    private PointCheck tell(PointCheck.Step step) {
        for (CheckEvent event : step.events()) {
            if (event instanceof CheckEvent.Objected objected
                    && objected.objection() != Objection.STILL_FALLING
                    && objected.objection() != Objection.STILL_RISING)
                desk.say("  " + objected.objection().words());
            if (event instanceof CheckEvent.Taken taken)
                desk.say("  Taken: " + taken.point().readings() + " readings.");
        }
        return step.after();
    }

    private static String words(PointCheck check) {
        return switch (check.stage()) {
            case PREPARE -> "waiting for the tip to go in";
            case SETTLE ->
                check.objection()
                        .map(o -> switch (o) {
                            case STILL_FALLING -> "still falling";
                            case STILL_RISING -> "still rising";
                            default -> "not yet";
                        })
                        .orElse("settling");
            case STEADY -> "steady, being averaged";
            case TAKEN, GIVEN_UP -> "";
        };
    }

    /** Two probes in one bath; empty where they never got steady. */
    Optional<Agreement> sideBySide(CheckSubject one, CheckEar earOne, CheckSubject other, CheckEar earOther)
            throws Refusal, InterruptedException {
        desk.say("");
        desk.say("Two probes in one bath: " + one.place() + " and " + other.place());
        CheckNotices.bath().forEach(line -> desk.say("  " + line));
        one.stir().run();
        other.stir().run();
        SideBySide pot = SideBySide.START;
        Optional<Instant> begun = Optional.empty();
        while (true) {
            Optional<List<CheckInput>> first = listen(earOne, one);
            Optional<List<CheckInput>> second = listen(earOther, other);
            if (first.isEmpty() || second.isEmpty()) return Optional.empty();
            for (CheckInput input : first.get()) if (input instanceof Reading r) pot = pot.withOne(r);
            for (CheckInput input : second.get()) if (input instanceof Reading r) pot = pot.withOther(r);
            Optional<Agreement> agreement = pot.agreement(one.before(), other.before());
            if (agreement.isPresent()) return agreement;
            Instant at = first.get().get(first.get().size() - 1).at();
            if (begun.isEmpty()) begun = Optional.of(at);
            if (Duration.between(begun.get(), at).compareTo(LONGEST_SIDE_BY_SIDE) > 0) return Optional.empty();
            value(at, first.get(), second.get());
        }
    }

    private void value(Instant at, List<CheckInput> first, List<CheckInput> second) {
        first.stream()
                .filter(Reading.class::isInstance)
                .findFirst()
                .ifPresent(one -> second.stream()
                        .filter(Reading.class::isInstance)
                        .findFirst()
                        .ifPresent(other -> desk.value(
                                at,
                                desk.celsius(((Reading) one).celsius()) + " and "
                                        + desk.celsius(((Reading) other).celsius()) + " as read")));
    }

    private static Optional<List<CheckInput>> listen(CheckEar ear, CheckSubject subject)
            throws Refusal, InterruptedException {
        try {
            return ear.listen();
        } catch (LinkException e) {
            throw new Refusal(
                    Exit.NO_PROBE,
                    subject.place() + ": " + e.getMessage() + " The check is not finished and nothing is kept of it. "
                            + e.whatToDo());
        }
    }
}
