package fifthform.monitor.texts;

/** What the Replay screen says. */
public enum ReplayText implements Text {
    /** {0} the day, {1} the session. */
    TITLE,
    /** {0} chocolate, {1} amount, {2} bowl, {3} length. */
    SUBJECT,
    AMOUNT_UNKNOWN,
    MARK_SIMULATED,
    MARK_TABLE,
    MARK_CUT_OFF,
    MARK_DAMAGED,
    HEADLINE_FIRST,
    HEADLINE_NOTHING,
    HEADLINE_WORST,
    /** {0} since the start, {1} of how much, {2} time of day. */
    CLOCK,
    /** {0} how many times life. */
    PACE,
    PACE_MAX,
    SPAN_WHOLE,
    /** {0} from, {1} to, {2} of how much. */
    SPAN_PART,
    /** {0} since the start, {1} time of day. */
    WHEN,
    /** {0} since the start. */
    MOMENT,
    /** {0} the highest temperature. */
    FINDING_SEED_LOST,
    /** {0} percent of the fat before, {1} after. */
    FINDING_SEED_LOST_WHY,
    FINDING_CALM,
    /** {0} priority, {1} what was said, {2} the figure. */
    FINDING_ALARM,
    /** {0} what, {1} the highest reading. */
    FINDING_AT_MOST,
    WAS_HEADING_OVER,
    WAS_OVER_RANGE,
    WAS_NEAR_MELT_OUT,
    WAS_MELT_OUT,
    WAS_HEADING_UNDER,
    WAS_TOO_COOL,
    WAS_OVER_COOLED,
    WAS_MELT_TOO_HOT,
    WAS_BATH_HOT,
    WAS_PROBE_FAULT,
    WAS_NO_READING,
    WAS_READING_DOUBTFUL,
    WAS_NOT_RECORDING,
    WAS_PROBE_OUT,
    ACT_BATH,
    ACT_TABLE,
    ACT_COLD_WATER,
    ACT_STIRRED,
    ACT_STILL,
    /** {0} grams. */
    ACT_SEED_GRAMS,
    ACT_SEED,
    /** {0} the phase. */
    ACT_PHASE,
    /** {0} the alarm. */
    ACT_SEEN,
    /** {0} the alarm, {1} for how long. */
    ACT_SET_ASIDE,
    ACT_SAMPLE_GOOD,
    ACT_SAMPLE_BAD,
    ACT_SAMPLE_UNCLEAR,
    ACT_MARK,
    /** {0} the note. */
    ACT_NOTE,
    ACT_PROBE_OUT,
    ACT_PROBE_BACK,
    /** {0} what it read. */
    ACT_OTHER,
    ACT_BOWL_CONFIRMED,
    /** {0} the chocolate. */
    ACT_SETUP,
    ACT_UNDONE,
    /** {0} where. */
    SEEN_IN_CURVE,
    /** {0} the word. */
    TOLD_CRYSTALS,
    /** {0} where. */
    TOLD_TURNED,
    /** {0} priority, {1} words. */
    ALARM_WORDS,
    ROW_DID,
    ROW_TOLD,
    ROW_ALARM,
    ROW_CRYSTALS,
    BAND_MELT,
    BAND_COOL,
    BAND_WORK,
    /** {0} the limit. */
    LIMIT_MELT_OUT,
    LINE_TEMPERATURE,
    LINE_FORECAST,
    LINE_DUE,
    LINE_ALARMS,
    LINE_CRYSTALS,
    LINE_PHASE,
    NONE,
    NOTHING_DUE,
    NOTHING_SAID,
    NO_READING,
    /** {0} the reading. */
    READ,
    /** {0} temperature, {1} rate, {2} unit. */
    ESTIMATED,
    NO_ESTIMATE,
    NOT_YET,
    /** {0} temperature, {1} the cue. */
    FORECAST_TOLD,
    FORECAST_NOT_TOLD,
    NO_FORECAST,
    /** {0} middle, {1} lower, {2} upper end. */
    FORECAST_TURNS,
    FORECAST_FAN,
    FORECAST_FAN_LEFT,
    /** {0} middle, {1} lower, {2} upper end, {3} if left, {4} how long. */
    FORECAST_IF_LIFTED,
    /** {0} of which number, {1} of how many, {2} when. */
    AGREEMENT_DIFFERS,
    /** {0} percent. */
    AGREEMENT_UNDER_WAY,
    /** {0} how many. */
    AGREEMENT_SAME,
    /** {0} what is computed now. */
    DIFFERS,
    /** {0} how long. */
    STOOD,
    STOOD_TO_END,
    /** {0} how long. */
    SEEN_AFTER,
    /** {0} how long, {1} the line. */
    LEAD,
    /** {0} the line. */
    LEAD_NONE,
    /** {0} the line. */
    LEAD_NOT_PASSED,
    /** {0} the cursor, {1} where, {2} the other cursor. */
    CURSOR_ONE,
    /** {0} how long. */
    CURSOR_NO_READING,
    /** {0} where. */
    CURSOR_SAME,
    /** {0} how long, {1} how much, {2} how fast. */
    CURSORS,
    RATE_STEADY,
    /** {0} rate, {1} unit. */
    RATE_RISES,
    /** {0} rate, {1} unit. */
    RATE_FALLS,
    CSV_TIME,
    CSV_ELAPSED,
    /** {0} probe, {1} unit. */
    CSV_PROBE,
    CSV_ROW,
    CSV_WORDS,
    CSV_NOTE,
    CSV_BATCH,
    CSV_SIMULATED,
    /** {0} how many, {1} the first. */
    PROBLEMS,
    /** {0} the pace. */
    SAID_PLAYS,
    /** {0} when. */
    SAID_PAUSED,
    /** {0} the pace. */
    SAID_PACE,
    SAID_NO_EARLIER,
    SAID_NO_LATER,
    /** {0} when, {1} which row, {2} what. */
    SAID_EVENT,
    SAID_SCALE_WHOLE,
    SAID_SCALE_FITTED,
    SAID_NO_CURSORS,
    /** {0} when. */
    SAID_MARKED,
    /** {0} when. */
    SAID_NOTED,
    SAID_NOTE_CHANGED,
    SAID_NOTE_TAKEN_BACK,
    /** {0} the file, {1} why. */
    SAID_NOT_SAVED,
    SAID_LAID_ENOUGH,
    /** {0} which, {1} where matched. */
    SAID_LAID,
    SAID_TAKEN_AWAY,
    /** {0} where. */
    SAID_MATCHED,
    MATCH_TROUGH,
    MATCH_LIFT,
    /** {0} where, {1} temperature there, {2} when. */
    LAID_MATCHED,
    /** {0} where. */
    LAID_UNMATCHED,
    /** {0} its number. */
    LAID_NAME,
    BUTTON_PLAY,
    BUTTON_PAUSE,
    BUTTON_EARLIER,
    BUTTON_LATER,
    BUTTON_SLOWER,
    BUTTON_FASTER,
    BUTTON_WHOLE,
    PANE_WHY,
    PANE_WHAT_IF,
    PANE_ALARMS,
    PANE_NOTES,
    PANE_BESIDE,
    PANE_KEYS,
    SIGNS,
    HEADING_THEN,
    HEADING_NOW,
    /** {0} where. */
    SLIDER,
    /** {0} the headline, {1} the span, {2} cursors. */
    CHART_SPOKEN,
    NOTE_PROMPT,
    NOTE_CHANGE_PROMPT,
    NOTES_NONE,
    ALARMS_NONE,
    WHAT_IF_NONE,
    WHAT_IF_SIMULATED,
    BESIDE_CHOOSE,
    /** {0} the file. */
    SAID_WRITTEN,
    /** {0} the file. */
    SAID_PAGE_WRITTEN,
    /** {0} the file, {1} why. */
    SAID_NOT_WRITTEN,
    /** {0} percent. */
    SAID_SIZE,
    /** {0} the fault. */
    SAID_FAULT,
    KEY_SPACE,
    KEY_ARROWS,
    KEY_PAGES,
    KEY_ENDS,
    KEY_PACE,
    KEY_ZOOM,
    KEY_WHOLE,
    KEY_HEIGHT,
    KEY_CURSORS,
    KEY_DROP,
    KEY_MARK,
    KEY_NOTE,
    KEY_NOTE_LIST,
    KEY_BESIDE,
    KEY_EXPORT,
    KEY_PANES,
    KEY_THEME,
    KEY_SIZE,
    KEY_FULL,
    KEY_QUIT,

    // NoteFile.
    /** {0} why. */
    THE_NOTES_OF_THIS_SESSION,
    /** {0} e message. */
    THIS_NOTE_CANNOT_BE_READ_AND,
    THE_LINE_STAYS_AS_IT_IS,

    // Recording.
    /** {0} e message. */
    THE_FILE_CANNOT_BE_READ_NO,
    CHECK_THE_PATH_AND_THAT_YOU,

    // SecondPass.
    /** {0} e message. */
    THE_FILE_COULD_NOT_BE_READ
}
