package fifthform.curves.alarm;

/** How long the maker has before the consequence. */
public enum TimeAvailable {
    UNDER_HALF_A_MINUTE,
    UP_TO_THREE_MINUTES,
    LONGER;

    /** Priority from consequence and time, computed rather than chosen by taste; the matrix is our own. */
    public Priority with(Consequence consequence) {
        return switch (consequence) {
            case BATCH ->
                switch (this) {
                    case UNDER_HALF_A_MINUTE -> Priority.URGENT;
                    case UP_TO_THREE_MINUTES -> Priority.PROMPT;
                    case LONGER -> Priority.ADVISE;
                };
            case QUALITY -> this == LONGER ? Priority.ADVISE : Priority.PROMPT;
            case INCONVENIENCE -> Priority.ADVISE;
        };
    }
}
