package fifthform.monitor.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A number from its bytes is the number from its text, to the bit; what is no plain number is not taken. */
class PlainNumberTest {
    private final PlainNumber number = new PlainNumber();

    private int read(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return number.read(bytes, 0, bytes.length);
    }

    @Test
    void anyNumberOfAJournalIsTheSameToTheBit() {
        Random random = new Random(11);
        for (int i = 0; i < 200_000; i++) {
            int places = random.nextInt(10);
            double size = Math.pow(10, random.nextInt(6)) * (random.nextDouble() - 0.3);
            String text = String.format(Locale.ROOT, "%." + places + "f", size);
            if (text.replaceAll("[-.]", "").replaceFirst("^0+", "").length() > 15) continue;
            assertEquals(text.length(), read(text), text);
            assertEquals(
                    Double.doubleToRawLongBits(Double.parseDouble(text)),
                    Double.doubleToRawLongBits(number.value()),
                    text);
        }
    }

    @Test
    void timesAreExactToTheNanosecond() {
        assertEquals(14, read("1094.161984123"));
        assertTrue(number.hasNanos());
        assertEquals(1_094_161_984_123L, number.nanos());
        read("-0.5");
        assertEquals(-500_000_000L, number.nanos());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-", ".5", "5.", "01", "+1", "x", "1234567890123456", "0.1234567890123456"})
    void whatIsNoPlainNumberIsNotTaken(String text) {
        assertEquals(-1, read(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e5", "31.5}", "7,", "12 "})
    void itEndsWhereTheNumberEnds(String text) {
        assertTrue(read(text) < text.length());
    }
}
