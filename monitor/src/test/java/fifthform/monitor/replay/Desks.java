package fifthform.monitor.replay;

import static org.junit.jupiter.api.Assertions.fail;

import fifthform.monitor.settings.Units;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Objects;

/** Recorded demo sessions, copied to where a test may write beside them, and desks with them on it. */
public final class Desks {
    public static final Instant WRITTEN = Instant.parse("2026-02-04T09:00:00Z");

    private Desks() {}

    /** A copy of a demo tape in this folder. */
    public static Path tape(String name, Path folder) {
        String file = name + ".tempering.jsonl";
        try (InputStream bytes = Desks.class.getResourceAsStream("/tapes/" + file)) {
            Files.createDirectories(folder);
            Path copy = folder.resolve(file);
            Files.copy(Objects.requireNonNull(bytes, file), copy);
            return copy;
        } catch (IOException e) {
            return fail(e);
        }
    }

    static Recording read(Path file) {
        return Recording.read(file).fold(r -> r, problems -> fail(problems.toString()));
    }

    /** A desk with this session on it, that computes nothing by itself. */
    public static ReplayDesk desk(Path file) {
        return desk(file, Units.CELSIUS, WhatIfs.NONE);
    }

    static ReplayDesk desk(Path file, Units units, WhatIfs whatIfs) {
        return new ReplayDesk(read(file), units, new KnownWords(units), whatIfs, () -> WRITTEN);
    }

    /** The same with all computed before this returns, but for the moment that is looked at. */
    public static ReplayDesk computed(Path file) {
        ReplayDesk desk = desk(file);
        desk.computeAll();
        return desk;
    }

    /** The same with causes and what-ifs, as the command shows it. */
    public static ReplayDesk withCauses(Path file) {
        Recording recording = read(file);
        CauseFindings causes = new CauseFindings(recording, Units.CELSIUS);
        ReplayDesk desk = new ReplayDesk(recording, Units.CELSIUS, causes, causes, () -> WRITTEN);
        desk.computeAll();
        return desk;
    }
}
