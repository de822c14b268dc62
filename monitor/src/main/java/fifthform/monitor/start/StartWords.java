package fifthform.monitor.start;

import fifthform.curves.recipe.Recipe;
import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.bowls.TaughtWords;
import fifthform.monitor.model.Phrases;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.StartText;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/** What the rows of the start page say. */
record StartWords(Units units) {
    StartWords {
        Objects.requireNonNull(units, "units");
    }

    StartRow chocolate(Recipe recipe) {
        Phrases phrases = new Phrases(units, recipe);
        String work = phrases.range(recipe.work().range());
        return new StartRow(
                recipe.name(),
                StartText.CHOCOLATE_ASIDE.say(work),
                List.of(
                        StartText.TARGET_MELT.say(phrases.range(recipe.melt().range())),
                        StartText.TARGET_COOL.say(phrases.range(recipe.cool().range())),
                        StartText.TARGET_WORK.say(work),
                        StartText.TARGET_MELT_OUT.say(
                                units.withUnit(recipe.meltOut().limitCelsius())),
                        StartText.TARGET_BATH.say(units.withUnit(recipe.rewarmBathCelsius()))));
    }

    StartRow bowl(KeptBowl bowl, OptionalDouble grams) {
        List<String> details = new ArrayList<>();
        details.add(amount(grams));
        bowl.with(grams)
                .learned()
                .ifPresentOrElse(
                        coast -> details.add(StartText.BOWL_LEARNED.say(TaughtWords.coast(coast, units))),
                        () -> details.add(StartText.BOWL_UNTAUGHT.say(InWords.of(bowl.material()))));
        bowl.taught().forEach(taught -> details.add(TaughtWords.line(taught, units)));
        int lifts = bowl.taught().stream()
                .flatMap(taught -> taught.coast().stream())
                .mapToInt(coast -> coast.liftsSeen())
                .sum();
        String aside = bowl.taught().isEmpty() ? StartText.BOWL_NEW.say() : StartText.BOWL_LIFTS.say(lifts);
        return new StartRow(InWords.bowl(bowl.name(), bowl.material()), aside, details);
    }

    StartRow anyBowl() {
        return new StartRow(
                StartText.ANY_BOWL.say(), StartText.ANY_BOWL_ASIDE.say(), List.of(StartText.ANY_BOWL_DETAIL.say()));
    }

    private static String amount(OptionalDouble grams) {
        return grams.isPresent()
                ? StartText.GRAMS.say(StartDesk.whole(grams.getAsDouble()))
                : StartText.GRAMS_UNSAID.say();
    }

    StartRow probe(SeenProbe probe) {
        return new StartRow(
                StartText.GO_WITH.say(probe.port()),
                probe.trusted() ? StartText.CHECKED.say() : StartText.NOT_CHECKED.say(),
                List.of(probe.words(), probe.check()));
    }

    StartRow noProbe(boolean looked) {
        return looked
                ? new StartRow(StartText.NO_PROBE.say(), "", List.of(StartText.NO_PROBE_DETAIL.say()))
                : new StartRow(StartText.LOOKING.say(), "", List.of());
    }

    StartRow practice() {
        return new StartRow(
                StartText.PRACTICE.say(), StartText.PRACTICE_ASIDE.say(), List.of(StartText.PRACTICE_DETAIL.say()));
    }

    StartRow ownHands() {
        return new StartRow(
                StartText.OWN_HANDS.say(), StartText.OWN_HANDS_ASIDE.say(), List.of(StartText.OWN_HANDS_DETAIL.say()));
    }
}
