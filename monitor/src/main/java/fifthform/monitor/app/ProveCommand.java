package fifthform.monitor.app;

import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.proofs.Cups;
import fifthform.monitor.settings.SettingsFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** Is this bowl in temper? */
@Command(
        name = "prove",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        subcommands = {ProveListCommand.class, ProveMarkCommand.class},
        description = "Proves the temper on a sample: how it cools in ice water, or how a smear of it sets.",
        footer = {
            "",
            "Examples:",
            "  monitor/run prove --probe practice",
            "  monitor/run prove --probe practice:under --speed max",
            "  monitor/run prove --probe /dev/ttyUSB0 --cup foil --calibrate",
            "  monitor/run prove --probe /dev/ttyUSB0 --cup foil",
            "  monitor/run prove --curve sample.csv --cup foil --bath 0.2",
            "  monitor/run prove --smear --minutes 4 --look glossy --room 20",
            "  monitor/run prove mark last good"
        })
final class ProveCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Mixin
    private CheckSensorOptions sensors;

    @Option(
            names = "--probe",
            paramLabel = "PORT",
            description = "port, or port@channel; practice, practice:BOWL or file:PATH; otherwise the one used before")
    private String probe;

    @Mixin
    private CheckLineOptions line;

    @Option(names = "--speed", paramLabel = "N|max", description = "practice only: 1 to 60 times life; otherwise 10")
    private String speed;

    @Option(
            names = "--chocolate",
            paramLabel = "ID",
            description = "recipe's id or file; otherwise that of the running session, else the last")
    private String chocolate;

    @Option(names = "--cup", paramLabel = "NAME", description = "your name for the cup; otherwise cup")
    private String cup;

    @Option(names = "--grams", paramLabel = "GRAMS", description = "how much a sample is, 4 to 30 g; otherwise 12")
    private Double grams;

    @Option(
            names = "--bath",
            paramLabel = "CELSIUS",
            description = "what the probe read in the ice water; then it is not measured first")
    private Double bath;

    @Option(
            names = "--session",
            paramLabel = "NAME",
            description = "the session it belongs to; last, or none; otherwise one of the last two hours")
    private String session;

    @Option(names = "--calibrate", description = "cool melted chocolate, to learn how this cup cools; do it twice")
    private boolean calibrate;

    @Option(names = "--curve", paramLabel = "FILE", description = "judge a recorded curve: a table or a .proof.jsonl")
    private Path curve;

    @Option(names = "--smear", description = "time a thin film instead: no probe is needed")
    private boolean smear;

    @Option(names = "--minutes", paramLabel = "N", description = "smear: it was timed before, so many minutes")
    private Double minutes;

    @Option(names = "--look", paramLabel = "LOOK", description = "smear: glossy, streaks, matt or wet-middle")
    private String look;

    @Option(names = "--room", paramLabel = "CELSIUS", description = "smear: temperature of the room")
    private Double room;

    @Option(
            names = "--json",
            scope = ScopeType.INHERIT,
            description = "answer as JSON lines; what to do is said on standard error")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal, InterruptedException {
        long ways = Stream.of(calibrate, curve != null, smear).filter(w -> w).count();
        if (ways > 1)
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    "--calibrate, --curve and --smear are three things. Nothing was done. Give one of them.");
        ProofOfSmear.Said film = new ProofOfSmear.Said(
                Optional.ofNullable(minutes), Optional.ofNullable(look), Optional.ofNullable(room));
        if (!smear && film.option().isPresent())
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    film.option().get()
                            + " belongs to the smear test. Nothing was done. Say --smear with it, or leave it"
                            + " out.");
        ProofTask task = task();
        try {
            if (curve != null) return new ProofOfFile(task, curve).judge().code();
            return smear
                    ? new ProofOfSmear(task, film).run().code()
                    : new ProofCooling(task, known -> subject(task, known), calibrate)
                            .run()
                            .code();
        } catch (IOException e) {
            throw new Refusal(
                    Exit.FILE,
                    "The proof cannot be written (" + e.getMessage()
                            + "). What was read before is kept. Make room, or name another folder with --data, and repeat.");
        }
    }

    private ProofTask task() throws Refusal {
        SettingsFile.Loaded settings = new SettingsFile(common.folders().settingsFile()).load();
        settings.problems().forEach(err()::println);
        Cups.Loaded known = cups().load();
        known.problems().forEach(err()::println);
        PrintWriter to = json ? err() : out();
        var units = common.units().orElse(settings.settings().units());
        return new ProofTask(
                common.folders(),
                Screens.hasTerminal() ? CheckDesk.terminal(to, System.in, units) : CheckDesk.lines(to, units),
                cups(),
                known,
                settings.settings(),
                new ProofPlace.Said(
                        Optional.ofNullable(chocolate),
                        Optional.ofNullable(cup),
                        Optional.ofNullable(grams),
                        Optional.ofNullable(session)),
                ProofTask.within(Optional.ofNullable(bath), -5, 30, "--bath", "°C"),
                json,
                out(),
                err());
    }

    private ProofSubject subject(ProofTask task, Adapters.Loaded known) throws Refusal, InterruptedException {
        String name =
                probe != null ? probe : ProbeChooser.bowl(known, task.choices().lastProbe());
        WatchSpeed wish = speed == null ? WatchSpeed.USUAL : WatchSpeed.parse(speed);
        if (ProbeChooser.isPractice(name))
            return ProofSubject.practice(name, task.desk().manner(), wish);
        return ProofSubject.of(
                line.subjects(known, sensors, task.desk().manner(), err()).first(name));
    }

    /** Where cups are kept. */
    Cups cups() {
        return new Cups(common.folders().cups());
    }

    /** Where recordings are kept. */
    Path recordings() {
        return common.folders().sessions();
    }

    boolean wantsJson() {
        return json;
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
