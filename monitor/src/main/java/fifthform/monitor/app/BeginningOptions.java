package fifthform.monitor.app;

import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Holding;
import fifthform.curves.setup.Holding.Warmth;
import fifthform.curves.setup.Origin;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.texts.CommandText;
import java.time.Duration;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Option;

/** What a batch begins with, and how long it is to be held. */
final class BeginningOptions {
    private static final Pattern TIME = Pattern.compile("([0-9]+(?:\\.[0-9]+)?) ?(m|min|h)?");
    private static final double MILLIS_IN_A_MINUTE = 60_000;

    @Option(names = "--again", paramLabel = "SESSION")
    private String again;

    @Option(names = "--tempered")
    private boolean tempered;

    @Option(names = "--hold", paramLabel = "TIME")
    private String hold;

    @Option(names = "--warm-by", paramLabel = "WAY")
    private String warmBy;

    boolean isUntold() {
        return again == null && !tempered;
    }

    /** The failed batch, read; empty where none was named. */
    Optional<EarlierBatch> again(Folders folders, Origin origin) throws Refusal {
        if (again == null) return Optional.empty();
        if (tempered) {
            throw new Refusal(Exit.NOT_UNDERSTOOD, CommandText.AGAIN_MELTS_EVERYTHING.say());
        }
        return Optional.of(EarlierBatch.read(SessionNames.find(again, folders), origin));
    }

    /** What it begins with; as the probe's kitchen has it where nothing was said. */
    Beginning beginning(Optional<EarlierBatch> earlier, ProbeChoice choice) {
        if (earlier.isPresent()) return new Beginning.Again(earlier.get().name());
        return tempered ? new Beginning.InTemper() : choice.beginning();
    }

    /** Where it must not be joined in the middle. */
    void checkJoin(boolean joins) throws Refusal {
        if (!joins || (again == null && !tempered)) return;
        String option = again == null
                ? CommandText.TEMPERED_BEGINS_WITH_WARMING.say()
                : CommandText.AGAIN_BEGINS_WITH_MELTING.say();
        throw new Refusal(Exit.NOT_UNDERSTOOD, CommandText.AND_JOIN_IN_THE_MIDDLE_NOTHING.say(option));
    }

    /** The hold that is planned. */
    Optional<Holding> holding(ProbeChoice choice) throws Refusal {
        if (hold == null && warmBy == null) return choice.holding();
        if (hold == null) {
            throw new Refusal(Exit.NOT_UNDERSTOOD, CommandText.WARM_BY_NEEDS_HOLD_NOTHING_WAS.say());
        }
        return Optional.of(new Holding(time(), warmth()));
    }

    private Warmth warmth() throws Refusal {
        if (warmBy == null) return Warmth.BATH;
        return Warmth.fromWord(warmBy)
                .orElseThrow(
                        () -> new Refusal(Exit.NOT_UNDERSTOOD, CommandText.WARM_BY_WAS_NOTHING_WAS_DONE.say(warmBy)));
    }

    private Duration time() throws Refusal {
        Matcher said = TIME.matcher(hold);
        double minutes = Double.NaN;
        if (said.matches()) minutes = Double.parseDouble(said.group(1)) * ("h".equals(said.group(2)) ? 60 : 1);
        boolean fits = minutes >= Holding.SHORTEST.toMinutes() && minutes <= Holding.LONGEST.toMinutes();
        if (fits) return Duration.ofMillis(Math.round(MILLIS_IN_A_MINUTE * minutes));
        throw new Refusal(Exit.NOT_UNDERSTOOD, CommandText.HOLD_WAS_NOTHING_WAS_DONE_GIVE.say(hold));
    }
}
