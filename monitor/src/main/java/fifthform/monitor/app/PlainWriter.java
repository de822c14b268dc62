package fifthform.monitor.app;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;

/**
 * Messages quote what files and people wrote; a control character in it must not command the terminal. Each is written as
 * a question mark, line ends and tabs excepted.
 */
final class PlainWriter extends FilterWriter {
    PlainWriter(Writer out) {
        super(out);
    }

    @Override
    public void write(int c) throws IOException {
        out.write(plain((char) c));
    }

    @Override
    public void write(char[] text, int from, int count) throws IOException {
        char[] plain = new char[count];
        for (int i = 0; i < count; i++) plain[i] = plain(text[from + i]);
        out.write(plain, 0, count);
    }

    @Override
    public void write(String text, int from, int count) throws IOException {
        write(text.toCharArray(), from, count);
    }

    private static char plain(char c) {
        return Character.isISOControl(c) && c != '\n' && c != '\r' && c != '\t' ? '?' : c;
    }
}
