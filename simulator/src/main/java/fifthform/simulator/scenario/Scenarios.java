package fifthform.simulator.scenario;

import fifthform.curves.check.Nearest;
import fifthform.curves.check.Parsed;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The scenarios that come with the program: every text file in the resources' folder, so that adding one is enough. */
public final class Scenarios {
    /** What is practised when nobody names a scenario; also the file by which the folder is found. */
    public static final String FIRST = "first-light";

    private static final String ENDING = ".txt";

    private final Map<String, String> textById;

    private Scenarios(Map<String, String> textById) {
        this.textById = new TreeMap<>(textById);
    }

    /** Lists the folder, in the file system or inside the program's jar. */
    public static Scenarios builtIn() {
        URL known = Scenarios.class.getResource("/scenarios/" + FIRST + ENDING);
        if (known == null) throw new IllegalStateException("the program is incomplete: no scenarios/" + FIRST + ENDING);
        try {
            return new Scenarios(textsBeside(known));
        } catch (IOException e) {
            throw new UncheckedIOException("the program's own scenarios cannot be read", e);
        }
    }

    /** A jar is opened privately, so that nobody else's open view of it is disturbed; it needs no entry for the folder. */
    static Map<String, String> textsBeside(URL known) throws IOException {
        if (!known.getProtocol().equals("jar")) return textsIn(path(known).getParent());
        JarURLConnection inJar = (JarURLConnection) known.openConnection();
        Path jar = path(inJar.getJarFileURL());
        try (FileSystem files = FileSystems.newFileSystem(jar, (ClassLoader) null)) {
            return textsIn(files.getPath(inJar.getEntryName()).getParent());
        }
    }

    private static Map<String, String> textsIn(Path folder) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(ENDING)).collect(Collectors.toList())) {
                String name = file.getFileName().toString();
                String id = name.substring(0, name.length() - ENDING.length());
                texts.put(id, Files.readString(file, StandardCharsets.UTF_8));
            }
        }
        return texts;
    }

    private static Path path(URL file) throws IOException {
        try {
            return Path.of(file.toURI());
        } catch (URISyntaxException e) {
            throw new IOException("not a file: " + file, e);
        }
    }

    /** Their names, in alphabetical order. */
    public Set<String> ids() {
        return Collections.unmodifiableSet(textById.keySet());
    }

    /** The scenario of this name, or what is wrong: most often that there is none. */
    public Parsed<Scenario> find(String id) {
        String text = textById.get(id);
        if (text != null) return ScenarioText.parse(id, text);
        String known = String.join(", ", textById.keySet());
        String near = Nearest.to(id, textById.keySet())
                .map(n -> "Did you mean \"" + n + "\"? ")
                .orElse("");
        return Parsed.refused(
                "scenario \"" + id + "\"",
                "There is no practice scenario of this name.",
                near + "Known: " + known + ".");
    }
}
