package fifthform.monitor.app;

import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.store.Session;
import fifthform.monitor.texts.ProbeText;
import fifthform.probe.find.Asking;
import java.io.PrintWriter;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Which probes are watched, how they talk and how fast time goes. */
final class ProbeOptions {
    private static final double LONGEST_INTERVAL_SECONDS = 3600;

    @Option(names = "--probe", paramLabel = "PORT")
    private String probe;

    @Option(names = "--talk", paramLabel = "ID")
    private String talk;

    @Option(names = "--ask")
    private boolean ask;

    @Option(names = "--bath-probe", paramLabel = "PORT")
    private String bathProbe;

    @Option(names = "--bath-talk", paramLabel = "ID")
    private String bathTalk;

    @Option(names = "--room-probe", paramLabel = "PORT")
    private String roomProbe;

    @Option(names = "--room-talk", paramLabel = "ID")
    private String roomTalk;

    @Option(names = "--speed", paramLabel = "N|max")
    private String speed;

    @Option(names = "--interval", paramLabel = "SECONDS", defaultValue = "1")
    private double intervalSeconds;

    /**
     * What these options name; without {@code --probe} the probes of the session that is gone on with, else those that are
     * remembered, else the last one.
     */
    ProbeChoice choose(Settings settings, Adapters.Loaded loaded, Optional<Session> cutOff, PrintWriter err)
            throws Refusal, InterruptedException {
        Map<Role, String> ports = said(probe, bathProbe, roomProbe);
        Map<Role, String> talks = said(talk, bathTalk, roomTalk);
        // The bath's and the room's probes go on as well: the session's header names them.
        if (cutOff.isPresent()) {
            for (ProbeSetup before : cutOff.get().header().setup().probes()) {
                boolean other = ports.putIfAbsent(before.role(), before.place()) != null;
                if (!other) talks.putIfAbsent(before.role(), before.talk());
            }
        }
        ProbeChooser.Wishes wishes = new ProbeChooser.Wishes(ports, talks, speed(), interval());
        AdapterEar ear = new AdapterEar(ask ? Asking.ALLOWED : Asking.NEVER);
        return new ProbeChooser(wishes, loaded, ear, err).choose(settings.lastProbe());
    }

    /** Whether the bowl's probe was left to be found or chosen. */
    boolean isUntold() {
        return probe == null && talk == null;
    }

    /** Takes what was chosen on the start page; empty where it is to be found. */
    void take(Optional<String> bowl) {
        probe = bowl.orElse(null);
    }

    /** What {@code --speed} says; the usual where it was not said. */
    WatchSpeed speed() throws Refusal {
        return speed == null ? WatchSpeed.USUAL : WatchSpeed.parse(speed);
    }

    private static Map<Role, String> said(String bowl, String bath, String room) {
        Map<Role, String> said = new EnumMap<>(Role.class);
        if (bowl != null) said.put(Role.BOWL, bowl);
        if (bath != null) said.put(Role.BATH, bath);
        if (room != null) said.put(Role.ROOM, room);
        return said;
    }

    private Duration interval() throws Refusal {
        if (intervalSeconds >= 0.001 && intervalSeconds <= LONGEST_INTERVAL_SECONDS)
            return Duration.ofNanos(Math.round(intervalSeconds * 1e9));
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                ProbeText.INTERVAL_WAS_NOTHING_WAS_DONE.say(intervalSeconds, Math.round(LONGEST_INTERVAL_SECONDS)));
    }
}
