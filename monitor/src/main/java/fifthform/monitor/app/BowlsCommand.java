package fifthform.monitor.app;

import fifthform.curves.setup.LearnedCoast;
import fifthform.monitor.bowls.BowlText;
import fifthform.monitor.bowls.Bowls;
import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.bowls.Taught;
import fifthform.monitor.bowls.TaughtWords;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.BowlsText;
import fifthform.monitor.texts.InWords;
import java.io.IOException;
import java.io.PrintWriter;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The bowls and what was learned of them. */
@Command(
        name = "bowls",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        subcommands = {
            BowlsShowCommand.class,
            BowlsAddCommand.class,
            BowlsEditCommand.class,
            BowlsSetCommand.class,
            BowlsResetCommand.class,
            BowlsForgetCommand.class
        })
final class BowlsCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Option(names = "--json", scope = ScopeType.INHERIT)
    private boolean json;

    @Override
    public Integer call() throws Refusal {
        Bowls.Loaded loaded = load();
        for (KeptBowl bowl : loaded.bowls()) {
            if (json) common.out().println(line(bowl));
            else common.out().println(row(bowl));
        }
        if (loaded.bowls().isEmpty() && loaded.problems().isEmpty() && !json) {
            common.out().println(BowlsText.NO_BOWL_IS_KNOWN_YET_ONE.say());
        }
        return (loaded.problems().isEmpty() ? Exit.DONE : Exit.ANSWER_IS_NO).code();
    }

    /** All that is known; what is damaged is said. */
    Bowls.Loaded load() {
        Bowls.Loaded loaded = bowls().load();
        loaded.problems().forEach(common.err()::println);
        return loaded;
    }

    Bowls bowls() {
        return new Bowls(common.folders().bowls());
    }

    /** Keeps the bowl and shows it as it is now. */
    int keep(KeptBowl bowl) throws Refusal {
        try {
            bowls().keep(bowl);
        } catch (IOException e) {
            throw notWritten(e);
        }
        show(bowl);
        return Exit.DONE.code();
    }

    static Refusal notWritten(IOException e) {
        return new Refusal(Exit.FILE, BowlsText.THE_BOWL_COULD_NOT_BE_WRITTEN.say(e.getMessage()));
    }

    void show(KeptBowl bowl) throws Refusal {
        if (json) {
            common.out().println(line(bowl));
            return;
        }
        common.out().println(BowlsText.ID.say(bowl.name(), bowl.id(), InWords.of(bowl.material())));
        if (bowl.taught().isEmpty()) common.out().println(BowlsText.NOTHING_WAS_LEARNED_OF_IT_YET.say());
        for (Taught taught : bowl.taught()) common.out().println("  " + words(taught));
    }

    /** A remark about a bowl, for people or for scripts. */
    void said(KeptBowl bowl, String remark) {
        common.out()
                .println(
                        json
                                ? new JsonLine()
                                        .text("bowl", bowl.id())
                                        .text("said", remark)
                                        .end()
                                : remark);
    }

    /** One amount, for example {@code 800 g: coasts about 0.7 °C at 1.0 °C/min, …}. */
    String words(Taught taught) throws Refusal {
        Optional<LearnedCoast> coast = taught.coast();
        Units units = common.units();
        String what = coast.isPresent() ? TaughtWords.coast(coast.get(), units) : BowlsText.COAST_NOT_SEEN_YET.say();
        return BowlsText.LAST.say(
                TaughtWords.amount(taught),
                what,
                TaughtWords.from(taught),
                taught.at().atZone(ZoneId.systemDefault()).toLocalDate());
    }

    private String row(KeptBowl bowl) throws Refusal {
        String taught = bowl.taught().isEmpty()
                ? BowlsText.NOTHING_LEARNED_YET.say()
                : words(bowl.taught().get(0));
        String more =
                bowl.taught().size() > 1 ? BowlsText.AND_MORE.say(bowl.taught().size() - 1) : "";
        return String.format(
                "%-16s %-24s %-10s %s%s", bowl.id(), bowl.name(), InWords.of(bowl.material()), taught, more);
    }

    private static String line(KeptBowl bowl) {
        return new JsonLine()
                .text("bowl", bowl.id())
                .text("name", bowl.name())
                .text("material", bowl.material().word())
                .objects("taught", bowl.taught().stream().map(BowlText::line).toList())
                .end();
    }

    PrintWriter out() {
        return common.out();
    }
}
