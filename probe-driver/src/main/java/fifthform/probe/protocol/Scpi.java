package fifthform.probe.protocol;

import fifthform.curves.check.Parsed;
import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import java.util.List;
import java.util.Map;

/**
 * A measuring instrument that answers questions in the language of the SCPI consortium (SCPI-1999 over IEEE 488.2; from
 * memory): who it is, its unit, a temperature. Only questions are sent.
 */
public final class Scpi implements ProbeProtocol {
    static final String ID = "scpi";

    private final ScpiPlan plan;

    /** Tries the usual questions, with the unit that the instrument tells. */
    public Scpi() {
        this(ScpiPlan.UNSET);
    }

    Scpi(ScpiPlan plan) {
        this.plan = plan;
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String description() {
        return "SCPI: a bench or hand-held instrument that answers *IDN? and MEAS:TEMP? or READ?";
    }

    /** Common practice, no source. */
    @Override
    public List<LineSettings> lines() {
        return List.of(
                new LineSettings(9600), new LineSettings(115_200), new LineSettings(19_200), new LineSettings(57_600));
    }

    @Override
    public Manner manner() {
        return Manner.ANSWERS;
    }

    /**
     * Settings: {@code query} (MEAS:TEMP?, READ?, FETC?), {@code channels=101/102}, {@code in}, {@code line-end},
     * {@code every}, {@code timeout}.
     */
    @Override
    public Parsed<ProbeProtocol> with(Map<String, String> settings) {
        return new ScpiSettings(settings).read();
    }

    @Override
    public Decoder newDecoder() {
        return new ScpiDecoder(plan);
    }
}
