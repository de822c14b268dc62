package fifthform.monitor.app;

import fifthform.curves.probecheck.Agreement;
import fifthform.curves.probecheck.CheckAgain;
import fifthform.curves.probecheck.Drift;
import fifthform.curves.probecheck.Finding;
import fifthform.curves.probecheck.Part;
import fifthform.curves.probecheck.Point;
import fifthform.curves.probecheck.Target;
import fifthform.curves.setup.Correction;
import fifthform.curves.thermocouple.Budget;
import fifthform.curves.thermocouple.Converter;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.texts.CheckText;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What a check came to, in words and for scripts. */
final class CheckReport {
    private final CheckSubject subject;
    private final CheckDesk desk;

    CheckReport(CheckSubject subject, CheckDesk desk) {
        this.subject = Objects.requireNonNull(subject, "subject");
        this.desk = Objects.requireNonNull(desk, "desk");
    }

    List<String> words(CheckOutcome outcome) {
        List<String> lines = new ArrayList<>(List.of("", CheckText.RESULT.say()));
        outcome.points().forEach(point -> lines.add("  " + words(point)));
        outcome.boiling()
                .ifPresent(b -> lines.add(CheckText.CORRECTED_THE_BOILING_POINT_IS.say(
                        signed(b.offKelvin()), desk.kelvin(b.allowedKelvin()))));
        outcome.finding().ifPresent(finding -> found(finding, outcome, lines));
        if (outcome.finding().isEmpty() && outcome.isPassed()) lines.add(CheckText.PLAUSIBLE_A_BOILING_POINT.say());
        outcome.failure().ifPresent(why -> lines.add(CheckText.NOT_PASSED.say(why)));
        return lines;
    }

    private String words(Point point) {
        String name = point.target().kind() == Target.Kind.ICE
                ? CheckText.ICE_POINT_CHECK_REPORT.say()
                : CheckText.BOILING_POINT_CHECK_REPORT.say();
        return CheckText.READS_WHERE_IS_TRUE_SO.say(
                name,
                desk.celsius(point.readCelsius()),
                desk.celsius(point.target().trueCelsius()),
                signed(point.errorKelvin()),
                desk.kelvin(2 * point.sigmaKelvin()));
    }

    private void found(Finding finding, CheckOutcome outcome, List<String> lines) {
        Correction c = finding.correction();
        String gain = c.gain() == 1 ? "" : CheckText.GAIN.say(String.format(Locale.ROOT, "%.4f", c.gain()));
        lines.add(CheckText.CORRECTION_AT.say(
                desk.celsius(Finding.WORK_CELSIUS),
                signed(c.apply(Finding.WORK_CELSIUS) - Finding.WORK_CELSIUS),
                gain));
        lines.add(CheckText.THERE_A_READING_WAS_GOOD.say(
                desk.kelvin(2 * sigmaBefore()), desk.kelvin(2 * c.sigmaKelvin())));
        lines.add(CheckText.WHAT_IS_LEFT_ONE_STANDARD.say(finding.parts().stream()
                .map(part -> CheckWords.of(part.source()) + " " + desk.kelvin(part.standardKelvin()))
                .collect(Collectors.joining("; "))));
        converterHint(finding).ifPresent(hint -> lines.add("  " + hint));
        outcome.drift()
                .ifPresent(d -> lines.add(CheckText.AGAINST_THE_LAST_CHECK_TIMES.say(
                        day(subject.before()),
                        signed(d.kelvin()),
                        String.format(Locale.ROOT, "%.1f", d.ratio()),
                        CheckWords.of(d))));
        lines.add(CheckText.CHECK_AGAIN_BY_AND_WHENEVER_IT.say(again(c, outcome.drift())));
    }

    /** The largest doubt of a cheap adapter goes away when its converter is known. */
    private Optional<String> converterHint(Finding finding) {
        boolean chip = finding.parts().stream().anyMatch(part -> part.source() == Part.Source.CHIP);
        if (!chip) return Optional.empty();
        return Optional.of(
                subject.sensor().converter() == Converter.UNKNOWN
                        ? CheckText.WHICH_CONVERTER_THE_ADAPTER.say()
                        : CheckText.ITS_CONVERTER_TAKES_THE_WIRES.say());
    }

