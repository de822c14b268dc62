package fifthform.curves.cue;

import fifthform.curves.cue.Dip.Stage;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Contact;
import fifthform.curves.recipe.Phase;
import fifthform.curves.situation.Reason.Rule;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalDouble;

/** After every lift from water: wipe what clings to the bowl, and stir, until it has turned or for a while. */
final class StirCues {
    private static final Duration SHOWN = Duration.ofSeconds(20);

    private StirCues() {}

    static void collect(Look look, Dips dips) {
        Contact contact = look.situation().batch().contact();
        Instant now = look.situation().now();
        boolean dipped = dips.is(Stage.LOOKING)
                && Duration.between(dips.dip().orElseThrow().since(), now).compareTo(SHOWN) <= 0;
        boolean lifted = contact.place() == Place.TABLE
                && look.situation().coasting().lift().isPresent()
                && Duration.between(contact.since(), now).compareTo(SHOWN) <= 0;
        boolean wet = look.phase() != Phase.MELT && look.phase() != Phase.REST;
        if (!wet || !dipped && !lifted) return;
        look.due(
                CueId.WIPE_AND_STIR,
                look.turn().map(t -> OptionalDouble.of(t.celsius())).orElse(OptionalDouble.empty()),
                look.reason(Rule.LEFT_THE_WATER));
    }
}
