package fifthform.curves.setup;

import java.util.Objects;

/** A probe's name within one session, for example {@code bowl}: lower-case letters, digits, hyphens. */
public record ProbeId(String name) {
    public ProbeId {
        Objects.requireNonNull(name, "name");
        if (!name.matches("[a-z0-9][a-z0-9-]*")) {
            throw new IllegalArgumentException("name must be lower-case letters, digits and hyphens, was " + name);
        }
    }

    @Override
    public String toString() {
        return name;
    }
}
