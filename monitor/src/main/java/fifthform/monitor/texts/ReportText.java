package fifthform.monitor.texts;

/** The words of a report. */
public enum ReportText implements Text {
    /** {0} day, {1} the session. */
    TITLE,
    FOUND,
    PHASES,
    /** {0} the phase, {1} from, {2} to, {3} how long. */
    PHASE,
    CRYSTALS,
    /** {0} the word, {1} since when. */
    CRYSTALS_LAST,
    /** {0} when, {1} what. */
    AT,
    PROVED,
    /** {0} time of day, {1} sample or smear, {2} what it showed. */
    PROOF,
    PROOF_SAMPLE,
    PROOF_SMEAR,
    PROOF_CUT_OFF,
    PROOF_NOT_JUDGED,
    /** {0} why. */
    PROOFS_UNREAD,
    LOOKED,
    /** {0} age of the bars, {1} what was seen. */
    LOOK,
    PROBE,
    PROBE_SIMULATED,
    PROBE_UNCHECKED,
    /** {0} day, {1} temperature, {2} correction there, {3} uncertainty. */
    PROBE_CHECKED,
    DAY_UNKNOWN,
    ALARMS,
    NOTES,
    /** {0} how many lines. */
    MORE,
    /** {0} when the report was made. */
    FOOT
}
