package fifthform.monitor.app;

import fifthform.curves.check.Problem;
import fifthform.curves.recipe.Recipe;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.texts.CommandText;
import fifthform.simulator.scenario.MakerKind;
import fifthform.simulator.scenario.Scenario;
import fifthform.simulator.scenario.Scenarios;
import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What there is to practise on, and who may temper it. */
@Command(
        name = "practice",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        subcommands = {PracticeTrainCommand.class, PracticeRunCommand.class, PracticeServeCommand.class})
final class PracticeCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Option(names = "--json")
    private boolean json;

    @Override
    public Integer call() throws Refusal {
        Scenarios scenarios = Scenarios.builtIn();
        PrintWriter out = common.out();
        if (!json) out.println(CommandText.SCENARIOS_ALL_INVENTED.say());
        for (String id : scenarios.ids()) {
            Scenario scenario = named(id);
            out.println(json ? line(scenario) : row(id, scenario.title()));
        }
        if (!json) {
            out.println();
            out.println(CommandText.MAKERS.say());
        }
        for (MakerKind kind : MakerKind.values()) out.println(json ? line(kind) : row(kind.word(), kind.about()));
        if (!json) {
            out.println();
            out.println(CommandText.YOUR_OWN_HANDS_MONITOR_RUN.say(Scenarios.FIRST));
        }
        return Exit.DONE.code();
    }

    private static String row(String name, String about) {
        return String.format("  %-24s %s", name, about);
    }

    private static String line(Scenario scenario) {
        return new JsonLine()
                .text("scenario", scenario.id())
                .text("title", scenario.title())
                .text("about", scenario.about())
                .text("demo", scenario.demo())
                .text("chocolate", scenario.chocolate())
                .text("maker", scenario.maker().word())
                .end();
    }

    private static String line(MakerKind kind) {
        return new JsonLine()
                .text("maker", kind.word())
                .text("about", kind.about())
                .end();
    }

    /** The scenario of this name, or a refusal that names the nearest. */
    static Scenario named(String id) throws Refusal {
        return Answers.orRefuse(Scenarios.builtIn().find(id), Exit.NOT_UNDERSTOOD);
    }

    /** The maker of this name. */
    static MakerKind maker(String word) throws Refusal {
        Optional<MakerKind> kind = MakerKind.fromWord(word);
        if (kind.isPresent()) return kind.get();
        String known = Arrays.stream(MakerKind.values()).map(MakerKind::word).collect(Collectors.joining(", "));
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                List.of(new Problem(
                        "--maker " + word, CommandText.THERE_IS_NO_MAKER_OF_THIS.say(), CommandText.KNOWN.say(known))));
    }

    /** The recipe that the scenario is tempered by. */
    Recipe recipe(Scenario scenario) throws Refusal {
        return Chocolates.find(scenario.chocolate(), folders(), common.err());
    }

    Folders folders() {
        return common.folders();
    }

    CommonOptions common() {
        return common;
    }
}
