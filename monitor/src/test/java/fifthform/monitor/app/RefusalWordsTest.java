package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.probecheck.Objection;
import fifthform.curves.proof.Unfit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A probe check or a proof that cannot go on says why in one sentence, and what to do in the next. */
class RefusalWordsTest {
    @ParameterizedTest
    @EnumSource
    void everyCurveThatIsNotJudged(Unfit unfit) {
        sayWhatToDo(ProofWords.of(unfit));
    }

    @ParameterizedTest
    @EnumSource
    void everyPointThatIsNotTaken(Objection objection) {
        sayWhatToDo(CheckWords.of(objection));
    }

    private static void sayWhatToDo(String words) {
        assertTrue(words.split("[.:?] ").length >= 2, words);
    }
}
