package fifthform.monitor.store;

import fifthform.curves.engine.Event;
import fifthform.curves.input.Input;
import fifthform.curves.input.Recorded;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The demo batch as a journal, put together without a thread: the same bytes each time. */
final class JournalBytes {
    private static final int LINES_A_CHECK = 8;

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final CheckedLines lines = new CheckedLines();

    static byte[] demo() {
        JournalBytes journal = new JournalBytes();
        journal.line(Demo.HEADER.line());
        InputCodec inputs = new InputCodec(Demo.START);
        EventCodec events = new EventCodec(Demo.START);
        long sequence = 0;
        for (Input input : Demo.INPUTS) journal.line(inputs.write(new Recorded(++sequence, input)));
        for (Event event : Demo.EVENTS) journal.line(events.write(sequence, event));
        journal.line("{\"k\":\"n\",\"t\":15,\"about\":\"clock\",\"text\":\"The clock was set back.\"}");
        journal.line("{\"k\":\"future\",\"t\":15,\"what\":[1,{\"a\":null}]}");
        journal.line("{\"k\":\"z\",\"wall\":\"2026-02-03T14:16:00Z\",\"summary\":{\"verdict\":\"demo\"}}");
        journal.check();
        return journal.bytes.toByteArray();
    }

    /** The whole lines within the first {@code length} bytes. */
    static List<String> linesWithin(byte[] bytes, int length) {
        String text = new String(bytes, 0, length, StandardCharsets.UTF_8);
        return text.substring(0, text.lastIndexOf('\n') + 1).lines().toList();
    }

    private void line(String text) {
        bytes.writeBytes(lines.line(text));
        if (lines.unchecked() == LINES_A_CHECK) check();
    }

    private void check() {
        bytes.writeBytes(lines.check(Demo.START.plusSeconds(bytes.size())));
    }
}
