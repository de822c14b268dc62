package fifthform.monitor.app;

import fifthform.monitor.settings.Units;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Where a check speaks with the maker: lines, one value that changes in place on a terminal, and the Enter key. */
final class CheckDesk {
    private static final Duration EVERY = Duration.ofSeconds(5);
    private static final int WIDTH = 76;

    private final PrintWriter out;
    private final InputStream keys;
    private final Manner manner;
    private final Units units;
    private Optional<Instant> lastPrinted = Optional.empty();
    private boolean live;

    /** Who reads along. */
    enum Manner {
        /** Somebody with a screen and an Enter key. */
        AT_A_TERMINAL,
        /** A pipe or a file: nobody waits and no key comes. */
        IN_LINES
    }

    private CheckDesk(PrintWriter out, InputStream keys, Manner manner, Units units) {
        this.out = Objects.requireNonNull(out, "out");
        this.keys = Objects.requireNonNull(keys, "keys");
        this.manner = Objects.requireNonNull(manner, "manner");
        this.units = Objects.requireNonNull(units, "units");
    }

    /** As fits who started the program. */
    static CheckDesk here(PrintWriter out, Units units) {
        return Screens.hasTerminal() ? terminal(out, System.in, units) : lines(out, units);
    }

    /** A terminal with somebody at its keys. */
    static CheckDesk terminal(PrintWriter out, InputStream keys, Units units) {
        return new CheckDesk(out, keys, Manner.AT_A_TERMINAL, units);
    }

    /** Plain lines into a pipe or file; no key is waited for. */
    static CheckDesk lines(PrintWriter out, Units units) {
        return new CheckDesk(out, InputStream.nullInputStream(), Manner.IN_LINES, units);
    }

    Manner manner() {
        return manner;
    }

    void say(String line) {
        if (live) out.println();
        live = false;
        if (manner == Manner.AT_A_TERMINAL) wrapped(line).forEach(out::println);
        else out.println(line);
    }

    /** At words, as wide as any terminal is; further lines keep the first one's indent. */
    static List<String> wrapped(String line) {
        List<String> lines = new ArrayList<>();
        String indent = line.substring(0, line.length() - line.stripLeading().length());
        String rest = line;
        while (rest.length() > WIDTH) {
            int at = rest.lastIndexOf(' ', WIDTH);
            if (at <= indent.length()) break;
            lines.add(rest.substring(0, at));
            rest = indent + rest.substring(at + 1);
        }
        lines.add(rest);
        return lines;
    }

    /** The present value: rewritten in place on a terminal, else a line every 5 s of the probe's time. */
    void value(Instant at, String text) {
        if (manner == Manner.AT_A_TERMINAL) {
            out.print("\r  " + text + " ".repeat(Math.max(0, WIDTH - text.length())));
            out.flush();
            live = true;
            return;
        }
        boolean soon = lastPrinted
                .filter(last -> Duration.between(last, at).compareTo(EVERY) < 0)
                .isPresent();
        if (soon) return;
        lastPrinted = Optional.of(at);
        out.println("  " + text);
    }

    /** Whether Enter was pressed since this was last asked. */
    boolean entered() {
        boolean enter = false;
        try {
            while (keys.available() > 0) {
                int key = keys.read();
                if (key < 0) break;
                enter |= key == '\n' || key == '\r';
            }
        } catch (IOException e) {
            // A terminal whose keys cannot be read needs none: the point is taken by itself.
            return false;
        }
        return enter;
    }

    /** Asks and waits for a line; empty where nobody is there to answer. */
    Optional<String> ask(String question) {
        if (manner != Manner.AT_A_TERMINAL) return Optional.empty();
        entered(); // what was pressed before the question answers nothing
        say(question);
        StringBuilder line = new StringBuilder();
        try {
            for (int key = keys.read(); key >= 0 && key != '\n' && key != '\r'; key = keys.read())
                line.append((char) key);
            return Optional.of(line.toString().strip());
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    String celsius(double celsius) {
        return Units.format("%.2f", units.shown(celsius)) + " " + units.symbol();
    }

    String kelvin(double kelvin) {
        return Units.format("%.2f", units.shownDifference(kelvin)) + " " + units.symbol();
    }
}
