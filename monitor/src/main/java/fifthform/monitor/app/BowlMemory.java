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
import fifthform.monitor.texts.BowlsText;
import fifthform.monitor.texts.InWords;
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
            return Optional.of(BowlsText.IT_BEHAVED_LIKE_A_BOWL_THAN.say(InWords.of(doubt.get()), bowl.id()));
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
                ? Optional.of(BowlsText.NAME_YOUR_BOWL_NEXT_TIME_BOWL.say())
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
                return Optional.of(BowlsText.THE_BOWL_WAS_CHANGED_WHILE.say(bowl.id()));
            }
            int batches = earlier.map(Taught::batches).orElse(0) + (goesOn ? 0 : 1);
            bowls.keep(
                    before.taught(new Taught(bowl.amountGrams(), coast, answers, batches, at, Optional.of(session))));
            return Optional.of(
                    coast.map(c -> BowlsText.YOUR_BOWL_THE_NEXT_BATCH.say(bowl.id(), TaughtWords.coast(c, units)))
                            .orElse(BowlsText.HOW_ANSWERS_COLD_WATER_IS.say(bowl.id())));
        } catch (IOException e) {
            return Optional.of(BowlsText.WHAT_THE_BOWL_TAUGHT_COULD_NOT.say(e.getMessage()));
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
