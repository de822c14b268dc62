package fifthform.monitor.texts;

/** What a training says of a batch that is no whole one, and of a hold. */
public enum PracticeText implements Text {
    CAME_IN_TEMPER,
    HOLD_NOT_REACHED,
    /** {0} time, {1} planned, {2} what warmed it, {3} share. */
    HELD_REALLY,
    ADVICE_KEPT_MELTED
}
