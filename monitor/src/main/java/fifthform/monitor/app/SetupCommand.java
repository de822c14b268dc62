package fifthform.monitor.app;

import fifthform.curves.check.Problem;
import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.adapters.KeptAdapter;
import fifthform.monitor.bowls.Bowls;
import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.catalogue.KnownRecipe;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.setup.Setting;
import fifthform.monitor.setup.SetupDesk;
import fifthform.monitor.sound.SoundTrial;
import fifthform.monitor.texts.CommandText;
import fifthform.monitor.texts.SetupText;
import fifthform.monitor.view.SetupWindow;
import java.io.PrintWriter;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What is set once and holds for all batches. */
@Command(name = "setup", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class SetupCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Option(names = "--screen")
    private ScreenChoice screen;

    @Option(names = "--set", paramLabel = "NAME=VALUE")
    private Map<String, String> set = new LinkedHashMap<>();

    @Option(names = "--usual", paramLabel = "NAME")
    private List<String> usual = new ArrayList<>();

    @Option(names = "--play")
    private boolean play;

    @Option(names = "--json")
    private boolean json;

    @Override
    public Integer call() throws Refusal {
        SetupDesk desk = new SetupDesk(common.folders(), Instant::now);
        desk.problems().forEach(common.err()::println);
        if (play) return play(desk);
        boolean asked = !set.isEmpty() || !usual.isEmpty();
        if (asked) change(desk);
        ScreenChoice choice = Optional.ofNullable(screen).orElseGet(Screens::best);
        if (!asked && !json && choice == ScreenChoice.WINDOW) {
            Optional<String> refused = SetupWindow.open(desk, SoundTrial::atTheStove);
            if (refused.isEmpty()) return Exit.DONE.code();
            common.err().println(CommandText.NO_WINDOW_GOING_ON_WITHOUT_IT.say(refused.get()));
        }
        if (json) desk.all().forEach(setting -> common.out().println(line(setting, desk)));
        else lines(desk);
        return Exit.DONE.code();
    }

    private int play(SetupDesk desk) {
        Optional<String> silent = SoundTrial.play(desk.settings().volume());
        common.out().println(silent.orElse(SetupText.THAT_WAS_THE_URGENT_SOUND_CAN.say()));
        return (silent.isEmpty() ? Exit.DONE : Exit.ANSWER_IS_NO).code();
    }

    /** Everything is tried before anything is kept. */
    private void change(SetupDesk desk) throws Refusal {
        List<String> names =
                usual.contains("all") ? desk.all().stream().map(Setting::name).toList() : usual;
        List<Problem> problems = desk.setAll(set, names);
        if (problems.isEmpty()) return;
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                SetupText.NOTHING_WAS_DONE.say(
                        problems.get(0).where(),
                        problems.get(0).what(),
                        problems.get(0).whatToDo()));
    }

    private void lines(SetupDesk desk) {
        PrintWriter out = common.out();
        for (Setting setting : desk.all()) {
            String value = setting.value(desk.settings());
            String also = setting.possible().isEmpty() ? "" : " (" + String.join(", ", setting.possible()) + ")";
            String usually = value.equals(setting.usual()) ? "" : SetupText.USUALLY.say(setting.usual());
            out.println(setting.name() + " = " + value + "  " + setting.what() + also + usually);
        }
        out.println();
        out.println(SetupText.NETWORK.say());
        out.println(SetupText.FOLDER_SETTINGS.say(common.folders().settingsFile()));
        out.println(SetupText.FOLDER_DATA.say(common.folders().data()));
        out.println(SetupText.FOLDER_SESSIONS.say(common.folders().sessions()));
        out.println(SetupText.CHOCOLATES_SEE_THEM_MONITOR.say(
                named(Recipes.load(common.folders().recipes()).known().stream()
                        .map(SetupCommand::name)
                        .toList())));
        out.println(SetupText.BOWLS_SEE_AND_CHANGE_THEM.say(
                named(new Bowls(common.folders().bowls())
                        .load().bowls().stream().map(KeptBowl::name).toList())));
        out.println(SetupText.PROBES_CHECK_OR_FORGET_ONE.say(
                named(new Adapters(common.folders().probes())
                        .load().adapters().stream().map(SetupCommand::name).toList())));
    }

    private static String named(List<String> names) {
        return names.isEmpty() ? SetupText.NONE_YET.say() : String.join(", ", names);
    }

    private static String name(KnownRecipe known) {
        return known.recipe().id();
    }

    private static String name(KeptAdapter adapter) {
        return adapter.known().place();
    }

    private static String line(Setting setting, SetupDesk desk) {
        return new JsonLine()
                .text("name", setting.name())
                .text("value", setting.value(desk.settings()))
                .text("usual", setting.usual())
                .text("what", setting.what())
                .texts("possible", setting.possible())
                .end();
    }
}
