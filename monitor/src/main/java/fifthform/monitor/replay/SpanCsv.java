package fifthform.monitor.replay;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeId;
import fifthform.monitor.json.Decimal;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.ReplayText;
import java.io.IOException;
import java.io.Writer;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * The readings and happenings of a span as a table for other programs: comma-separated as RFC 4180 has it, lines in the
 * order of time, units in the header. A cell that a spreadsheet would take for a formula begins with an apostrophe.
 */
final class SpanCsv {
    private final Recording recording;
    private final List<Happening> happenings;
    private final List<Note> notes;
    private final Units units;

    SpanCsv(Recording recording, List<Happening> happenings, List<Note> notes, Units units) {
        this.recording = recording;
        this.happenings = happenings;
        this.notes = notes;
        this.units = units;
    }

    /** Writes the span; the writer is left open. */
    void write(Span span, Writer to) throws IOException {
        // Not closed: that would close the writer, which belongs to the caller.
        CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(to);
        List<ProbeId> probes = List.copyOf(recording.readings().keySet());
        List<String> header = new ArrayList<>();
        header.add(ReplayText.CSV_TIME.say());
        header.add(ReplayText.CSV_ELAPSED.say());
        for (ProbeId probe : probes) header.add(ReplayText.CSV_PROBE.say(probe.name(), units.symbol()));
        header.add(ReplayText.CSV_ROW.say());
        header.add(ReplayText.CSV_WORDS.say());
        csv.writeRecord(safe(header));
        int[] next = new int[probes.size()];
        for (int p = 0; p < next.length; p++) next[p] = of(probes.get(p)).firstAt(span.from());
        List<Told> told = told(span);
        int said = 0;
        while (true) {
            int first = earliest(probes, next);
            long reading = first < 0 ? Long.MAX_VALUE : of(probes.get(first)).nanos(next[first]);
            long words = said < told.size() ? told.get(said).nanos() : Long.MAX_VALUE;
            if (Math.min(reading, words) > span.to()) break;
            if (words <= reading) {
                csv.writeRecord(line(
                        words,
                        probes.size(),
                        -1,
                        0,
                        told.get(said).row(),
                        told.get(said).words()));
                said++;
            } else {
                csv.writeRecord(line(
                        reading, probes.size(), first, of(probes.get(first)).celsius(next[first]), "", ""));
                next[first]++;
            }
        }
        csv.flush();
    }

    private record Told(long nanos, String row, String words) {}

    private List<Told> told(Span span) {
        List<Told> told = new ArrayList<>();
        if (recording.setup().origin() == Origin.SIMULATED)
            told.add(new Told(span.from(), ReplayText.CSV_BATCH.say(), ReplayText.CSV_SIMULATED.say()));
        for (Happening h : happenings)
            if (span.holds(h.nanos())) told.add(new Told(h.nanos(), row(h.row()), h.words()));
        for (Note note : notes)
            if (span.holds(note.nanos()))
                told.add(new Told(
                        note.nanos(),
                        ReplayText.CSV_NOTE.say(),
                        note.isMark() ? ReplayText.ACT_MARK.say() : note.text()));
        told.sort(Comparator.comparingLong(Told::nanos));
        return told;
    }

    private static String row(Happening.Row row) {
        return switch (row) {
            case DID -> ReplayText.ROW_DID.say();
            case TOLD -> ReplayText.ROW_TOLD.say();
            case ALARM -> ReplayText.ROW_ALARM.say();
        };
    }

    private Readings of(ProbeId probe) {
        Map<ProbeId, Readings> all = recording.readings();
        return all.get(probe);
    }

    private int earliest(List<ProbeId> probes, int[] next) {
        int first = -1;
        for (int p = 0; p < next.length; p++) {
            if (next[p] >= of(probes.get(p)).size()) continue;
            if (first < 0
                    || of(probes.get(p)).nanos(next[p]) < of(probes.get(first)).nanos(next[first])) first = p;
        }
        return first;
    }

    private List<String> line(long nanos, int probes, int probe, double celsius, String row, String words) {
        List<String> cells = new ArrayList<>();
        OffsetDateTime at = recording.at(nanos).atOffset(recording.header().zone());
        cells.add(DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at));
        cells.add(Units.format("%.3f", nanos / 1e9));
        // As many decimals as the wire has: rounding is for screens.
        for (int p = 0; p < probes; p++) cells.add(p == probe ? Decimal.of(units.shown(celsius), 4) : "");
        cells.add(row);
        cells.add(safe(words));
        return cells;
    }

    private static List<String> safe(List<String> cells) {
        return cells.stream().map(SpanCsv::safe).toList();
    }

    /** What a spreadsheet would reckon out instead of show. */
    static String safe(String cell) {
        return cell.isEmpty() || "=+-@\t\r".indexOf(cell.charAt(0)) < 0 ? cell : "'" + cell;
    }
}
