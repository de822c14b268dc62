package fifthform.curves.engine;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Contact;
import fifthform.curves.phase.Evidence;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.curves.signal.Surroundings;
import fifthform.curves.signal.Surroundings.Chocolate;
import fifthform.curves.signal.Track;
import fifthform.curves.signal.Water;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/** What is around the bowl's tip, from what was said, measured, planned or, last, is usual. */
final class Around {
    /** Where nobody says and nothing measures it: common practice, no source. */
    private static final double USUAL_ROOM_CELSIUS = 21;

    /** Tap water at its warmest, so that nobody is blamed for a bowl that cools slowly. Own choice. */
    private static final double USUAL_COLD_WATER_CELSIUS = 20;

    /** Later the bowl may have gone elsewhere without a key. Own choice. */
    private static final Duration SAYING_HOLDS = Duration.ofMinutes(3);

    private Around() {}

    static Surroundings of(State state, Setup setup) {
        double room =
                measured(state, setup, Role.ROOM).orElse(setup.roomCelsius().orElse(USUAL_ROOM_CELSIUS));
        Chocolate chocolate = state.batch().phase() == Phase.MELT ? Chocolate.MELTING : Chocolate.LIQUID;
        return new Surroundings(room, believed(state, setup), said(state, setup), chocolate);
    }

    /** Where the bowl stands as far as known, by key or by the curve. */
    private static Optional<Water> believed(State state, Setup setup) {
        Contact contact = state.batch().contact();
        Water.Known known = contact.evidence() == Evidence.TOLD ? Water.Known.TOLD : Water.Known.SEEN;
        return water(state, setup, contact.place(), contact.since(), known);
    }

    /** Swapped wires turn the curve round, and with it what is concluded about the place: here only the key counts. */
    private static Optional<Water> said(State state, Setup setup) {
        return state.told()
                .moved()
                .filter(move -> Duration.between(move.at(), state.at()).compareTo(SAYING_HOLDS) <= 0)
                .flatMap(move -> water(state, setup, move.to(), move.at(), Water.Known.TOLD));
    }

    private static Optional<Water> water(State state, Setup setup, Place place, Instant since, Water.Known known) {
        // Lumps and latent heat let a melting bowl stand still or jump.
        if (place == Place.TABLE || state.batch().phase() == Phase.MELT) return Optional.empty();
        double celsius = place == Place.COLD_WATER
                ? USUAL_COLD_WATER_CELSIUS
                : measured(state, setup, Role.BATH)
                        .orElse(setup.bathCelsius().orElse(setup.recipe().rewarmBathCelsius()));
        return Optional.of(new Water(place, since, celsius, known));
    }

    /** What this role's probe says now, where it can be trusted. */
    static OptionalDouble measured(State state, Setup setup, Role role) {
        return state.tracks()
                .of(setup, role)
                .filter(track -> track.isTrustedAt(state.at()))
                .map(Track::lastCelsius)
                .orElse(OptionalDouble.empty());
    }
}
