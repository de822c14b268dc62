package fifthform.monitor.house;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The tree that this test was built from: its pages and its sources, as text. */
final class House {
    static final List<String> MODULES = List.of("curves", "probe-driver", "simulator", "monitor");

    static final Path ROOT = root();

    private static final Pattern JOINED = Pattern.compile("\"\\s*\\+\\s*\"");

    private House() {}

    /** A page at the top of the tree. */
    static String page(String name) {
        return text(ROOT.resolve(name));
    }

    /** The part of a page under the heading {@code ## title}, up to the next heading of that size. */
    static String section(String page, String title) {
        String heading = "\n## " + title + "\n";
        int begin = page.indexOf(heading);
        if (begin < 0) throw new AssertionError("the page has no section \"" + title + "\"");
        int end = page.indexOf("\n## ", begin + heading.length());
        return page.substring(begin + heading.length(), end < 0 ? page.length() : end);
    }

    /** The cells of every row of every table in a text, without header and ruler. */
    static List<List<String>> rows(String text) {
        List<List<String>> rows = new ArrayList<>();
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            boolean header = i + 1 < lines.size() && lines.get(i + 1).startsWith("| ---");
            if (!line.startsWith("|") || line.startsWith("| ---") || header) continue;
            // A bar within a cell is written \| so that it does not end it.
            rows.add(Stream.of(line.substring(1, line.lastIndexOf('|')).split("(?<!\\\\)\\|", -1))
                    .map(String::strip)
                    .toList());
        }
        return rows;
    }

    /** Every match of an expression in a text. */
    static List<MatchResult> matches(String expression, String text) {
        return Pattern.compile(expression, Pattern.MULTILINE)
                .matcher(text)
                .results()
                .toList();
    }

    /** All sources of the program, without tests. */
    static List<Path> mainSources() {
        return sources("src/main/java");
    }

    /** All sources of tests. */
    static List<Path> testSources() {
        return sources("src/test/java");
    }

    /** The source that declares a top-level class of this name. */
    static Path source(String className) {
        return mainSources().stream()
                .filter(file -> file.getFileName().toString().equals(className + ".java"))
                .findFirst()
                .orElseThrow(() -> new AssertionError("there is no class " + className));
    }

    /** A source with texts that were split over lines put together again. */
    static String joinedTexts(Path source) {
        return JOINED.matcher(text(source)).replaceAll("");
    }

    /** The package of a source, without what all of them share: {@code monitor.model}. */
    static String room(Path source) {
        Path folder = source.getParent();
        StringBuilder room = new StringBuilder();
        for (Path part : folder.subpath(indexOf(folder, "fifthform") + 1, folder.getNameCount()))
            room.append(room.isEmpty() ? "" : ".").append(part);
        return room.toString();
    }

    private static int indexOf(Path path, String name) {
        int at = 0;
        while (!path.getName(at).toString().equals(name)) at++;
        return at;
    }

    /** The files of the program's texts; each bears the name of its keys. */
    static List<Path> wordFiles() {
        try (Stream<Path> files = Files.list(ROOT.resolve("monitor/src/main/resources/fifthform/monitor/texts"))) {
            return files.sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A file's name without its ending. */
    static String bareName(Path file) {
        return file.getFileName().toString().replaceFirst("\\.\\w+$", "");
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> sources(String folder) {
        return MODULES.stream()
                .map(module -> ROOT.resolve(module).resolve(folder))
                .filter(Files::isDirectory)
                .flatMap(House::javaFiles)
                .toList();
    }

    private static Stream<Path> javaFiles(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".java")).sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Tests run in the folder of their module, or of the whole. */
    private static Path root() {
        Path here = Path.of("").toAbsolutePath();
        while (here != null && !Files.exists(here.resolve("probe-driver").resolve("pom.xml"))) here = here.getParent();
        if (here == null) throw new IllegalStateException("the tests must run within the tree");
        return here;
    }
}
