package fifthform.monitor.app;

import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.proofs.Cups;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.texts.ProofText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** Is this bowl in temper? */
@Command(
        name = "prove",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        subcommands = {ProveListCommand.class, ProveMarkCommand.class})
final class ProveCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Mixin
    private CheckSensorOptions sensors;

    @Option(names = "--probe", paramLabel = "PORT")
    private String probe;

    @Mixin
    private CheckLineOptions line;

    @Option(names = "--speed", paramLabel = "N|max")
    private String speed;

    @Option(names = "--chocolate", paramLabel = "ID")
    private String chocolate;

    @Option(names = "--cup", paramLabel = "NAME")
    private String cup;

    @Option(names = "--grams", paramLabel = "GRAMS")
    private Double grams;

    @Option(names = "--bath", paramLabel = "CELSIUS")
    private Double bath;

    @Option(names = "--session", paramLabel = "NAME")
    private String session;

    @Option(names = "--calibrate")
    private boolean calibrate;

    @Option(names = "--curve", paramLabel = "FILE")
    private Path curve;

    @Option(names = "--smear")
    private boolean smear;

    @Option(names = "--minutes", paramLabel = "N")
    private Double minutes;

    @Option(names = "--look", paramLabel = "LOOK")
    private String look;

    @Option(names = "--room", paramLabel = "CELSIUS")
    private Double room;

    @Option(names = "--json", scope = ScopeType.INHERIT)
    private boolean json;

    @Override
    public Integer call() throws Refusal, InterruptedException {
        long ways = Stream.of(calibrate, curve != null, smear).filter(w -> w).count();
        if (ways > 1) throw new Refusal(Exit.NOT_UNDERSTOOD, ProofText.CALIBRATE_CURVE_AND_SMEAR_ARE.say());
        ProofOfSmear.Said film = new ProofOfSmear.Said(
                Optional.ofNullable(minutes), Optional.ofNullable(look), Optional.ofNullable(room));
        if (!smear && film.option().isPresent())
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    ProofText.BELONGS_TO_THE_SMEAR_TEST.say(film.option().get()));
        ProofTask task = task();
        try {
            if (curve != null) return new ProofOfFile(task, curve).judge().code();
            return smear
                    ? new ProofOfSmear(task, film).run().code()
                    : new ProofCooling(task, known -> subject(task, known), calibrate)
                            .run()
                            .code();
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, ProofText.THE_PROOF_CANNOT_BE_WRITTEN.say(e.getMessage()));
        }
    }

    private ProofTask task() throws Refusal {
        Settings settings = common.settings();
        Cups.Loaded known = cups().load();
        known.problems().forEach(common.err()::println);
        return new ProofTask(
                common.folders(),
                CheckDesk.here(json ? common.err() : common.out(), common.units(settings)),
                cups(),
                known,
                settings,
                new ProofPlace.Said(
                        Optional.ofNullable(chocolate),
                        Optional.ofNullable(cup),
                        Optional.ofNullable(grams),
                        Optional.ofNullable(session)),
                Within.optional(bath, -5, 30, "--bath", "°C"),
                json,
                common.out(),
                common.err());
    }

    private ProofSubject subject(ProofTask task, Adapters.Loaded known) throws Refusal, InterruptedException {
        String name =
                probe != null ? probe : ProbeChooser.bowl(known, task.choices().lastProbe());
        WatchSpeed wish = speed == null ? WatchSpeed.USUAL : WatchSpeed.parse(speed);
        if (ProbeChooser.isPractice(name))
            return ProofSubject.practice(name, task.desk().manner(), wish);
        return ProofSubject.of(line.subjects(known, sensors, task.desk().manner(), common.err())
                .first(name));
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
}
