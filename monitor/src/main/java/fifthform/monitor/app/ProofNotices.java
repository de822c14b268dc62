package fifthform.monitor.app;

import fifthform.monitor.texts.ProofText;
import java.util.List;

/** What the maker is told before a sample is taken: how to do it, and the cautions that go with it. */
final class ProofNotices {
    private ProofNotices() {}

    static List<String> sample(String start) {
        return List.of(
                ProofText.DRY_THE_PROBE.say(),
                ProofText.FILL_THE_CUP_FROM_THE_STIRRED.say(start),
                ProofText.HANG_THE_TIP_ON_THE_AXIS.say(),
                ProofText.WITHIN_20_S_HANG_THE_CUP.say(),
                ProofText.THROW_THE_SAMPLE_AWAY.say(),
                ProofText.MILK_OR_NUTS_IN_IT_THIS.say());
    }

    static List<String> melted(String start) {
        return List.of(
                ProofText.DRY_THE_PROBE.say(),
                ProofText.TAKE_CHOCOLATE_THAT_WAS_HELD.say(),
                ProofText.LET_IT_COOL_IN_THE_CUP.say(start),
                ProofText.THEN_HANG_THE_CUP_INTO_THE.say(),
                ProofText.THROW_THE_SAMPLE_AWAY_PROOF_NOTICES.say());
    }

    static List<String> smear() {
        return List.of(
                ProofText.DRAW_A_CLEAN_DRY_COOL_KNIFE.say(),
                ProofText.LAY_IT_DOWN_AT_18_TO.say(),
                ProofText.IT_IS_SET_WHEN_A_FINGER.say());
    }
}
