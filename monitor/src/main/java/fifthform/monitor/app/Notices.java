package fifthform.monitor.app;

import fifthform.curves.setup.Origin;
import fifthform.monitor.texts.LiveText;

/**
 * The standing line of a session: what a newcomer must know of practice, and the cautions of a real one. Acts in braces
 * stand for their keys.
 */
final class Notices {
    private Notices() {}

    static String of(Origin origin) {
        return (origin == Origin.SIMULATED ? LiveText.NOTICE_OF_PRACTICE : LiveText.NOTICE_OF_A_REAL_BATCH).say();
    }

    /** The keys stand below; what they are for stands here. */
    static String ofTraining() {
        return LiveText.NOTICE_OF_TRAINING.say();
    }
}
