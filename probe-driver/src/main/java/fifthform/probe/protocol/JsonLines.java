package fifthform.probe.protocol;

import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import java.util.List;

/** One JSON object a line and nothing else: any other line is unreadable. Keys mean what labels mean in {@link TextLines}. */
public final class JsonLines implements ProbeProtocol {
    @Override
    public String id() {
        return "json-lines";
    }

    @Override
    public String description() {
        return "one JSON object a line, for example {\"tc\":31.25,\"cj\":24.5}";
    }

    /** As {@link TextLines}. */
    @Override
    public List<LineSettings> lines() {
        return new TextLines().lines();
    }

    @Override
    public Decoder newDecoder() {
        return new LineDecoder(Line::ofJson, LineDecoder.Ways.QUICK_OR_FULL);
    }
}
