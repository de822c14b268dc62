package fifthform.monitor.app;

import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.texts.BarsText;
import fifthform.simulator.device.QuietPlace;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What the maker says where one probe lies beside bars, for hours or for weeks. */
final class QuietOptions {
    @Mixin
    private CheckSensorOptions sensors;

    @Mixin
    private CheckLineOptions line;

    @Option(names = "--probe", paramLabel = "PORT")
    private String probe;

    @Option(names = "--quiet")
    private boolean quiet;

    @Option(names = "--json")
    private boolean json;

    /** Whether any probe was named. */
    boolean hasProbe() {
        return probe != null;
    }

    /** Whether it may sound. */
    boolean mayBeHeard() {
        return !quiet;
    }

    /** Whether the answers are for scripts. */
    boolean wantsJson() {
        return json;
    }

    boolean isPractice() {
        return ProbeChooser.isPractice(probe);
    }

    /**
     * An invented place, which {@code say} is told.
     *
     * @param places those that fit the command, the usual one first
     * @param speed so many times as fast as life; as fast as it can where empty
     */
    CheckSubject practice(List<QuietPlace.Place> places, Optional<Double> speed, Consumer<String> say) throws Refusal {
        CheckSubject practice = QuietSubjects.practice(probe, places, speed);
        say.accept(BarsText.PRACTICE_AN_INVENTED_PLACE_AND.say());
        return practice;
    }

    /** The probe that was named, corrected as its last check says. */
    CheckSubject real(Folders folders, CheckDesk.Manner manner, PrintWriter err) throws Refusal, InterruptedException {
        Adapters.Loaded loaded = new Adapters(folders.probes()).load();
        loaded.problems().forEach(err::println);
        return line.subjects(loaded, sensors, manner, err).first(probe);
    }
}
