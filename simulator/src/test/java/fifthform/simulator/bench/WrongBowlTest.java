package fifthform.simulator.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.setup.Bowl;
import fifthform.simulator.bench.BowlDays.Day;
import fifthform.simulator.bench.BowlDays.Really;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** A few kitchens of the long form, {@code BowlBench}: four batches in one bowl, then another one under its name. */
class WrongBowlTest {
    private static final int KITCHENS = 6;

    /** Of the days that can be doubted about one in a hundred is (goal 2 %, {@code BowlBench}): two of these twelve hardly ever. */
    private static final int MOST_DOUBTED = 1;

    private record Kitchen(List<Day> own, Day other) {}

    private static Kitchen kitchen(long number) {
        BowlDays days =
                new BowlDays(Fleet.builtIn(Fleet.HOME), number, text -> BowlDays.with(text, "maker", "follows-cues"));
        Bowl bowl = days.fresh();
        List<Day> own = new ArrayList<>();
        for (int day = 0; day < 4; day++) {
            own.add(days.day(day, bowl, Really.THE_BOWL));
            bowl = own.get(day).leaves();
        }
        return new Kitchen(own, days.day(4, bowl, Really.OTHER_MATERIAL));
    }

    @Test
    void anotherMaterialIsNoticedAndTheSameBowlIsNot() {
        List<Kitchen> kitchens = LongStream.range(500, 500 + KITCHENS)
                .mapToObj(WrongBowlTest::kitchen)
                .toList();
        long noticed = kitchens.stream()
                .filter(k -> k.other().coasting().bowl().doubt().isPresent())
                .count();
        assertTrue(noticed >= KITCHENS - 1, noticed + " of " + KITCHENS);
        long doubted = kitchens.stream()
                .flatMap(k -> k.own().stream())
                .filter(day -> day.coasting().bowl().doubt().isPresent())
                .count();
        assertTrue(doubted <= MOST_DOUBTED, "doubted its own bowl " + doubted + " times");
        for (Kitchen kitchen : kitchens) {
            Bowl left = kitchen.own().get(3).leaves();
            assertTrue(left.learned().orElseThrow().liftsSeen() >= 3, "lifts " + left.learned());
            assertEquals(left.answers(), kitchen.other().leaves().answers(), "another bowl teaches nothing");
        }
    }
}
