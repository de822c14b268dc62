package fifthform.monitor.app;

import fifthform.curves.input.Input;
import fifthform.monitor.intake.SessionClock;
import fifthform.monitor.practice.PracticePace;
import fifthform.simulator.device.RunningKitchen;
import fifthform.simulator.scenario.Scenario;
import java.util.function.Consumer;

/** A simulated bowl with a simulated maker, through real bytes. */
final class PracticeProbe extends KitchenProbe {
    /** Practice of this scenario at {@code speed} times the speed of life. */
    PracticeProbe(Scenario scenario, double speed, PracticePace.AtCues atCues) {
        super(scenario, speed, atCues);
    }

    @Override
    public Wiring wire(SessionClock clock, Consumer<Input> hands) throws Refusal {
        RunningKitchen kitchen = scenario().start(clock.instant());
        return wired(kitchen, clock, (snapshot, events) -> {
            events.forEach(kitchen::told);
            // This maker tells by key what the hands do, as a maker well may; the curve would show it a little later.
            kitchen.takePresses().forEach(hands);
        });
    }
}
