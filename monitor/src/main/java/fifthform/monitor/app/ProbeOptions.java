package fifthform.monitor.app;

import fifthform.monitor.settings.Settings;
import fifthform.monitor.store.Session;
import java.time.Duration;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Which probe is watched, how it talks and how fast time goes. */
final class ProbeOptions {
    private static final double LONGEST_INTERVAL_SECONDS = 3600;

    @Option(names = "--probe", paramLabel = "PORT", description = "port, practice, practice:SCENARIO or file:PATH")
    private String probe;

    @Option(names = "--talk", paramLabel = "ID", description = "how the adapter talks; otherwise found out")
    private String talk;

    @Option(names = "--bath-probe", paramLabel = "PORT", description = "port of a probe in the bath")
    private String bathProbe;

    @Option(names = "--room-probe", paramLabel = "PORT", description = "port of a probe for the room")
    private String roomProbe;

    @Option(
            names = "--speed",
            paramLabel = "N|max",
            description = {
                "practice and file only: 1 to 60 times life;",
                "max does not slow down where there is something to read"
            })
    private String speed;

    @Option(
            names = "--interval",
            paramLabel = "SECONDS",
            defaultValue = "1",
            description = "between lines of a text file; default 1")
    private double intervalSeconds;

    /** What these options name; without {@code --probe} the probe of the session that is gone on with, or the last one. */
    ProbeChoice choose(Settings settings, Optional<Session> cutOff) throws Refusal {
        Optional<String> wanted = Optional.ofNullable(probe)
                .or(() -> cutOff.map(s -> s.header().setup().bowlProbe().place()));
        WatchSpeed wish = speed == null ? WatchSpeed.USUAL : WatchSpeed.parse(speed);
        return new ProbeChooser(
                        Optional.ofNullable(talk),
                        wish,
                        interval(),
                        Optional.ofNullable(bathProbe),
                        Optional.ofNullable(roomProbe))
                .choose(wanted, settings.lastProbe());
    }

    private Duration interval() throws Refusal {
        if (intervalSeconds >= 0.001 && intervalSeconds <= LONGEST_INTERVAL_SECONDS)
            return Duration.ofNanos(Math.round(intervalSeconds * 1e9));
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                "--interval was " + intervalSeconds + ". Nothing was done. Give seconds from 0.001 up to "
                        + Math.round(LONGEST_INTERVAL_SECONDS) + ".");
    }
}
