package fifthform.simulator.scenario;

import fifthform.simulator.maker.FollowsCues;
import fifthform.simulator.maker.Habits;
import fifthform.simulator.maker.Maker;
import fifthform.simulator.maker.OwnWay;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BiFunction;

/** Who tempers. */
public enum MakerKind {
    /** Does what the program says. */
    FOLLOWS_CUES(FollowsCues::new),
    /** Goes by the thermometer. */
    OWN_WAY(OwnWay::new);

    private final BiFunction<Habits, SplittableRandom, Maker> birth;

    MakerKind(BiFunction<Habits, SplittableRandom, Maker> birth) {
        this.birth = birth;
    }

    /** Somebody of this kind. */
    public Maker with(Habits habits, SplittableRandom random) {
        return birth.apply(habits, random);
    }

    /** The name in files: {@code follows-cues}, {@code own-way}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The kind with this {@link #word()}, if there is one. */
    public static Optional<MakerKind> fromWord(String word) {
        for (MakerKind kind : values()) if (kind.word().equals(word)) return Optional.of(kind);
        return Optional.empty();
    }
}
