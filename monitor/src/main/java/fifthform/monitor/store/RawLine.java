package fifthform.monitor.store;

import fifthform.monitor.texts.FileText;
import java.nio.charset.StandardCharsets;

/** A line as its bytes stand in the file, with the line break where there is one. */
final class RawLine {
    private final int number;
    private final byte[] bytes;

    RawLine(int number, byte[] bytes) {
        this.number = number;
        this.bytes = bytes;
    }

    /** 1 for the file's first line. */
    int number() {
        return number;
    }

    /** The bytes themselves, not a copy. */
    byte[] bytes() {
        return bytes;
    }

    boolean isBroken() {
        return bytes[bytes.length - 1] != '\n';
    }

    /** The text without its line break. */
    String text() {
        return new String(bytes, 0, bytes.length - (isBroken() ? 0 : 1), StandardCharsets.UTF_8);
    }

    @Override
    public String toString() {
        return FileText.LINE_RAW_LINE.say(number);
    }
}
