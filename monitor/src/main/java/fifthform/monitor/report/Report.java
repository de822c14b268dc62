package fifthform.monitor.report;

import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeSetup;
import fifthform.monitor.looks.KeptLook;
import fifthform.monitor.looks.LookFile;
import fifthform.monitor.looks.LookWords;
import fifthform.monitor.model.Spans;
import fifthform.monitor.replay.Clock;
import fifthform.monitor.replay.ListRow;
import fifthform.monitor.replay.Recording;
import fifthform.monitor.replay.ReplayChart;
import fifthform.monitor.replay.ReplayChart.CrystalStretch;
import fifthform.monitor.replay.ReplayChart.Stretch;
import fifthform.monitor.replay.ReplayDesk;
import fifthform.monitor.replay.ReplayPicture;
import fifthform.monitor.report.ReportSheet.Block;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.Dates;
import fifthform.monitor.texts.ReportText;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Makes the report of a batch from what the Replay screen knows of it and from what lies beside the session. */
public final class Report {
    private static final double NANOS = 1e9;

    /** As fine as a printer draws the curve. */
    private static final int COLUMNS = 1600;

    private final ReplayDesk desk;
    private final Recording recording;
    private final Units units;
    private final ZoneId zone;

    /** @param desk what is computed of it so far is what the report has */
    public Report(ReplayDesk desk) {
        this.desk = Objects.requireNonNull(desk, "desk");
        this.recording = desk.recording();
        this.units = desk.units();
        this.zone = recording.header().zone();
    }

    /** The sheet as of now. */
    public ReportSheet sheet() {
        Instant now = desk.now();
        ReplayPicture picture = desk.picture(COLUMNS);
        List<Block> blocks = new ArrayList<>();
        // The first finding is the headline; what it rests on still has to be said.
        List<String> found = new ArrayList<>(rows(picture.findings()));
        ListRow first = picture.findings().get(0);
        if (first.detail().isEmpty()) found.remove(0);
        else found.set(0, at(first) + first.detail());
        add(blocks, ReportText.FOUND, found);
        add(blocks, ReportText.PHASES, phases(picture.chart()));
        add(blocks, ReportText.CRYSTALS, crystals(picture.chart()));
        add(blocks, ReportText.PROVED, new ProofsOf(recording, zone).lines());
        add(blocks, ReportText.LOOKED, looks());
        add(blocks, ReportText.PROBE, List.of(probe(recording.setup().bowlProbe())));
        add(blocks, ReportText.ALARMS, rows(picture.alarms()));
        add(blocks, ReportText.NOTES, rows(picture.notes()));
        return new ReportSheet(
                ReportText.TITLE.say(
                        Dates.day(recording.start().atZone(zone)),
                        recording.header().session()),
                picture.subject(),
                picture.marks(),
                picture.headline(),
                picture.headlineAside(),
                picture.chart().still(),
                blocks,
                ReportText.FOOT.say(Dates.dayAndTime(now.atZone(zone))),
                now);
    }

    private static void add(List<Block> blocks, ReportText heading, List<String> lines) {
        if (!lines.isEmpty()) blocks.add(new Block(heading.say(), lines));
    }

    private static List<String> rows(List<ListRow> rows) {
        return rows.stream()
                .map(row -> at(row)
                        + row.words()
                        + (row.detail().isEmpty() ? "" : (row.words().endsWith(".") ? " " : ": ") + row.detail()))
                .toList();
    }

    private static String at(ListRow row) {
        return row.time().isEmpty() ? "" : row.time() + "  ";
    }

    private static List<String> phases(ReplayChart chart) {
        return chart.phases().stream()
                .filter(phase -> phase.toSeconds() > phase.fromSeconds())
                .map(Report::phase)
                .toList();
    }

    private static String phase(Stretch phase) {
        return ReportText.PHASE.say(
                phase.words(),
                elapsed(phase.fromSeconds()),
                elapsed(phase.toSeconds()),
                Spans.words(Duration.ofSeconds(Math.round(phase.toSeconds() - phase.fromSeconds()))));
    }

    private static List<String> crystals(ReplayChart chart) {
        List<String> lines = new ArrayList<>();
        if (!chart.crystals().isEmpty()) {
            CrystalStretch last = chart.crystals().get(chart.crystals().size() - 1);
            lines.add(ReportText.CRYSTALS_LAST.say(last.words(), elapsed(last.fromSeconds())));
        }
        chart.losses().forEach(loss -> lines.add(ReportText.AT.say(elapsed(loss.at()), loss.words())));
        return lines;
    }

    private static String elapsed(double seconds) {
        return Clock.elapsed(Math.round(seconds * NANOS));
    }

    private List<String> looks() {
        List<KeptLook> kept = LookFile.beside(
                        recording.file(), recording.header().session())
                .load()
                .looks();
        return kept.stream()
                .map(look -> ReportText.LOOK.say(
                        LookWords.age(look.look().ageHours()),
                        LookWords.seen(look.look())
                                + look.note().map(n -> "; " + n).orElse("")))
                .toList();
    }

    private String probe(ProbeSetup probe) {
        Correction correction = probe.correction();
        if (recording.setup().origin() == Origin.SIMULATED) return ReportText.PROBE_SIMULATED.say();
        if (!correction.isChecked()) return ReportText.PROBE_UNCHECKED.say();
        double middle = recording.setup().recipe().work().range().midCelsius();
        return ReportText.PROBE_CHECKED.say(
                correction.checkedAt().map(at -> Dates.day(at.atZone(zone))).orElseGet(ReportText.DAY_UNKNOWN::say),
                units.withUnit(middle),
                signed(correction.apply(middle) - middle),
                units.difference(2 * correction.sigmaKelvin()));
    }

    private String signed(double kelvin) {
        return (kelvin < 0 ? "−" : "+") + units.difference(Math.abs(kelvin));
    }
}
