package fifthform.curves.engine;

import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.network.Given;
import fifthform.curves.network.Insight;
import fifthform.curves.network.Network;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.curves.signal.Judgement;
import fifthform.curves.signal.Lag;
import fifthform.curves.signal.Track;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the network gets to hear of a session, and when. Without a network nothing is heard. */
final class Hearing {
    /** The shortest lag that a sheath in chocolate has; what is shorter on paper was never measured so. Own choice. */
    private static final double LEAST_LAG_SECONDS = 0.5;

    /**
     * What the program learns of a bowl from the lifts of whole batches is shorter than what the network was taught by, as
     * LearnedBench measures: by e^−0.34 in the middle. Seen by the network at its own length it is worth more.
     */
    private static final double TAUGHT_OVER_LEARNED = 1.4;

    private final Optional<Network> network;

    Hearing(Optional<Network> network) {
        this.network = network;
    }

    /**
     * The network's insight once {@code told} has happened.
     *
     * @param setup the set-up in force
     * @param news the bowl's probe where a reading of it has come that is believed to be the chocolate's
     */
    Insight after(State before, State told, Setup setup, Optional<Track> news) {
        if (network.isEmpty()) return told.insight();
        // What has just come belongs to the step that is open now.
        Insight ended = told.insight().until(network.get(), secondsAt(told, told.at()), given(told, setup));
        Insight moved = before.told().moved().equals(told.told().moved()) ? ended : word(ended, told);
        OptionalDouble celsius = news.map(Track::lastCelsius).orElse(OptionalDouble.empty());
        return celsius.isPresent()
                ? moved.reading(secondsAt(told, news.get().lastGood()), celsius.getAsDouble())
                : moved;
    }

    private static Insight word(Insight insight, State told) {
        Optional<BowlMoved> moved = told.told().moved();
        return moved.map(move -> insight.told(move.to(), secondsAt(told, move.at())))
                .orElseGet(insight::untold);
    }

    private static double secondsAt(State state, Instant at) {
        Duration passed = Duration.between(state.started(), at);
        return passed.getSeconds() + passed.getNano() / 1e9;
    }

    private static Given given(State state, Setup setup) {
        // The bath that is planned is the rewarm's; over the melting bath it would be a wrong number.
        OptionalDouble planned = state.batch().phase() == Phase.MELT ? OptionalDouble.empty() : setup.bathCelsius();
        return new Given(
                setup.recipe().work().range().lowCelsius(),
                orElse(within(Around.measured(state, setup, Role.BATH), -20, 150), planned),
                setup.bowl().amountGrams(),
                setup.bowl().material(),
                setup.bowl().learned().map(learned -> learned.times(TAUGHT_OVER_LEARNED)),
                orElse(within(Around.measured(state, setup, Role.ROOM), -20, 60), setup.roomCelsius()),
                measuredLag(state, setup.bowlProbe()));
    }

    private static OptionalDouble orElse(OptionalDouble first, OptionalDouble second) {
        return first.isPresent() ? first : second;
    }

    /** A probe that hangs over the steam says nothing of the room. */
    private static OptionalDouble within(OptionalDouble celsius, double low, double high) {
        boolean possible = celsius.isPresent() && celsius.getAsDouble() >= low && celsius.getAsDouble() <= high;
        return possible ? celsius : OptionalDouble.empty();
    }

    /** A dip of this session shows it, or one of an earlier session did: then it differs from the one assumed. */
    private static OptionalDouble measuredLag(State state, ProbeSetup bowl) {
        Optional<Lag> shown = state.tracks().judgementOf(bowl.id()).flatMap(Judgement::lag);
        if (shown.isPresent())
            return OptionalDouble.of(Math.max(LEAST_LAG_SECONDS, shown.get().seconds()));
        return bowl.lagSeconds() == ProbeSetup.USUAL_LAG_SECONDS
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.max(LEAST_LAG_SECONDS, bowl.lagSeconds()));
    }
}
