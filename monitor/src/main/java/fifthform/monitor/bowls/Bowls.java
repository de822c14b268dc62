package fifthform.monitor.bowls;

import fifthform.curves.check.Problem;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.settings.KeptFiles;
import fifthform.monitor.texts.BowlsText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The bowls on disk, one file each, written to a new file and moved into place. Reading never fails: what is damaged is
 * kept under another name and said.
 */
public final class Bowls {
    private static final String ENDING = ".jsonl";

    private final Path folder;

    /** @param folder where the files lie; made when something is kept */
    public Bowls(Path folder) {
        this.folder = Objects.requireNonNull(folder, "folder");
    }

    /** What is known, and what had to be left aside. */
    public record Loaded(List<KeptBowl> bowls, List<Problem> problems) {
        public Loaded {
            bowls = List.copyOf(bowls);
            problems = List.copyOf(problems);
        }

        /** The bowl of this id or name. */
        public Optional<KeptBowl> find(String idOrName) {
            String id = KeptBowl.idOf(idOrName);
            Optional<KeptBowl> named =
                    bowls.stream().filter(b -> b.name().equals(idOrName)).findFirst();
            return named.or(() -> bowls.stream().filter(b -> b.id().equals(id)).findFirst());
        }
    }

    /** Reads all files, in the order of their names. */
    public Loaded load() {
        List<KeptBowl> bowls = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (Path file : files(problems)) read(file, problems).ifPresent(bowls::add);
        return new Loaded(bowls, problems);
    }

    /** @throws IOException it cannot be written; what was kept before stands */
    public void keep(KeptBowl bowl) throws IOException {
        KeptFiles.replace(file(bowl.id()), BowlText.write(bowl));
    }

    /**
     * Forgets a bowl: its file is kept under another name and not read any more.
     *
     * @return the other name
     * @throws IOException it cannot be renamed; the bowl stays known
     */
    public Path forget(KeptBowl bowl) throws IOException {
        return Files.move(file(bowl.id()), KeptFiles.free(file(bowl.id()), ".forgotten"));
    }

    private Path file(String id) {
        return folder.resolve(id + ENDING);
    }

    private List<Path> files(List<Problem> problems) {
        return KeptFiles.in(
                folder,
                ENDING,
                BowlsText.THIS_IS_A_FILE_AND_THE.say(),
                why -> BowlsText.WHAT_THE_BOWLS_TAUGHT_CANNOT.say(why),
                problems);
    }

    private Optional<KeptBowl> read(Path file, List<Problem> problems) {
        try {
            BowlText.Read read = BowlText.read(Files.readString(file));
            KeptBowl bowl = read.bowl();
            if (!file(bowl.id()).equals(file))
                throw new UnreadableJson(BowlsText.IT_SAYS_TO_BE_THE_BOWL.say(bowl.id()));
            if (!read.complaints().isEmpty()) problems.add(partly(file, read));
            return Optional.of(bowl);
        } catch (UnreadableJson | IOException e) {
            problems.add(aside(file, e));
            return Optional.empty();
        }
    }

    /** The amounts that can be read stay known; the file as it was is kept beside them. */
    private static Problem partly(Path file, BowlText.Read read) {
        String what = BowlsText.SOME_OF_WHAT_THIS_BOWL_TAUGHT.say(String.join("; ", read.complaints()));
        return KeptFiles.mended(file, what, BowlText.write(read.bowl()), "forget");
    }

    private static Problem aside(Path file, Exception why) {
        String what = BowlsText.WHAT_THIS_BOWL_TAUGHT_CANNOT.say(why.getMessage());
        return KeptFiles.aside(file, what, "file");
    }
}
