package fifthform.monitor.catalogue;

import fifthform.curves.recipe.RecipeText;
import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/**
 * The recipes among the program's resources, found by listing the folder, so that adding one is adding a file. The
 * folder lies in a jar when the program is packed, and on the disk when it runs from the tree.
 */
final class BuiltInRecipes {
    private static final String FOLDER = "recipes/";

    private BuiltInRecipes() {}

    /** File name → text, by name. */
    static Map<String, String> texts() throws IOException {
        CodeSource source = RecipeText.class.getProtectionDomain().getCodeSource();
        if (source == null) throw new IOException("the program does not know where its own files are");
        try {
            return texts(Path.of(source.getLocation().toURI()));
        } catch (URISyntaxException e) {
            throw new IOException(e);
        }
    }

    /** The same for a folder of classes or a jar at {@code place}. */
    static Map<String, String> texts(Path place) throws IOException {
        return Files.isDirectory(place) ? inFolder(place.resolve(FOLDER)) : inJar(place);
    }

    private static Map<String, String> inFolder(Path folder) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(Recipes.ENDING)).toList()) {
                texts.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        return texts;
    }

    /** By the jar's own list and not as a file system of its own, which a slimmed-down Java may lack. */
    private static Map<String, String> inJar(Path jar) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (JarFile file = new JarFile(jar.toFile())) {
            List<JarEntry> entries = file.stream()
                    .filter(e -> e.getName().startsWith(FOLDER) && e.getName().endsWith(Recipes.ENDING))
                    .toList();
            for (JarEntry entry : entries) {
                try (InputStream bytes = file.getInputStream(entry)) {
                    texts.put(
                            entry.getName().substring(FOLDER.length()),
                            new String(bytes.readAllBytes(), StandardCharsets.UTF_8));
                }
            }
        }
        return texts;
    }
}
