package fifthform.monitor.app;

import fifthform.curves.input.Input;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.Holding;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeSetup;
import fifthform.monitor.intake.SessionClock;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/** What a session reads: a real port, recorded bytes, or a simulated bowl. */
interface ProbeChoice {
    Origin origin();

    List<ProbeSetup> probes();

    /** The bowl, where the choice knows it better than the command line. */
    default Optional<Bowl> bowl() {
        return Optional.empty();
    }

    /** Temperature of the kitchen, °C, where known. */
    default OptionalDouble roomCelsius() {
        return OptionalDouble.empty();
    }

    /** Planned rewarming bath, °C, where known. */
    default OptionalDouble bathCelsius() {
        return OptionalDouble.empty();
    }

    /** How the working range is to be reached, where nothing else was asked for. */
    default Approach approach() {
        return Approach.TOUCHES_WHERE_UNSURE;
    }

    /** What the batch begins with, where nothing else was asked for. */
    default Beginning beginning() {
        return Beginning.WHOLE;
    }

    /** The hold that is planned, where nothing else was asked for. */
    default Optional<Holding> holding() {
        return Optional.empty();
    }

    /** The recipe that goes with it, where nothing else was asked for. */
    default Optional<String> chocolate() {
        return Optional.empty();
    }

    /** The standing line of its sessions. */
    default String notice() {
        return Notices.of(origin());
    }

    /** How many times faster than life it runs unless somebody says otherwise. */
    default double usualSpeed() {
        return 1;
    }

    /**
     * Wires it to a clock; called once.
     *
     * @param hands takes what a simulated maker does by key, as the real one's keys are taken
     */
    Wiring wire(SessionClock clock, Consumer<Input> hands) throws Refusal;
}