    /** Doubt of one reading at working temperature until now: that of the last check, or of the sensor as it was sold. */
    private double sigmaBefore() {
        Correction before = subject.before();
        if (before.isChecked()) return before.sigmaKelvin();
        return new Budget(subject.sensor().parts(Finding.WORK_CELSIUS, OptionalDouble.empty())).standardKelvin();
    }

    static List<String> words(Agreement agreement, CheckDesk desk) {
        return List.of(
                "",
                CheckText.RESULT.say(),
                CheckText.CORRECTED_AND_APART_BY_UP_TO.say(
                        desk.celsius(agreement.oneCelsius()),
                        desk.celsius(agreement.otherCelsius()),
                        desk.kelvin(Math.abs(agreement.differenceKelvin())),
                        desk.kelvin(2 * agreement.sigmaKelvin()),
                        desk.kelvin(agreement.allowedKelvin())),
                CheckText.SO.say(CheckWords.of(agreement)));
    }

    /** @param kept the file in which it is kept; empty where it is not */
    String json(CheckOutcome outcome, Optional<String> kept) {
        JsonLine line = head(outcome.isPassed()).whole("channel", outcome.channel());
        line.objects("points", outcome.points().stream().map(CheckReport::json).toList());
        outcome.boiling()
                .ifPresent(b ->
                        line.number("boil_off_k", b.offKelvin(), 3).number("boil_allowed_k", b.allowedKelvin(), 3));
        outcome.finding().ifPresent(finding -> {
            Correction c = finding.correction();
            line.number("gain", c.gain()).number("offset_k", c.offsetKelvin(), 4);
            line.number("sigma_before_k", sigmaBefore(), 3).number("sigma_k", c.sigmaKelvin(), 3);
            line.objects(
                    "parts",
                    finding.parts().stream()
                            .map(part -> new JsonLine()
                                    .text("from", CheckWords.of(part.source()))
                                    .number("sigma_k", part.standardKelvin(), 3))
                            .toList());
            c.checkedAt().ifPresent(at -> line.text("checked", at.toString()));
            line.text("check_again", again(c, outcome.drift()).toString());
        });
        outcome.drift()
                .ifPresent(
                        d -> line.number("drift_k", d.kelvin(), 3).number("drift_ratio", Math.min(d.ratio(), 1e6), 2));
        outcome.failure().ifPresent(why -> line.text("why", why));
        kept.ifPresent(file -> line.text("kept", file));
        return line.end();
    }

    String json(Agreement agreement, String other) {
        return head(agreement.holds())
                .text("against", other)
                .number("one_c", agreement.oneCelsius(), 3)
                .number("other_c", agreement.otherCelsius(), 3)
                .number("difference_k", agreement.differenceKelvin(), 3)
                .number("difference_sigma_k", agreement.sigmaKelvin(), 3)
                .number("allowed_k", agreement.allowedKelvin(), 3)
                .text("words", CheckWords.of(agreement))
                .end();
    }

    private JsonLine head(boolean passed) {
        return new JsonLine()
                .text("probe", subject.place())
                .text("origin", subject.kind().name().toLowerCase(Locale.ROOT))
                .text("result", passed ? "passed" : "not-passed");
    }

    private static JsonLine json(Point point) {
        return new JsonLine()
                .text("point", point.target().kind().word())
                .number("true_c", point.target().trueCelsius(), 3)
                .number("true_sigma_k", point.target().sigmaKelvin(), 3)
                .number("read_c", point.readCelsius(), 4)
                .number("read_sigma_k", point.meanSigmaKelvin(), 4)
                .whole("readings", point.readings());
    }

    private static LocalDate again(Correction correction, Optional<Drift> drift) {
        return date(CheckAgain.due(correction.checkedAt().orElseThrow(), drift));
    }

    private static String day(Correction correction) {
        return correction.checkedAt().map(at -> date(at).toString()).orElse(CheckText.WHOSE_DAY_IS_NOT_KNOWN.say());
    }

    private static LocalDate date(Instant at) {
        return LocalDate.ofInstant(at, ZoneId.systemDefault());
    }

    private String signed(double kelvin) {
        return (kelvin < 0 ? "−" : "+") + desk.kelvin(Math.abs(kelvin));
    }
}
