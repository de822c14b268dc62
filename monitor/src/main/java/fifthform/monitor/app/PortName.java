package fifthform.monitor.app;

import fifthform.curves.setup.Role;
import java.util.Objects;
import java.util.Optional;

/**
 * A port as the maker names it, {@code /dev/ttyUSB0} or {@code /dev/ttyUSB0@T2}.
 *
 * @param port the port or the directory, as {@code --probe} takes it
 * @param channel what stands behind the last {@code @}: the channel's number or the adapter's own name for it
 */
record PortName(String port, Optional<String> channel) {
    private static final char BEFORE_CHANNEL = '@';

    PortName {
        Objects.requireNonNull(port, "port");
        Objects.requireNonNull(channel, "channel");
    }

    static PortName parse(String text) {
        int at = text.lastIndexOf(BEFORE_CHANNEL);
        boolean named = at > 0 && at < text.length() - 1;
        return named
                ? new PortName(text.substring(0, at), Optional.of(text.substring(at + 1)))
                : new PortName(text, Optional.empty());
    }

    /** As {@link #parse} reads it. */
    @Override
    public String toString() {
        return channel.map(name -> port + BEFORE_CHANNEL + name).orElse(port);
    }

    /** The option that names a probe with this role. */
    static String option(Role role) {
        return role == Role.BOWL ? "--probe" : "--" + role.word() + "-probe";
    }

    /** The option that names how that probe's adapter talks. */
    static String talkOption(Role role) {
        return role == Role.BOWL ? "--talk" : "--" + role.word() + "-talk";
    }
}
