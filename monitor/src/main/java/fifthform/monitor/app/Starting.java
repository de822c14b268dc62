package fifthform.monitor.app;

import fifthform.curves.recipe.Recipe;
import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.bowls.Bowls;
import fifthform.monitor.catalogue.KnownRecipe;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.plan.PlanDesk;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.LastStart;
import fifthform.monitor.settings.Units;
import fifthform.monitor.setup.SetupDesk;
import fifthform.monitor.sound.SoundTrial;
import fifthform.monitor.start.StartChoice;
import fifthform.monitor.start.StartChoice.Way;
import fifthform.monitor.start.StartDesk;
import fifthform.monitor.start.StartStock;
import fifthform.monitor.store.Session;
import fifthform.monitor.texts.StartText;
import fifthform.monitor.view.FxStart;
import fifthform.monitor.view.StartWindow;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/** How a batch is begun where the command line says nothing: as last time, on the start page, or by three questions. */
final class Starting {
    private final Folders folders;
    private final Choices choices;
    private final Units units;
    private final StartStock stock;

    /** @param cutOff the batch that can be gone on with */
    Starting(Folders folders, Choices choices, Units units, Optional<Session> cutOff) {
        this.folders = folders;
        this.choices = choices;
        this.units = units;
        stock = new StartStock(
                Recipes.load(folders.recipes()).known().stream()
                        .map(KnownRecipe::recipe)
                        .toList(),
                new Bowls(folders.bowls()).load().bowls(),
                choices.settings().last(),
                cutOff.map(Starting::words),
                units);
    }

    private static String words(Session session) {
        return StartText.CUT_OFF.say(session.header()
                .start()
                .atOffset(session.header().zone())
                .toLocalTime()
                .truncatedTo(ChronoUnit.MINUTES));
    }

    /** As the last real batch was begun. */
    static StartChoice asLast(Choices choices) throws Refusal {
        LastStart last = choices.settings().last();
        if (!last.isKnown()) throw new Refusal(Exit.ANSWER_IS_NO, StartText.NONE_YET.say());
        return new StartChoice(
                Way.AS_LAST, last.chocolate().orElseThrow(), last.bowl(), last.grams(), Optional.empty());
    }

    /** At a terminal. */
    StartChoice asked(StartQuestions questions) throws Refusal {
        return questions.ask(stock, probes().look());
    }

    /** What a start came to. */
    interface Begin {
        /** Watches what was chosen to its end. */
        void watch(StartChoice choice) throws Refusal, InterruptedException;

        /** Whether the session had begun; then it is not begun once more. */
        boolean hasBegun();
    }

    /**
     * The start page, until a batch was watched or the window closed. What cannot be started is said on the page, and
     * everything stays as it was chosen.
     *
     * @return why there is no window
     */
    Optional<String> onThePage(Begin begin) throws Refusal, InterruptedException {
        StartDesk desk = new StartDesk(stock);
        try {
            while (true) {
                FxStart.Asked<StartChoice> asked = StartWindow.ask(desk, choices.theme(), choices.keys(), around());
                if (asked.refused().isPresent()) return asked.refused();
                if (asked.answer().isEmpty()) return Optional.empty();
                try {
                    begin.watch(asked.answer().get());
                    return Optional.empty();
                } catch (Refusal refusal) {
                    if (begin.hasBegun()) throw refusal;
                    desk.refuse(refusal.getMessage());
                }
            }
        } finally {
            FxStart.leave();
        }
    }

    private SeenProbes probes() {
        return new SeenProbes(new Adapters(folders.probes()), choices.settings().lastProbe(), units);
    }

    private StartWindow.Around around() {
        SeenProbes seen = probes();
        return new StartWindow.Around(
                seen::look,
                this::plan,
                PlanDesks::watchLine,
                () -> new SetupDesk(folders, Instant::now),
                SoundTrial::atTheStove);
    }

    private PlanDesk plan() {
        List<Recipe> recipes = stock.recipes();
        Recipe first = recipes.stream()
                .filter(recipe ->
                        stock.last().chocolate().filter(recipe.id()::equals).isPresent())
                .findFirst()
                .orElse(recipes.get(0));
        return PlanDesks.of(first, Optional.empty(), folders, units, new Bowls(folders.bowls()).load());
    }
}
