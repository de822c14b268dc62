package fifthform.monitor.app;

import fifthform.monitor.proofs.Cups;
import fifthform.monitor.proofs.KeptCup;
import fifthform.monitor.proofs.ProofFile;
import fifthform.monitor.proofs.ProofHead;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.texts.ProofText;
import java.io.PrintWriter;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What every way of proving works with: what the maker said of place and bath, what is known of cups, and where to answer.
 *
 * @param folders where files are kept
 * @param desk tells the maker what to do and what came of it
 * @param cups where cups are kept
 * @param known what was read of them
 * @param choices those of last time
 * @param said chocolate, cup, weight and session
 * @param bath what the probe read in the ice water, where the maker said it, °C
 * @param json whether the answer is for scripts, on {@code out}
 * @param out takes answers
 * @param err takes remarks
 */
record ProofTask(
        Folders folders,
        CheckDesk desk,
        Cups cups,
        Cups.Loaded known,
        Settings choices,
        ProofPlace.Said said,
        OptionalDouble bath,
        boolean json,
        PrintWriter out,
        PrintWriter err) {
    ProofPlace place(boolean mayBelong) throws Refusal {
        return ProofPlace.of(said, folders, choices, known, mayBelong, err);
    }

    /** The place of an old recording, which knows its chocolate and its cup; what the maker said comes first. */
    ProofPlace place(ProofHead recorded) throws Refusal {
        ProofPlace.Said with = new ProofPlace.Said(
                said.chocolate().or(() -> Optional.of(recorded.chocolate())),
                said.cup().or(recorded::cup),
                said.grams(),
                said.session());
        return ProofPlace.of(with, folders, choices, known, false, err);
    }

    ProofHead head(ProofHead.Kind kind, ProofPlace place, String origin) {
        Instant now = Instant.now();
        return new ProofHead(
                ProofFile.name(
                        now,
                        ZoneId.systemDefault().getRules().getOffset(now),
                        place.recipe().id()),
                now,
                kind,
                origin,
                place.recipe().id(),
                place.fat().fatFraction(),
                place.fat().milkFatInFatFraction(),
                kind == ProofHead.Kind.SMEAR
                        ? Optional.empty()
                        : Optional.of(place.cup().cup()),
                place.session());
    }

    static String words(KeptCup cup) {
        int good = cup.goodBends().size();
        return ProofText.CUP.say(
                cup.cup(),
                cup.traits().isPresent() ? ProofText.CALIBRATED.say() : ProofText.NOT_CALIBRATED.say(),
                good);
    }
}
