package fifthform.monitor.app;

import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.texts.CheckText;
import fifthform.probe.find.Asking;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.OptionalInt;
import picocli.CommandLine.Option;

/** What the maker says of an adapter's line, where one probe is looked at by itself. */
final class CheckLineOptions {
    @Option(names = "--talk", paramLabel = "ID")
    private String talk;

    @Option(names = "--ask")
    private boolean ask;

    @Option(names = "--channel", paramLabel = "N")
    private Integer channel;

    /** The probes that can be looked at so. */
    CheckSubjects subjects(Adapters.Loaded loaded, CheckSensorOptions sensors, CheckDesk.Manner manner, PrintWriter err)
            throws Refusal {
        AdapterFinder finder =
                new AdapterFinder(new KnownProbes(loaded), new AdapterEar(ask ? Asking.ALLOWED : Asking.NEVER), err);
        return new CheckSubjects(loaded, Optional.ofNullable(talk), channel(), sensors, manner, finder);
    }

    private OptionalInt channel() throws Refusal {
        if (channel == null) return OptionalInt.empty();
        if (channel >= 0) return OptionalInt.of(channel);
        throw new Refusal(Exit.NOT_UNDERSTOOD, CheckText.CHANNEL_WAS_NOTHING_WAS_DONE.say(channel));
    }
}
