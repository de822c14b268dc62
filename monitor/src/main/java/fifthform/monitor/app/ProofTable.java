package fifthform.monitor.app;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.curves.input.Input;
import fifthform.curves.input.Sample;
import fifthform.curves.proof.CurvePoint;
import fifthform.curves.proof.Unfit;
import fifthform.monitor.intake.CsvRow;
import fifthform.monitor.intake.CsvTape;
import fifthform.monitor.texts.ProofText;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A cooling curve from a table with {@code time_s} and {@code temperature_c}, and where it has {@code bath_c}, its bath.
 *
 * @param points from the first row on
 * @param bathCelsius the bath in the first row that tells it
 * @param spoilt what is wrong with the table's times
 */
record ProofTable(List<CurvePoint> points, OptionalDouble bathCelsius, Optional<Unfit> spoilt) {
    /** A slip of the pen is left out; more of them mean that nothing can be placed in time. */
    private static final double MOST_LOST = 0.02;

    static ProofTable read(Path file, PrintWriter err) throws Refusal {
        Instant start = Instant.EPOCH;
        List<Sample> samples = new ArrayList<>();
        OptionalDouble bath = OptionalDouble.empty();
        int rows = 0;
        int lost = 0;
        try (Reader text = Files.newBufferedReader(file);
                CsvTape tape =
                        Answers.orRefuse(CsvTape.open(String.valueOf(file.getFileName()), text, start), Exit.FILE)) {
            for (Optional<Parsed<CsvRow>> next = tape.next(); next.isPresent(); next = tape.next()) {
                rows++;
                List<Problem> refused = next.get().fold(row -> List.of(), p -> List.copyOf(p));
                lost += refused.isEmpty() ? 0 : 1;
                refused.stream().limit(1).forEach(p -> err.println(p));
                for (Input input : next.get().fold(CsvRow::inputs, p -> List.<Input>of())) {
                    if (!(input instanceof Sample sample)) continue;
                    if (sample.probe().equals(CsvTape.BOWL)) samples.add(sample);
                    if (sample.probe().equals(CsvTape.BATH) && bath.isEmpty())
                        bath = OptionalDouble.of(sample.tipCelsius());
                }
            }
        } catch (IOException e) {
            throw new Refusal(
                    Exit.FILE,
                    ProofText.CANNOT_BE_READ_NOTHING_WAS.say(
                            file,
                            e instanceof CharacterCodingException
                                    ? ProofText.IT_IS_NO_TEXT_IN_UTF.say()
                                    : e.getMessage()));
        }
        Optional<Unfit> spoilt =
                lost > Math.max(1, MOST_LOST * rows) ? Optional.of(Unfit.TIMES_GO_BACK) : Optional.empty();
        return new ProofTable(points(samples), bath, spoilt);
    }

    private static List<CurvePoint> points(List<Sample> samples) {
        if (samples.isEmpty()) return List.of();
        Instant first = samples.get(0).at();
        return samples.stream()
                .map(s -> new CurvePoint(
                        Math.min(86_400, Duration.between(first, s.at()).toNanos() / 1e9), s.tipCelsius()))
                .toList();
    }
}
