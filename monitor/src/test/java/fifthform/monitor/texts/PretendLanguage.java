package fifthform.monitor.texts;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Properties;
import java.util.ResourceBundle;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A language that nobody speaks, made from the English by rule: every letter has an accent, and every text is a third
 * longer. What stays without accents was not taken from the texts. While it is open, the program speaks it.
 */
public final class PretendLanguage {
    /**
     * Its code, of those that ISO 639-2 keeps for local use: qaa to qtz. Tests run in several processes over the same
     * folders, and none may take the files of another away. The first of the codes is nobody's.
     */
    public static final String CODE = code(ProcessHandle.current().pid());

    private static final Locale LANGUAGE = Locale.forLanguageTag(CODE);

    private static final Path WORDS = Path.of("src/main/resources/fifthform/monitor/texts");
    private static final String PLAIN = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ";
    private static final String ACCENTED = "áƀçđéƒğĥíĵķłɱñóþɋřšţúṽŵẋýžÁƁÇĐÉƑĞĤÍĴĶŁṀÑÓÞɊŘŠŢÚṼŴẊÝŽ";

    /** What a translator leaves: choices are looked into; keys in angles, commands, options and signs of formats are not. */
    private static final Pattern LEFT = Pattern.compile(
            "\\{(?:[^{}]|\\{[^{}]*})*}|<[a-z-]+>|monitor/run(?: [a-z][a-z-]*)?|--[a-z][a-z-]*(?: [A-Z]+)?|%.");

    private static final Pattern CHOICE = Pattern.compile("([0-9]+[#<])([^|]*)");

    private final Locale before = Locale.getDefault();
    private final List<Path> files = new ArrayList<>();

    private PretendLanguage() {}

    private static String code(long process) {
        long number = 1 + process % (20 * 26 - 1);
        return "q" + (char) ('a' + number / 26) + (char) ('a' + number % 26);
    }

    /** Writes its files where the program looks for them, and speaks it until it is closed. */
    public static PretendLanguage spoken() {
        PretendLanguage language = new PretendLanguage();
        names().forEach(language::translate);
        ResourceBundle.clearCache();
        Locale.setDefault(LANGUAGE);
        return language;
    }

    /** The names of all files of texts. */
    static List<String> names() {
        try (Stream<Path> english = Files.list(WORDS)) {
            return english.map(file -> file.getFileName().toString().replace(".properties", ""))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void translate(String name) {
        Properties words = english(name);
        words.replaceAll((key, text) -> of((String) text));
        try {
            Path place = Path.of(PretendLanguage.class
                            .getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .resolve("fifthform/monitor/texts/" + name + "_" + LANGUAGE + ".properties");
            files.add(place);
            try (Writer file = Files.newBufferedWriter(place)) {
                words.store(file, null);
            }
        } catch (IOException | URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    static Properties english(String name) {
        Properties words = new Properties();
        try (InputStream file = Text.class.getResourceAsStream(name + ".properties")) {
            words.load(new InputStreamReader(Objects.requireNonNull(file, name), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return words;
    }

    /** A text in this language. */
    static String of(String english) {
        String accented = accented(english);
        long letters = english.chars().filter(Character::isLetter).count();
        int end = accented.stripTrailing().length();
        return accented.substring(0, end) + longer(letters) + accented.substring(end);
    }

    /** A third of the letters, in words of a usual length. */
    private static String longer(long letters) {
        return Stream.generate(() -> "ẋ")
                .limit((letters + 2) / 3)
                .collect(Collectors.joining())
                .replaceAll(".{7}", "$0 ")
                .stripTrailing();
    }

    private static String accented(String english) {
        StringBuilder all = new StringBuilder();
        int at = 0;
        Matcher left = LEFT.matcher(english);
        while (left.find()) {
            all.append(letters(english.substring(at, left.start()))).append(kept(left.group()));
            at = left.end();
        }
        return all.append(letters(english.substring(at))).toString();
    }

    private static String kept(String part) {
        String choice = ",choice,";
        if (!part.startsWith("{") || !part.contains(choice)) return part;
        int words = part.indexOf(choice) + choice.length();
        return part.substring(0, words)
                + CHOICE.matcher(part.substring(words, part.length() - 1)).replaceAll(PretendLanguage::chosen)
                + "}";
    }

    private static String chosen(MatchResult choice) {
        return Matcher.quoteReplacement(choice.group(1) + accented(choice.group(2)));
    }

    private static String letters(String english) {
        StringBuilder said = new StringBuilder();
        for (char letter : english.toCharArray()) {
            int place = PLAIN.indexOf(letter);
            said.append(place < 0 ? letter : ACCENTED.charAt(place));
        }
        return said.toString();
    }

    /** The program speaks as before. */
    public void close() {
        Locale.setDefault(before);
        ResourceBundle.clearCache();
        try {
            for (Path file : files) Files.deleteIfExists(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
