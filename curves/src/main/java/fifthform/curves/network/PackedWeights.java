package fifthform.curves.network;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The weights that are packed with this class: data with their provenance, and as fixed as code. */
final class PackedWeights {
    static final String NAME = "/network/weights.txt";

    private PackedWeights() {}

    /**
     * The network that is packed under this name.
     *
     * @throws IllegalStateException where there is none: a fault of the packing
     */
    static Network read(String name) {
        InputStream packed = PackedWeights.class.getResourceAsStream(name);
        if (packed == null)
            throw new IllegalStateException(
                    "the program was packed without its " + name + "; build it again with: mvn -q clean package");
        try (BufferedReader in = new BufferedReader(new InputStreamReader(packed, StandardCharsets.UTF_8))) {
            return WeightText.read(in.lines().toList(), name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
