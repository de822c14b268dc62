package fifthform.simulator.bench;

import fifthform.curves.input.Input;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.ProbeId;
import fifthform.probe.Signal;
import fifthform.probe.Signal.Measured;
import fifthform.probe.Signal.OpenCircuit;
import fifthform.probe.Signal.OutOfRange;
import fifthform.probe.Signal.Shorted;
import fifthform.probe.Signal.Unreadable;
import java.time.Instant;

/** What a signal of one probe means as an input, judged as the reader of a real port judges it. */
record Judge(ProbeId probe, Instant at) implements Signal.Cases<Input> {
    private static final double LEAST_SIGMA_KELVIN = 0.001;

    /** A rounded number may lie anywhere within its step: step/√12 (rectangular distribution, JCGM 100:2008 4.3.7). */
    @Override
    public Input measured(Measured signal) {
        double sigmaKelvin = Math.max(LEAST_SIGMA_KELVIN, signal.resolutionKelvin() / Math.sqrt(12));
        return new Sample(
                at, probe, signal.tipCelsius(), sigmaKelvin, signal.junctionCelsius(), signal.emfMillivolts());
    }

    @Override
    public Input openCircuit(OpenCircuit signal) {
        return fault(Cause.OPEN_CIRCUIT);
    }

    @Override
    public Input shorted(Shorted signal) {
        return fault(Cause.SHORT_CIRCUIT);
    }

    @Override
    public Input outOfRange(OutOfRange signal) {
        return fault(Cause.OUT_OF_RANGE);
    }

    @Override
    public Input unreadable(Unreadable signal) {
        return fault(Cause.GARBLED);
    }

    Input fault(Cause cause) {
        return new ProbeFault(at, probe, cause);
    }
}
