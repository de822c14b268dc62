package fifthform.simulator.scenario;

import fifthform.simulator.maker.Habits;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.maker.Maker;
import fifthform.simulator.maker.Makers;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Who tempers. */
public enum MakerKind {
    /** Does what the program says. */
    FOLLOWS_CUES("does what the program says", Makers::followsCues),
    /** Goes by the thermometer. */
    OWN_WAY("goes by the thermometer and takes no notice of the program", Makers::ownWay),
    /** Lifts early and lets nothing interrupt. */
    CAREFUL("lifts early, holds long, stirs well and wipes at once", Makers::careful),
    /** Skips the hold. */
    HASTY("skips the hold, stirs in bursts, hardly wipes", Makers::hasty),
    /** Answers the phone. */
    DISTRACTED("answers the phone, forgets, takes the probe out", Makers::distracted),
    /** Slow and unsure. */
    BEGINNER("slow, stirs gently, unsure of the numbers", Makers::beginner);

    private final String about;
    private final BiFunction<Habits, Luck, Maker> birth;

    MakerKind(String about, BiFunction<Habits, Luck, Maker> birth) {
        this.about = about;
        this.birth = birth;
    }

    /** A few words for lists. */
    public String about() {
        return about;
    }

    /** Somebody of this kind, at the beginning of a batch. */
    public Maker with(Habits habits, Luck luck) {
        return birth.apply(habits, luck);
    }

    /** The name in files: {@code follows-cues}, {@code own-way}, …. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** All names, for messages. */
    static String words() {
        return Stream.of(values()).map(MakerKind::word).collect(Collectors.joining(", "));
    }

    /** The kind with this {@link #word()}, if there is one. */
    public static Optional<MakerKind> fromWord(String word) {
        for (MakerKind kind : values()) if (kind.word().equals(word)) return Optional.of(kind);
        return Optional.empty();
    }
}
