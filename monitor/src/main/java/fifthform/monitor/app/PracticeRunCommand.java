package fifthform.monitor.app;

import fifthform.curves.recipe.Recipe;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.texts.CommandText;
import fifthform.simulator.bench.Ending;
import fifthform.simulator.bench.Fleet;
import fifthform.simulator.bench.PracticeReport;
import fifthform.simulator.bench.SummaryText;
import fifthform.simulator.scenario.Scenario;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Many batches of one scenario in no time. */
@Command(name = "run", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class PracticeRunCommand implements Callable<Integer> {
    private static final int MOST = 100_000;

    @Parameters(paramLabel = "SCENARIO")
    private String scenario;

    @Option(names = "--maker", paramLabel = "NAME")
    private String maker;

    @Option(names = "--times", paramLabel = "N", defaultValue = "20")
    private int times;

    @Option(names = "--json")
    private boolean json;

    @ParentCommand
    private PracticeCommand practice;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal {
        if (times < 1 || times > MOST)
            throw new Refusal(Exit.NOT_UNDERSTOOD, CommandText.TIMES_WAS_NOTHING_WAS_DONE.say(times, MOST));
        Scenario own = PracticeCommand.named(scenario);
        Scenario asked = maker == null ? own : own.madeBy(PracticeCommand.maker(maker));
        Recipe recipe = practice.recipe(asked);
        PracticeReport report = PracticeReport.of(asked, times, Fleet.Advice.engine(id -> recipe));
        if (json) print(report, asked.seed());
        else print(asked, report);
        return Exit.DONE.code();
    }

    private void print(Scenario asked, PracticeReport report) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(CommandText.TEMPERED_BY.say(
                asked.title(),
                asked.id(),
                report.chocolate(),
                report.maker().word(),
                report.maker().about()));
        out.println(CommandText.ALL_OF_IT_IS_INVENTED.say());
        out.println();
        out.print(SummaryText.table(report.summary()));
        out.flush();
    }

    private void print(PracticeReport report, long firstSeed) {
        PrintWriter out = spec.commandLine().getOut();
        for (int i = 0; i < report.endings().size(); i++)
            out.println(begun(report)
                    .object("batch", batch(report.endings().get(i), firstSeed + i))
                    .end());
        JsonLine summary = new JsonLine();
        SummaryText.numbers(report.summary()).forEach(summary::number);
        out.println(begun(report).object("summary", summary).end());
    }

    private static JsonLine begun(PracticeReport report) {
        return new JsonLine()
                .text("scenario", report.scenario())
                .text("maker", report.maker().word())
                .text("chocolate", report.chocolate());
    }

    private static JsonLine batch(Ending ending, long seed) {
        JsonLine line = new JsonLine()
                .whole("seed", seed)
                .text("landed", ending.landed().word())
                .number("lasted_s", ending.outcome().lasted().toMillis() / 1000.0)
                .number("highest_melt_c", ending.outcome().highestMeltCelsius())
                .number("lowest_cool_c", ending.outcome().lowestCoolCelsius())
                .number("peak_c", ending.outcome().highestAfterCoolCelsius())
                .number("over_by_k", ending.overByKelvin())
                .number("over_s", ending.overFor().toMillis() / 1000.0);
        return line.whole("cues", ending.answers().size())
                .whole(
                        "cues_in_time",
                        ending.answers().stream().filter(a -> a.inTime()).count())
                .whole("lifts", ending.outcome().lifts().size());
    }
}
