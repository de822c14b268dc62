package fifthform.monitor.app;

import fifthform.curves.proof.Unfit;
import fifthform.curves.proof.Verdict;
import fifthform.monitor.texts.ProofText;

/** Why a sample was judged so, or not judged, in sentences. */
final class ProofWords {
    private ProofWords() {}

    /** What is wrong with a curve, and what to do. */
    static String of(Unfit unfit) {
        return switch (unfit) {
            case TIMES_GO_BACK -> ProofText.UNFIT_TIMES_GO_BACK.say();
            case TOO_FEW -> ProofText.UNFIT_TOO_FEW.say();
            case COARSE -> ProofText.UNFIT_COARSE.say();
            case NOT_IN_ICE -> ProofText.UNFIT_NOT_IN_ICE.say();
            case START_COLD -> ProofText.UNFIT_START_COLD.say();
            case START_HOT -> ProofText.UNFIT_START_HOT.say();
            case WARM_BATH -> ProofText.UNFIT_WARM_BATH.say();
            case ICE_GONE -> ProofText.UNFIT_ICE_GONE.say();
            case GAP -> ProofText.UNFIT_GAP.say();
            case STIRRED -> ProofText.UNFIT_STIRRED.say();
            case MOVED -> ProofText.UNFIT_MOVED.say();
            case AT_WALL -> ProofText.UNFIT_AT_WALL.say();
            case TOO_SLOW -> ProofText.UNFIT_TOO_SLOW.say();
            case TOO_SHORT -> ProofText.UNFIT_TOO_SHORT.say();
        };
    }

    static String of(Verdict.Reason reason) {
        return switch (reason) {
            case NO_BEND -> ProofText.WHY_NO_BEND.say();
            case NEAREST_ON_LINE -> ProofText.WHY_NEAREST_ON_LINE.say();
            case BETWEEN_CLASSES -> ProofText.WHY_BETWEEN_CLASSES.say();
            case DISAGREE -> ProofText.WHY_DISAGREE.say();
            case LIKE_GOOD -> ProofText.WHY_LIKE_GOOD.say();
            case COLDER_THAN_GOOD -> ProofText.WHY_COLDER_THAN_GOOD.say();
            case LIKE_NO_TEMPER -> ProofText.WHY_LIKE_NO_TEMPER.say();
            case WARMER_AND_FLATTER -> ProofText.WHY_WARMER_AND_FLATTER.say();
            case UNLIKE_GOOD -> ProofText.WHY_UNLIKE_GOOD.say();
        };
    }
}
