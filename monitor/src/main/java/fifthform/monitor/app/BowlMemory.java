package fifthform.monitor.app;

import fifthform.curves.bowlcheck.OtherBowl;
import fifthform.curves.engine.Engine;
import fifthform.curves.engine.State;
import fifthform.curves.forecast.Coasting;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlAnswers;
import fifthform.curves.setup.LearnedCoast;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.Setup;
import fifthform.monitor.bowls.Bowls;
import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.bowls.Taught;
import fifthform.monitor.bowls.TaughtWords;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.Session;
import java.io.IOException;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/** At the end of a session, what the bowl taught goes to the next one. Practice and recorded bytes teach nothing. */
final class BowlMemory {
    private final Bowls bowls;
    private final Units units;

    BowlMemory(Bowls bowls, Units units) {
        this.bowls = Objects.requireNonNull(bowls, "bowls");
        this.units = Objects.requireNonNull(units, "units");
    }

    /**
     * Keeps what a finished session taught, and says so in words; empty where there is nothing to say.
     *
     * @param header the set-up with which it began
     */
    Optional<String> learn(Setup header, State last, String session) {
        Bowl bowl = header.bowl();
        if (header.origin() != Origin.REAL || header.bowlProbe().place().startsWith(TapeProbe.PLACE)) {
            return Optional.empty();
        }
        if (bowl.id().equals(Bowl.ANY.id())) return unnamed(last.coasting(), bowl);
        Optional<OtherBowl> doubt = last.coasting().bowl().doubt();
        if (doubt.isPresent()) {
            return Optional.of("It behaved like a " + doubt.get().word() + " bowl than \"" + bowl.id()
                    + "\", so nothing of this batch was learned for that bowl.");
        }
        Optional<LearnedCoast> coast = last.coasting().learned();
        BowlAnswers answers = last.coasting().bowl().after(bowl.answers());
        boolean news = lifts(coast) > lifts(bowl.learned()) || !answers.equals(bowl.answers());
        return news ? keep(bowl, coast, answers, last.at(), session) : Optional.empty();
    }

    /**
     * What a session that was cut off saw before it: gone through again, and learned once. One that goes on learns at its
     * own end.
     */
    Optional<String> learn(Session cutOff) {
        Setup header = cutOff.header().setup();
        if (header.origin() != Origin.REAL || header.bowl().id().equals(Bowl.ANY.id())) return Optional.empty();
        boolean known = bowls.load()
                .find(header.bowl().id())
                .flatMap(b -> b.taughtWith(header.bowl().amountGrams()))
                .filter(t -> !t.at().isBefore(cutOff.lastAt()))
                .isPresent();
        if (known) return Optional.empty();
        State[] state = {Engine.start(header, cutOff.header().start())};
        cutOff.inputs()
                .forEach(
                        r -> state[0] = Engine.step(header, state[0], r.input()).after());
        return learn(header, state[0], cutOff.header().session());
    }

    private static Optional<String> unnamed(Coasting coasting, Bowl bowl) {
        return lifts(coasting.learned()) > lifts(bowl.learned())
                ? Optional.of("Name your bowl next time (--bowl), and what it taught is kept for it.")
                : Optional.empty();
    }

    private Optional<String> keep(
            Bowl bowl, Optional<LearnedCoast> coast, BowlAnswers answers, Instant at, String session) {
        try {
            KeptBowl before = bowls.load().find(bowl.id()).orElse(KeptBowl.named(bowl.id(), bowl.material()));
            Optional<Taught> earlier = before.taughtWith(bowl.amountGrams());
            boolean goesOn =
                    earlier.flatMap(Taught::session).filter(session::equals).isPresent();
            if (!goesOn && !asItBegan(bowl, before)) {
                return Optional.of("The bowl \"" + bowl.id() + "\" was changed while this batch ran; what the batch"
                        + " taught was not put over that.");
            }
            int batches = earlier.map(Taught::batches).orElse(0) + (goesOn ? 0 : 1);
            bowls.keep(
                    before.taught(new Taught(bowl.amountGrams(), coast, answers, batches, at, Optional.of(session))));
            return Optional.of(coast.map(c -> "Your bowl \"" + bowl.id() + "\" " + TaughtWords.coast(c, units)
                            + ". The next batch begins with that.")
                    .orElse("How \"" + bowl.id() + "\" answers cold water is remembered; its coast was not seen."));
        } catch (IOException e) {
            return Optional.of("What the bowl taught could not be kept: " + e.getMessage()
                    + ". The session is kept all the same. Check that you may write to the data folder.");
        }
    }

    /** Whether the store still says what this session began with. */
    private static boolean asItBegan(Bowl bowl, KeptBowl kept) {
        Bowl now = kept.with(bowl.amountGrams());
        return lifts(now.learned()) == lifts(bowl.learned()) && now.answers().equals(bowl.answers());
    }

    private static int lifts(Optional<LearnedCoast> coast) {
        return coast.map(LearnedCoast::liftsSeen).orElse(0);
    }
}
