package fifthform.monitor.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Where words break, with letters that are all one wide. */
class LinesTest {
    private static final ToDoubleFunction<String> LETTERS = String::length;
    private static final String FOOT = "practice · simulated bowl · readable up to 1.2 m · dark, 1 kg, steel bowl";

    /** With room enough the break stands between two things said, and the dot between them goes. */
    @Test
    void linesBreakWhereTheSenseDoes() {
        assertEquals(
                List.of("practice · simulated bowl", "readable up to 1.2 m · dark, 1 kg, steel bowl"),
                Lines.broken(FOOT, 2, LETTERS, 46));
        assertEquals(
                List.of("Off the heat, cool cloth, stir", "wipe the bottom"),
                Lines.broken("Off the heat, cool cloth, stir · wipe the bottom", 2, LETTERS, 40));
        assertEquals(
                List.of("Too hot soon:", "lift the bowl now"),
                Lines.broken("Too hot soon: lift the bowl now", 2, LETTERS, 20));
    }

    /** Where every line would cost size, a break in the sense may cost a little more and no more. */
    @Test
    void senseCostsLittleSize() {
        assertEquals(
                List.of("practice · simulated bowl · readable", "up to 1.2 m · dark, 1 kg, steel bowl"),
                Lines.broken(FOOT, 2, LETTERS, 20));
        assertEquals(List.of("one two, now", "three four."), Lines.broken("one two, now three four.", 2, LETTERS, 5));
        assertEquals(
                List.of("a line of some words,", "and as many again too"),
                Lines.broken("a line of some words, and as many again too", 2, LETTERS, 5));
    }

    @Test
    void noLineIsWiderThanItMustBeForNothing() {
        assertEquals(20, Lines.narrowest("aaaa bbbb cccc dddd eeee ffff gggg hhhh", 2, LETTERS), 1);
        assertEquals(
                List.of("aaaa bbbb cccc", "dddd eeee ffff"),
                Lines.broken("aaaa bbbb cccc dddd eeee ffff", 2, LETTERS, 20));
    }

    @Test
    void oneWordOrOneLineIsNotBroken() {
        assertEquals(List.of("unbreakable"), Lines.broken("unbreakable", 3, LETTERS, 2));
        assertEquals(List.of("two words"), Lines.broken("two words", 1, LETTERS, 2));
    }
}
