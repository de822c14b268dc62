package fifthform.monitor.start;

import fifthform.monitor.texts.StartText;

/** One of the three steps. */
public enum StartStep {
    CHOCOLATE(StartText.STEP_CHOCOLATE),
    BOWL(StartText.STEP_BOWL),
    GO(StartText.STEP_GO);

    private final StartText words;

    StartStep(StartText words) {
        this.words = words;
    }

    /** Its name on the page. */
    public String words() {
        return words.say();
    }
}
