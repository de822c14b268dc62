package fifthform.simulator.bench;

import fifthform.curves.check.Require;
import fifthform.simulator.bowl.Hands;
import fifthform.simulator.bowl.Hands.Towel;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.Spot;
import java.time.Duration;
import java.util.Objects;

/**
 * Goes on from a moment in ways that did not happen, and says what would have come of them: the truth against which a
 * forecast of that moment is held. The moment itself is not touched.
 *
 * @param kitchen the physics
 * @param look how often it is looked at: a turning point between two looks is missed by next to nothing
 */
public record WhatIf(Kitchen kitchen, Duration look) {
    /** How far a bowl that is left where it stands is followed, as far as the engine's forecasts reach. */
    public static final Duration LEFT_FOR = Duration.ofSeconds(180);

    /** After a lift every bowl has turned within this; thick glass takes about two minutes. Our own choice. */
    private static final Duration LONGEST_COAST = Duration.ofMinutes(6);

    /**
     * After cold water a bowl goes on falling to the temperature of the room, with no turning point. The coast is over
     * within this, all but thick glass, whose last quarter comes later; what follows is the room's. Our own choice.
     */
    private static final Duration LONGEST_FADE = Duration.ofMinutes(2);

    /** So long after the furthest point, and so far from it, it will not be passed again. Our own choice. */
    private static final Duration TURNED_FOR = Duration.ofSeconds(30);

    private static final double TURNED_KELVIN = 0.01;

    public WhatIf {
        Objects.requireNonNull(kitchen, "kitchen");
        Objects.requireNonNull(look, "look");
        if (look.isZero() || look.isNegative()) throw new IllegalArgumentException("look must be above 0, was " + look);
    }

    /** Looks as often as the maker does. */
    public WhatIf(Kitchen kitchen) {
        this(kitchen, Batch.STEP);
    }

    /** Which way the chocolate is going. */
    private enum Way {
        UP {
            @Override
            double further(double celsius) {
                return celsius;
            }
        },
        DOWN {
            @Override
            double further(double celsius) {
                return -celsius;
            }
        };

        /** Grows with how far it has gone. */
        abstract double further(double celsius);
    }

    /**
     * The furthest point of a way that was tried.
     *
     * @param celsius the bulk of the chocolate there, °C
     * @param after how long after the moment
     */
    public record Furthest(double celsius, Duration after) {
        public Furthest {
            Require.finite(celsius, "celsius");
            Require.notNegative(after, "after");
        }
    }

    /**
     * Both answers for one moment.
     *
     * @param ifLifted where it turns if the bowl leaves the water now
     * @param ifLeft the furthest within {@link #LEFT_FOR} if nothing changes; on the table on the way it is going
     */
    public record Labels(Furthest ifLifted, Furthest ifLeft) {
        public Labels {
            Objects.requireNonNull(ifLifted, "ifLifted");
            Objects.requireNonNull(ifLeft, "ifLeft");
        }
    }

    public Labels labels(Moment moment) {
        return new Labels(ifLifted(moment.kitchen(), moment.hands()), ifLeft(moment.kitchen(), moment.hands()));
    }

    /**
     * Where the chocolate turns if the bowl is put on the table now and stirred well, not wiped: the highest after warm
     * water, the lowest after cold.
     */
    public Furthest ifLifted(KitchenState state, Hands now) {
        return ifLifted(state, now, 1);
    }

    /** The same in the hands of somebody who stirs with this vigour, 0 to 1, from then on. */
    public Furthest ifLifted(KitchenState state, Hands now, double vigourFraction) {
        return ifOnTable(state, now.spot(), Duration.ZERO, vigourFraction);
    }

    /**
     * Where a bowl turns that stands on the table; where it is now if it has turned already.
     *
     * @param from the water that it left
     * @param sinceLift when it did
     * @param vigourFraction how it is stirred from now on, 0 to 1
     */
    public Furthest ifOnTable(KitchenState state, Spot from, Duration sinceLift, double vigourFraction) {
        Way way = way(from);
        Duration coasts = way == Way.UP ? LONGEST_COAST : LONGEST_FADE;
        return furthest(state, new Hands(Spot.TABLE, vigourFraction, Towel.LEFT), way, coasts.minus(sinceLift));
    }

    /**
     * The furthest the chocolate gets within {@link #LEFT_FOR} if the hands go on as they do, as {@code Forecast.ifLeft}
     * means it: over warm water the highest, in cold water the lowest, on the table the furthest on the way on which it is
     * now, so the turning point of a coast upwards and, where it falls, how far it falls.
     */
    public Furthest ifLeft(KitchenState state, Hands now) {
        Hands unwiped = new Hands(now.spot(), now.stirVigourFraction(), Towel.LEFT);
        boolean falls = kitchen.advance(state, unwiped, look).bulkCelsius() < state.bulkCelsius();
        Way way = now.spot() == Spot.TABLE && falls ? Way.DOWN : way(now.spot());
        return furthest(state, unwiped, way, LEFT_FOR);
    }

    private static Way way(Spot from) {
        return from == Spot.COLD_WATER || from == Spot.COOL_CLOTH ? Way.DOWN : Way.UP;
    }

    private Furthest furthest(KitchenState from, Hands hands, Way way, Duration horizon) {
        KitchenState state = from;
        Furthest furthest = new Furthest(from.bulkCelsius(), Duration.ZERO);
        Duration gone = Duration.ZERO;
        while (gone.compareTo(horizon) < 0) {
            state = kitchen.advance(state, hands, look);
            gone = gone.plus(look);
            double celsius = state.bulkCelsius();
            double behind = way.further(furthest.celsius()) - way.further(celsius);
            if (behind < 0) furthest = new Furthest(celsius, gone);
            boolean longAgo = gone.minus(furthest.after()).compareTo(TURNED_FOR) >= 0;
            boolean passed = longAgo && behind > TURNED_KELVIN && spent(state, furthest.celsius());
            if (hands.spot() == Spot.TABLE && way == Way.UP && passed) break;
        }
        return furthest;
    }

    /** Nothing around the chocolate is warm enough to bring it there once more. A bowl after cold water the room cools. */
    private static boolean spent(KitchenState state, double celsius) {
        return state.wallCelsius() <= celsius && state.filmCelsius() <= celsius && state.layerCelsius() <= celsius;
    }
}
