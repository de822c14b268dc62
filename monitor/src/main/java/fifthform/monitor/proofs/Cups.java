package fifthform.monitor.proofs;

import fifthform.curves.check.Problem;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.settings.KeptFiles;
import fifthform.monitor.texts.ProofText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Chocolates in cups on disk, one file each pair, written to a new file and moved into place. Reading never fails:
 * what is damaged is kept under another name and said.
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
        KeptFiles.replace(file(cup), CupText.write(cup));
    }

    /**
     * Changes what is known of a cup as it is kept now, not as it was when a sample of a quarter of an hour began: a mark
     * or another sample may have come in between, and must not be lost.
     *
     * @param cup the cup as it was read; where none is kept, it is changed itself
     * @throws IOException it cannot be written; what was kept before stands
     */
    public KeptCup change(KeptCup cup, UnaryOperator<KeptCup> change) throws IOException {
        KeptCup changed = change.apply(load().find(cup.chocolate(), cup.cup()).orElse(cup));
        keep(changed);
        return changed;
    }

    private Path file(KeptCup cup) {
        return folder.resolve(cup.chocolate() + "." + cup.cup() + ENDING);
    }

    private List<Path> files(List<Problem> problems) {
        return KeptFiles.in(
                folder,
                ENDING,
                ProofText.THIS_IS_A_FILE_AND_THE.say(),
                why -> ProofText.WHAT_IS_KNOWN_OF_CUPS_CANNOT.say(why),
                problems);
    }

    private Optional<KeptCup> read(Path file, List<Problem> problems) {
        try {
            // A byte that is no UTF-8 costs its line and not the cup.
            CupText.Read read = CupText.read(new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
            KeptCup cup = read.cup();
            if (!file(cup).equals(file))
                throw new UnreadableJson(ProofText.IT_SAYS_TO_BE_IN.say(cup.chocolate(), cup.cup()));
            if (!read.complaints().isEmpty()) problems.add(partly(file, read));
            return Optional.of(cup);
        } catch (UnreadableJson | IOException e) {
            problems.add(aside(file, e));
            return Optional.empty();
        }
    }

    /** The lines that can be read stay known; the file as it was is kept beside them. */
    private static Problem partly(Path file, CupText.Read read) {
        String what = ProofText.SOME_OF_WHAT_IS_KNOWN_OF.say(String.join("; ", read.complaints()));
        return KeptFiles.mended(file, what, CupText.write(read.cup()), "delete");
    }

    private static Problem aside(Path file, Exception why) {
        String what = ProofText.WHAT_IS_KNOWN_OF_THIS_CUP.say(why.getMessage());
        return KeptFiles.aside(file, what, "file");
    }
}
