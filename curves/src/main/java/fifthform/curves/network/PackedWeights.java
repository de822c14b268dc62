package fifthform.curves.network;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The weights that are packed with this class: data with their provenance, and as fixed as code. */
final class PackedWeights {
    static final String NAME = "/network/weights.txt";

    private PackedWeights() {}

    /**
     * The network that is packed under this name. Nowhere else is it asked whether there is one: with the weights in the
     * tree a missing file is a fault of the packing, and the empty answer goes.
     */
    static Optional<Network> read(String name) {
        InputStream packed = PackedWeights.class.getResourceAsStream(name);
        if (packed == null) return Optional.empty();
        try (BufferedReader in = new BufferedReader(new InputStreamReader(packed, StandardCharsets.UTF_8))) {
            return Optional.of(WeightText.read(in.lines().toList(), name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
