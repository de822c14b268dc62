package fifthform.monitor.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import java.util.Properties;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Keys and words fit together; an error in a text key ends the build here. */
class TextsTest {
    private static final Path SOURCES = Path.of("src/main/java/fifthform/monitor/texts");

    /** Every enum of the package, found by its file, so that none is forgotten. */
    static Stream<Class<?>> screens() throws IOException {
        try (Stream<Path> files = Files.list(SOURCES)) {
            return files
                    .map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".java") && !name.equals("package-info.java"))
                    .<Class<?>>map(TextsTest::named)
                    .filter(Class::isEnum)
                    .collect(Collectors.toList())
                    .stream();
        }
    }

    private static Class<?> named(String name) {
        try {
            return Class.forName(TextsTest.class.getPackageName() + "." + name.replace(".java", ""));
        } catch (ClassNotFoundException missing) {
            throw new AssertionError(missing);
        }
    }

    @ParameterizedTest
    @MethodSource("screens")
    void everyKeyHasWordsAndNoWordsAreLeftOver(Class<?> screen) throws IOException {
        assertEquals(
                Arrays.stream(screen.getEnumConstants())
                        .map(key -> ((Text) key).key())
                        .collect(Collectors.toSet()),
                words(screen).stringPropertyNames());
    }

    @ParameterizedTest
    @MethodSource("screens")
    void theWordsCanBeSaid(Class<?> screen) throws IOException {
        Properties words = words(screen);
        for (String key : words.stringPropertyNames()) {
            String text = words.getProperty(key);
            assertFalse(text.isBlank(), key);
            assertFalse(
                    text.replace("''", "").contains("'"),
                    key + ": a single straight apostrophe hides what follows it; write ’, or two of them");
            int parts = new MessageFormat(text, Locale.ROOT).getFormatsByArgumentIndex().length;
            for (int part = 0; part < parts; part++)
                assertTrue(text.contains("{" + part), key + " leaves {" + part + "} out: " + text);
        }
    }

    private static Properties words(Class<?> screen) throws IOException {
        Properties words = new Properties();
        try (InputStream file = screen.getResourceAsStream(screen.getSimpleName() + ".properties")) {
            words.load(new InputStreamReader(Objects.requireNonNull(file, screen.getName()), StandardCharsets.UTF_8));
        }
        return words;
    }
}
