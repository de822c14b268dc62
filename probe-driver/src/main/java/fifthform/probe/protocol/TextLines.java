package fifthform.probe.protocol;

import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import java.util.List;

/**
 * Lines of text, as hobby micro-controllers print them: a bare number, labelled numbers, columns with or without a time
 * stamp, or one JSON object a line; Celsius unless a unit says otherwise. Lines end with CR, LF or both.
 *
 * <p>Of two evils a reading lost is the smaller one: a line that can be read in two ways is unreadable. One ambiguity is
 * left: {@code 31,25} is a decimal comma and never two columns of whole numbers.
 */
public final class TextLines implements ProbeProtocol {
    @Override
    public String id() {
        return "text-lines";
    }

    @Override
    public String description() {
        return "one reading a line as text, for example \"T: 31.25 C\" or {\"tc\":31.25,\"cj\":24.5}";
    }

    /** What examples for hobby boards begin with, the most usual first (common practice, no source). */
    @Override
    public List<LineSettings> lines() {
        return List.of(new LineSettings(9600), new LineSettings(115_200));
    }

    @Override
    public Decoder newDecoder() {
        return new LineDecoder();
    }
}
