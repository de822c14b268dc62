package fifthform.monitor.proofs;

import fifthform.curves.check.Problem;
import fifthform.monitor.json.UnreadableJson;
import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Chocolates in cups on disk, one file each pair, written to a new file and moved into place. Reading never fails: what is damaged is
 * kept under another name and said.
 */
public final class Cups {
    private static final String ENDING = ".jsonl";

    private final Path folder;

    /** @param folder where the files lie; made when something is kept */
    public Cups(Path folder) {
        this.folder = Objects.requireNonNull(folder, "folder");
    }

    /** What is known, and what had to be left aside. */
    public record Loaded(List<KeptCup> cups, List<Problem> problems) {
        public Loaded {
            cups = List.copyOf(cups);
            problems = List.copyOf(problems);
        }

        /** What is known of this chocolate in this cup. */
        public Optional<KeptCup> find(String chocolate, String cup) {
            return cups.stream()
                    .filter(c -> c.chocolate().equals(chocolate) && c.cup().equals(cup))
                    .findFirst();
        }

        /** The cup whose curves hold this recording. */
        public Optional<KeptCup> holding(String proof) {
            return cups.stream()
                    .filter(c -> c.curves().stream().anyMatch(k -> k.proof().equals(proof)))
                    .findFirst();
        }
    }

    /** Reads all files, in the order of their names. */
    public Loaded load() {
        List<KeptCup> cups = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (Path file : files(problems)) read(file, problems).ifPresent(cups::add);
        return new Loaded(cups, problems);
    }

    /** @throws IOException it cannot be written; what was kept before stands */
    public void keep(KeptCup cup) throws IOException {
        Files.createDirectories(folder);
        Path file = file(cup);
        Path fresh = file.resolveSibling(file.getFileName() + ".new");
        Files.writeString(fresh, CupText.write(cup));
        try {
            Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private Path file(KeptCup cup) {
        return folder.resolve(cup.chocolate() + "." + cup.cup() + ENDING);
    }

    private List<Path> files(List<Problem> problems) {
        if (!Files.isDirectory(folder)) return List.of();
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ENDING))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            problems.add(new Problem(
                    folder.toString(),
                    "What is known of cups cannot be listed (" + e.getMessage() + "), so every cup counts as new.",
                    "Check that you may read this folder."));
            return List.of();
        }
    }

    private Optional<KeptCup> read(Path file, List<Problem> problems) {
        try {
            CupText.Read read = CupText.read(Files.readString(file));
            KeptCup cup = read.cup();
            if (!file(cup).equals(file))
                throw new UnreadableJson("it says to be " + cup.chocolate() + " in " + cup.cup());
            if (!read.complaints().isEmpty()) problems.add(partly(file, read));
            return Optional.of(cup);
        } catch (UnreadableJson | IOException e) {
            problems.add(aside(file, e));
            return Optional.empty();
        }
    }

    /** The lines that can be read stay known; the file as it was is kept beside them. */
    private Problem partly(Path file, CupText.Read read) {
        String what = "Some of what is known of this cup cannot be read (" + String.join("; ", read.complaints())
                + "), so those runs and curves do not count.";
        try {
            Path copy = Files.copy(file, free(file, ".unreadable"));
            keep(read.cup());
            return new Problem(
                    file.toString(),
                    what,
                    "The rest stays known. The file as it was is kept as " + copy.getFileName()
                            + ": mend that line there and give it back this name, or delete it.");
        } catch (IOException e) {
            return new Problem(file.toString(), what, "Check that you may read and change this file.");
        }
    }

    private static Problem aside(Path file, Exception why) {
        String what = "What is known of this cup cannot be read (" + why.getMessage() + "), so it counts as new.";
        try {
            Path aside = Files.move(file, free(file, ".unreadable"));
            return new Problem(file.toString(), what, "The file is kept as " + aside.getFileName() + ".");
        } catch (IOException e) {
            return new Problem(file.toString(), what, "Check that you may read and change this file.");
        }
    }

    private static Path free(Path file, String ending) {
        Path other = file.resolveSibling(file.getFileName() + ending);
        for (int number = 2; Files.exists(other); number++)
            other = file.resolveSibling(file.getFileName() + ending + "-" + number);
        return other;
    }
}
