package fifthform.probe.protocol;

import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import java.util.List;

/**
 * Lines of text, as hobby micro-controllers print them: a bare number, labelled numbers, columns with or without a time
 * stamp or a header, or one JSON object a line; Celsius unless a unit says otherwise. Lines end with CR, LF or both.
 *
 * <p>Numbered labels ({@code T1}) are channels of that number, and so are names ({@code bowl: 31.2 bath: 45.0}) in the
 * order in which they appear; the chocolate's own names come first, the room's last.
 *
 * <p>JSON is read here as well, for adapters that print a line of text now and then; {@link JsonLines} reads nothing else.
 * Both give the same readings for the same objects, so whoever has to choose takes the narrower one.
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
        return new LineDecoder(Line::of, LineDecoder.Ways.QUICK_OR_FULL);
    }
}
