package fifthform.monitor.notebook;

import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Holding;
import fifthform.monitor.looks.KeptLook;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One batch as the notebook shows it.
 *
 * @param file its session
 * @param name the session's name
 * @param start when it began
 * @param zone the kitchen's offset from UTC
 * @param chocolateId the recipe's id
 * @param chocolate the recipe's name
 * @param bowl the maker's name for the bowl; empty where it is not known
 * @param amountGrams mass of chocolate, g, where the maker said it
 * @param kind real or practice
 * @param beginning what it began with
 * @param holding the hold that was planned
 * @param length from the first to the last input
 * @param ended time of day when it was last written to
 * @param figures what it came to
 * @param targets what its chocolate wanted
 * @param condition how much of it there is
 * @param trouble what cannot be read or vouched for, in words; empty where all is well
 * @param looks what was seen on its bars
 * @param curve its temperatures, small
 */
public record BatchRow(
        Path file,
        String name,
        Instant start,
        ZoneOffset zone,
        String chocolateId,
        String chocolate,
        String bowl,
        OptionalDouble amountGrams,
        BatchKind kind,
        Beginning beginning,
        Optional<Holding> holding,
        Duration length,
        Instant ended,
        Figures figures,
        Targets targets,
        Condition condition,
        String trouble,
        List<KeptLook> looks,
        SmallCurve curve) {
    public BatchRow {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(chocolateId, "chocolateId");
        Objects.requireNonNull(chocolate, "chocolate");
        Objects.requireNonNull(bowl, "bowl");
        Objects.requireNonNull(amountGrams, "amountGrams");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(beginning, "beginning");
        Objects.requireNonNull(holding, "holding");
        Objects.requireNonNull(length, "length");
        Objects.requireNonNull(ended, "ended");
        Objects.requireNonNull(figures, "figures");
        Objects.requireNonNull(targets, "targets");
        Objects.requireNonNull(condition, "condition");
        Objects.requireNonNull(trouble, "trouble");
        looks = List.copyOf(looks);
        Objects.requireNonNull(curve, "curve");
    }

    /** When it began by the kitchen's clock. */
    public LocalDateTime when() {
        return LocalDateTime.ofInstant(start, zone);
    }

    public Ended end() {
        return Ended.of(this);
    }

    /** Whether its figures can be counted with those of others. */
    public boolean counts() {
        return condition != Condition.UNREADABLE && condition != Condition.UNREAD && condition != Condition.GOING_ON;
    }

    /** Pictures of its bars, as the maker named them. */
    public List<String> photos() {
        return looks.stream().flatMap(look -> look.photos().stream()).distinct().toList();
    }
}
