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
import fifthform.monitor.texts.CheckText;
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
            String last = lastCelsius.isPresent() ? CheckText.IT_READ.say(desk.celsius(lastCelsius.getAsDouble())) : "";
            return last + objection.map(CheckWords::of).orElse("");
        }
    }

    /** One point, from the instructions to the value. */
    Ended point(CheckSubject subject, CheckEar ear, Target target, String step) throws Refusal, InterruptedException {
        desk.say("");
        desk.say(CheckText.TRUE_HERE.say(
                step, desk.celsius(target.trueCelsius()), desk.kelvin(2 * target.sigmaKelvin())));
        CheckNotices.of(target).forEach(line -> desk.say("  " + line));
        desk.say(CheckText.IT_BEGINS_AND_ENDS_BY_ITSELF.say(
                desk.manner() == CheckDesk.Manner.AT_A_TERMINAL ? CheckText.ENTER_BEGINS_AND_TAKES_IT.say() : ""));
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
                desk.say("  " + CheckWords.of(objected.objection()));
            if (event instanceof CheckEvent.Taken taken)
                desk.say(CheckText.TAKEN_READINGS.say(taken.point().readings()));
        }
        return step.after();
    }

    private static String words(PointCheck check) {
        return switch (check.stage()) {
            case PREPARE -> CheckText.WAITING_FOR_THE_TIP_TO_GO.say();
            case SETTLE ->
                check.objection()
                        .map(o -> switch (o) {
                            case STILL_FALLING -> CheckText.STILL_FALLING.say();
                            case STILL_RISING -> CheckText.STILL_RISING.say();
                            default -> CheckText.NOT_YET.say();
                        })
                        .orElse(CheckText.SETTLING.say());
            case STEADY -> CheckText.STEADY_BEING_AVERAGED.say();
            case TAKEN, GIVEN_UP -> "";
        };
    }

    /** Two probes in one bath; empty where they never got steady. */
    Optional<Agreement> sideBySide(CheckSubject one, CheckEar earOne, CheckSubject other, CheckEar earOther)
            throws Refusal, InterruptedException {
        desk.say("");
        desk.say(CheckText.TWO_PROBES_IN_ONE_BATH_AND.say(one.place(), other.place()));
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
                                CheckText.AND_AS_READ.say(
                                        desk.celsius(((Reading) one).celsius()),
                                        desk.celsius(((Reading) other).celsius())))));
    }

    private static Optional<List<CheckInput>> listen(CheckEar ear, CheckSubject subject)
            throws Refusal, InterruptedException {
        try {
            return ear.listen();
        } catch (LinkException e) {
            throw new Refusal(
                    Exit.NO_PROBE,
                    CheckText.THE_CHECK_IS_NOT_FINISHED_AND.say(subject.place(), e.getMessage(), e.whatToDo()));
        }
    }
}
