package fifthform.probe.protocol;

import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import java.util.List;

/**
 * Files of the Linux kernel's IIO and hwmon classes, one round of contents a line, as {@code name=value} pairs:
 * {@code name=max31855 in_temp_raw=126 in_temp_scale=250}, {@code name=demo temp1_input=31250 temp1_label=bowl}. The bytes
 * come from a directory and from no serial line, so the line settings mean nothing.
 */
public final class KernelFileLines implements ProbeProtocol {
    @Override
    public String id() {
        return "kernel-files";
    }

    @Override
    public String description() {
        return "files of the Linux kernel's IIO and hwmon classes, for example temp1_input=31250";
    }

    @Override
    public List<LineSettings> lines() {
        return List.of(new LineSettings(9600));
    }

    @Override
    public Decoder newDecoder() {
        return new KernelFileDecoder();
    }
}
