package fifthform.probe;

import java.util.function.Consumer;

/**
 * One way in which an adapter talks. To add a protocol write one class, name it in
 * {@code META-INF/services/fifthform.probe.ProbeProtocol}, and put a recorded tape and its expected list beside the tests.
 */
public interface ProbeProtocol {
    /** Stable name in settings and recordings: lower-case letters, digits, hyphens. */
    String id();

    /** One line for people: what such an adapter sends. */
    String description();

    /** Usual settings of the serial line. */
    LineSettings line();

    /** A decoder for one open link. */
    Decoder newDecoder();

    /** Lives as long as one open link and is used by that link's reader thread only. */
    interface Decoder {
        /**
         * Takes bytes as they arrived; where one chunk ends carries no meaning. Never throws on bad bytes; every byte
         * ends up in exactly one signal, white space between signals excepted.
         */
        void feed(byte[] bytes, Consumer<? super Signal> out);
    }
}
