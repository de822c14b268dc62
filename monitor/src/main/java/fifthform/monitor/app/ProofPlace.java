package fifthform.monitor.app;

import fifthform.curves.crystal.Fat;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Origin;
import fifthform.monitor.proofs.Cups;
import fifthform.monitor.proofs.KeptCup;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.store.SessionHeader;
import fifthform.monitor.store.StoreException;
import fifthform.monitor.texts.ProofText;
import fifthform.monitor.texts.UnitText;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * What is proved: chocolate, cup, and the session it belongs to.
 *
 * @param recipe the chocolate
 * @param fat its fat
 * @param cup what is known of it in this cup
 * @param session the session it belongs to
 */
record ProofPlace(Recipe recipe, Fat fat, KeptCup cup, Optional<String> session) {
    static final String USUAL_CUP = "cup";
    private static final String USUAL_CHOCOLATE = "dark";
    private static final String NO_SESSION = "none";

    ProofPlace {
        Objects.requireNonNull(recipe, "recipe");
        Objects.requireNonNull(fat, "fat");
        Objects.requireNonNull(cup, "cup");
        Objects.requireNonNull(session, "session");
    }

    /**
     * What the maker said, the rest from the running session, else from last time.
     *
     * @param mayBelong whether a session of today may be taken for its own: practice and old tables belong to none
     */
    static ProofPlace of(
            Said said, Folders folders, Settings settings, Cups.Loaded cups, boolean mayBelong, PrintWriter err)
            throws Refusal {
        Optional<SessionHeader> session = session(said.session(), folders, mayBelong);
        String id = said.chocolate()
                .or(() -> session.map(s -> s.setup().recipe().id()))
                .or(settings::lastChocolate)
                .orElse(USUAL_CHOCOLATE);
        boolean ofSession = said.chocolate().isEmpty() && session.isPresent();
        Recipe recipe = ofSession ? session.get().setup().recipe() : Chocolates.find(id, folders, err);
        Fat fat = Answers.orRefuse(Fat.of(recipe.composition()), Exit.NOT_UNDERSTOOD);
        String name = said.cup().orElse(USUAL_CUP);
        if (!KeptCup.isId(name))
            throw new Refusal(Exit.NOT_UNDERSTOOD, ProofText.CUP_WAS_NOTHING_WAS_DONE_USE.say(name));
        KeptCup cup = cups.find(recipe.id(), name).orElseGet(() -> KeptCup.named(recipe.id(), name));
        if (said.grams().isPresent())
            cup = cup.withGrams(Within.number(said.grams().get(), 4, 30, "--grams", UnitText.GRAMS_IN_FULL.say()));
        return new ProofPlace(recipe, fat, cup, session.map(SessionHeader::session));
    }

    /** The same cup as it is kept by now, with the weight of this sample. */
    KeptCup weighed(KeptCup now) {
        return cup.grams().isPresent() ? now.withGrams(cup.grams().getAsDouble()) : now;
    }

    /** What the maker said of it. */
    record Said(Optional<String> chocolate, Optional<String> cup, Optional<Double> grams, Optional<String> session) {}

    private static Optional<SessionHeader> session(Optional<String> said, Folders folders, boolean mayBelong)
            throws Refusal {
        if (said.filter(NO_SESSION::equals).isPresent()) return Optional.empty();
        if (said.isEmpty() && !mayBelong) return Optional.empty();
        try {
            SessionFiles files = new SessionFiles(folders.sessions());
            if (said.isPresent() && !said.get().equals(SessionNames.LAST)) {
                String name = SessionFiles.name(SessionNames.find(said.get(), folders.sessions()));
                return files.list().stream()
                        .flatMap(l -> header(l).stream())
                        .filter(h -> h.session().equals(name))
                        .findFirst();
            }
            for (SessionFiles.Listed listed : files.list()) {
                Optional<SessionHeader> header = header(listed);
                if (header.isEmpty() || header.get().setup().origin() != Origin.REAL) continue;
                boolean fresh = said.isPresent() || isFresh(listed);
                return fresh ? header : Optional.empty();
            }
            return Optional.empty();
        } catch (StoreException e) {
            throw new Refusal(Exit.FILE, ProofText.WITH_SESSION_NONE_THE_PROOF.say(e.getMessage()));
        }
    }

    private static Optional<SessionHeader> header(SessionFiles.Listed listed) {
        return listed.header().fold(Optional::of, problems -> Optional.empty());
    }

    /** Written to within the time in which a session is gone on with. */
    private static boolean isFresh(SessionFiles.Listed listed) {
        try {
            Instant written = Files.getLastModifiedTime(listed.file()).toInstant();
            return Duration.between(written, Instant.now()).compareTo(SessionFiles.GOES_ON_WITHIN) < 0;
        } catch (IOException gone) {
            return false;
        }
    }
}
