package fifthform.monitor.app;

import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Bowl;
import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.bowls.TaughtWords;
import fifthform.monitor.start.SeenProbe;
import fifthform.monitor.start.StartChoice;
import fifthform.monitor.start.StartChoice.Way;
import fifthform.monitor.start.StartDesk;
import fifthform.monitor.start.StartStock;
import fifthform.monitor.texts.StartText;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The three steps of a start as three lines at a terminal; Enter takes what stands in brackets. */
final class StartQuestions {
    private static final Pattern BOWL = Pattern.compile("(.*?)(?:[, ]+([0-9]{1,5}) ?g?)?");
    private static final String USUAL_CHOCOLATE = "dark";
    private static final String USUAL_BOWL = "steel";

    private final PlanQuestions ask;
    private final PrintWriter out;

    StartQuestions(PlanQuestions ask, PrintWriter out) {
        this.ask = ask;
        this.out = out;
    }

    StartChoice ask(StartStock stock, List<SeenProbe> probes) throws Refusal {
        String chocolate = chocolate(stock);
        Named bowl = bowl(stock);
        String probe = probe(probes);
        boolean practice = probe.equals(StartText.PRACTICE_WORD.say());
        return practice
                ? new StartChoice(Way.PRACTICE, chocolate, Optional.empty(), OptionalDouble.empty(), Optional.empty())
                : new StartChoice(Way.PROBE, chocolate, Optional.of(bowl.name()), bowl.grams(), Optional.of(probe));
    }

    private String chocolate(StartStock stock) throws Refusal {
        List<String> ids = stock.recipes().stream().map(Recipe::id).toList();
        String all = String.join(", ", ids);
        String last = stock.last().chocolate().filter(ids::contains).orElse(USUAL_CHOCOLATE);
        String usual = ids.contains(last) ? last : ids.get(0);
        while (true) {
            String said = ask.words(StartText.ASK_CHOCOLATE.say(all), usual);
            if (ids.contains(said)) return said;
            out.println(StartText.ASK_AGAIN_CHOCOLATE.say(all));
        }
    }

    private record Named(String name, OptionalDouble grams) {}

    private Named bowl(StartStock stock) throws Refusal {
        String known =
                String.join(", ", stock.bowls().stream().map(KeptBowl::name).toList());
        String question = known.isEmpty() ? StartText.ASK_BOWL_NONE.say() : StartText.ASK_BOWL.say(known);
        String name = stock.last().bowl().orElse(USUAL_BOWL);
        String usual = stock.last().grams().isPresent()
                ? name + " " + Math.round(stock.last().grams().getAsDouble())
                : name;
        while (true) {
            Matcher said = BOWL.matcher(ask.words(question, usual));
            if (said.matches() && TaughtWords.isName(said.group(1))) {
                if (said.group(2) == null) return new Named(said.group(1), OptionalDouble.empty());
                double grams = Double.parseDouble(said.group(2));
                if (grams >= StartDesk.LEAST_GRAMS && grams <= Bowl.MOST_GRAMS)
                    return new Named(said.group(1), OptionalDouble.of(grams));
            }
            out.println(StartText.ASK_AGAIN_BOWL.say());
        }
    }

    private String probe(List<SeenProbe> probes) throws Refusal {
        String practice = StartText.PRACTICE_WORD.say();
        List<String> all = new ArrayList<>(probes.stream().map(SeenProbe::port).toList());
        probes.forEach(probe -> out.println(probe.port() + ": " + probe.words() + ". " + probe.check()));
        all.add(practice);
        String question =
                probes.isEmpty() ? StartText.ASK_NO_PROBE.say() : StartText.ASK_GO.say(String.join(", ", all));
        if (!probes.isEmpty()) {
            out.println(StartText.CAUTION_SCALD.say());
            out.println(StartText.CAUTION_BATTERY.say());
        }
        return ask.words(question, all.get(0));
    }
}
