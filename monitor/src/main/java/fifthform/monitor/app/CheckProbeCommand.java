package fifthform.monitor.app;

import fifthform.curves.probecheck.Agreement;
import fifthform.curves.probecheck.AirPressure;
import fifthform.curves.probecheck.Point;
import fifthform.curves.probecheck.Target;
import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.adapters.KeptAdapter;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.texts.CheckText;
import fifthform.probe.link.LinkException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Is this probe right? */
@Command(name = "check-probe", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class CheckProbeCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Mixin
    private CheckAirOptions airs;

    @Mixin
    private CheckSensorOptions sensors;

    @Option(names = "--probe", paramLabel = "PORT")
    private String probe;

    @Mixin
    private CheckLineOptions line;

    @Option(names = "--against", paramLabel = "PORT")
    private String against;

    @Option(names = "--forget")
    private boolean forget;

    @Option(names = "--json")
    private boolean json;

    @Override
    public Integer call() throws Refusal, InterruptedException {
        Optional<AirPressure> air = airs.air();
        Adapters adapters = new Adapters(common.folders().probes());
        Adapters.Loaded loaded = adapters.load();
        loaded.problems().forEach(common.err()::println);
        Settings choices = common.settings();
        // With --json the result alone goes to standard output.
        CheckDesk desk = CheckDesk.here(json ? common.err() : common.out(), common.units(choices));
        CheckSubjects subjects = line.subjects(loaded, sensors, desk.manner(), common.err());
        CheckKeeper keeper = new CheckKeeper(adapters);
        String name = probe != null ? probe : ProbeChooser.bowl(loaded, choices.lastProbe());
        if (forget) return forget(name, new KnownProbes(loaded), keeper).code();
        CheckSubject subject = subjects.first(name);
        if (against != null)
            return compare(subject, subjects.second(against), desk).code();
        return check(subject, air, desk, keeper).code();
    }

    private Exit check(CheckSubject subject, Optional<AirPressure> air, CheckDesk desk, CheckKeeper keeper)
            throws Refusal, InterruptedException {
        welcome(subject, desk);
        CheckOutcome outcome;
        try (CheckEar ear = open(subject)) {
            outcome = points(subject, ear, air, desk);
        }
        CheckReport report = new CheckReport(subject, desk);
        report.words(outcome).forEach(desk::say);
        Optional<Path> kept = keeper.keep(subject, outcome, Instant.now());
        desk.say(whereKept(subject, kept, outcome));
        if (json) common.out().println(report.json(outcome, kept.map(Path::toString)));
        return outcome.isPassed() ? Exit.DONE : Exit.ANSWER_IS_NO;
    }

    private CheckOutcome points(CheckSubject subject, CheckEar ear, Optional<AirPressure> air, CheckDesk desk)
            throws Refusal, InterruptedException {
        List<Target> targets = new ArrayList<>();
        if (airs.takesIce()) targets.add(Target.ice());
        air.ifPresent(a -> targets.add(Target.boil(a)));
        List<Point> taken = new ArrayList<>();
        CheckRun run = new CheckRun(desk);
        for (Target target : targets) {
            String name = target.kind() == Target.Kind.ICE ? CheckText.ICE_POINT.say() : CheckText.BOILING_POINT.say();
            String step = CheckText.STEP_OF.say(taken.size() + 1, targets.size(), name);
            CheckRun.Ended ended = run.point(subject, ear, target, step);
            if (ended.point().isEmpty())
                return judgement(subject, ear).failed(taken, CheckText.THE_WAS_NOT_TAKEN.say(name, ended.why(desk)));
            taken.add(ended.point().get());
        }
        CheckJudgement judgement = judgement(subject, ear);
        if (air.isEmpty()) return judgement.ofIce(taken.get(0));
        return taken.size() == 1
                ? judgement.ofBoil(taken.get(0))
                : judgement.ofBoth(taken.get(0), taken.get(1), air.get());
    }

    private static CheckJudgement judgement(CheckSubject subject, CheckEar ear) {
        return new CheckJudgement(subject, ear.channel(), ear.curve());
    }

    private Exit compare(CheckSubject one, CheckSubject other, CheckDesk desk) throws Refusal, InterruptedException {
        welcome(one, desk);
        Optional<Agreement> agreement;
        try (CheckEar first = open(one);
                CheckEar second = open(other)) {
            agreement = new CheckRun(desk).sideBySide(one, first, other, second);
        }
        if (agreement.isEmpty()) {
            throw new Refusal(Exit.ANSWER_IS_NO, CheckText.THE_TWO_PROBES_NEVER_STOOD.say());
        }
        CheckReport.words(agreement.get(), desk).forEach(desk::say);
        if (json) common.out().println(new CheckReport(one, desk).json(agreement.get(), other.place()));
        return agreement.get().holds() ? Exit.DONE : Exit.ANSWER_IS_NO;
    }

    private Exit forget(String name, KnownProbes known, CheckKeeper keeper) throws Refusal {
        String place = KnownProbes.place(PortName.parse(name).port());
        Optional<KeptAdapter> kept = known.at(place);
        if (kept.isEmpty()) {
            common.err().println(CheckText.NOTHING_IS_KNOWN_OF_SO_THERE.say(place));
            return Exit.ANSWER_IS_NO;
        }
        Path aside = keeper.forget(kept.get());
        common.out().println(CheckText.IS_FORGOTTEN_FROM_NOW_ON_IT.say(place, aside));
        return Exit.DONE;
    }

    private static void welcome(CheckSubject subject, CheckDesk desk) {
        desk.say(
                switch (subject.kind()) {
                    case REAL ->
                        CheckText.PROBE_CHECK.say(
                                subject.place(),
                                subject.spoken().talk(),
                                subject.before().isChecked()
                                        ? CheckText.CHECKED_BEFORE.say()
                                        : CheckText.NEVER_CHECKED.say());
                    case RECORDED -> CheckText.PROBE_CHECK_RECORDED_EARLIER.say(subject.place());
                    case PRACTICE -> CheckText.PROBE_CHECK_PRACTICE_AN.say();
                });
    }

    private static String whereKept(CheckSubject subject, Optional<Path> kept, CheckOutcome outcome) {
        if (kept.isPresent())
            return outcome.finding().isPresent()
                    ? CheckText.KEPT_WITH_THE_ADAPTER_IN_IT.say(kept.get())
                    : CheckText.NOTED_WITH_THE_ADAPTER_IN_THE.say(kept.get());
        return switch (subject.kind()) {
            case REAL -> CheckText.NOTHING_WAS_KEPT.say();
            case RECORDED -> CheckText.NOTHING_WAS_KEPT_WHOSE_PROBE.say();
            case PRACTICE -> CheckText.NOTHING_WAS_KEPT_THIS_WAS.say();
        };
    }

    private static CheckEar open(CheckSubject subject) throws Refusal {
        try {
            return CheckEar.open(subject);
        } catch (LinkException e) {
            throw new Refusal(Exit.NO_PROBE, CheckText.NOTHING_WAS_CHECKED.say(e.getMessage(), e.whatToDo()));
        }
    }
}
