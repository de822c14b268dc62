package fifthform.curves.alarm;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * The state of one alarm, after the scheme of ISA-18.2 / IEC 62682 (read in outline in secondary sources). Pure: the
 * delays are judged from the times handed in, so that a replay raises the same alarms.
 */
public sealed interface AlarmState {
    /** An urgent alarm that has been seen and still stands is raised again after this long. */
    Duration REMIND_AFTER = Duration.ofSeconds(60);

    /** An alarm is raised again by itself at most this many times. */
    int MOST_REMINDERS = 3;

    /** The state after one more look. */
    AlarmState next(AlarmSetting setting, Finding finding, Instant now);

    /** The state once the maker has seen the alarm. */
    default AlarmState seen(Instant now) {
        return this;
    }

    /** The state once the maker has decided what to do with the batch. */
    default AlarmState chosen() {
        return this;
    }

    /** Whether the maker should know of it: neither quiet, nor pending, nor held back. */
    default boolean isStanding() {
        return false;
    }

    /** Whether it sounds and blinks: nobody has seen it yet. */
    default boolean isNew() {
        return false;
    }

    /**
     * Whether it is the first cause that keeps lesser alarms back: it stands and its condition has not been over for
     * long. What only a choice can end is still shown then, but must not silence the next overshoot.
     */
    default boolean speaksForOthers(AlarmSetting setting, Instant now) {
        return false;
    }

    /** Nothing is wrong. */
    record Normal() implements AlarmState {
        @Override
        public AlarmState next(AlarmSetting setting, Finding finding, Instant now) {
            return finding.condition() == Condition.MET ? new Pending(now).next(setting, finding, now) : this;
        }
    }

    /** The condition holds, but not for long enough yet. */
    record Pending(Instant since) implements AlarmState {
        public Pending {
            Objects.requireNonNull(since, "since");
        }

        @Override
        public AlarmState next(AlarmSetting setting, Finding finding, Instant now) {
            if (finding.condition() == Condition.UNKNOWN) return this;
            if (finding.condition() != Condition.MET) return new Normal();
            boolean due = !now.isBefore(since.plus(setting.onDelay()));
            return due ? new Unacknowledged(now, 0, Optional.empty()) : this;
        }
    }

    /**
     * New: raised, and nobody has seen it.
     *
     * @param raised when
     * @param reminders how often it has been raised again by itself
     * @param overSince since when the condition has been over, while the off-delay runs
     */
    record Unacknowledged(Instant raised, int reminders, Optional<Instant> overSince) implements AlarmState {
        public Unacknowledged {
            Objects.requireNonNull(raised, "raised");
            Objects.requireNonNull(overSince, "overSince");
        }

        @Override
        public AlarmState next(AlarmSetting setting, Finding finding, Instant now) {
            Optional<Instant> over = stillOver(overSince, finding, now);
            if (!offDelayOver(setting, over, now)) return new Unacknowledged(raised, reminders, over);
            return switch (setting.ending()) {
                case WHEN_OVER -> new Normal();
                case WHEN_SEEN -> new ReturnedUnacknowledged(raised, now);
                case BY_CHOICE -> new Unacknowledged(raised, reminders, over);
            };
        }

        @Override
        public AlarmState seen(Instant now) {
            return new Acknowledged(raised, now, reminders, overSince);
        }

        @Override
        public AlarmState chosen() {
            return new Normal();
        }

        @Override
        public boolean speaksForOthers(AlarmSetting setting, Instant now) {
            return !offDelayOver(setting, overSince, now);
        }

        @Override
        public boolean isStanding() {
            return true;
        }

        @Override
        public boolean isNew() {
            return true;
        }
    }

    /** Known: seen, and its condition still holds. */
    record Acknowledged(Instant raised, Instant seen, int reminders, Optional<Instant> overSince)
            implements AlarmState {
        public Acknowledged {
            Objects.requireNonNull(raised, "raised");
            Objects.requireNonNull(seen, "seen");
            Objects.requireNonNull(overSince, "overSince");
        }

        @Override
        public AlarmState next(AlarmSetting setting, Finding finding, Instant now) {
            Optional<Instant> over = stillOver(overSince, finding, now);
            if (offDelayOver(setting, over, now) && setting.ending() != Ending.BY_CHOICE) return new Normal();
            boolean remind = finding.condition() == Condition.MET
                    && finding.priority() == Priority.URGENT
                    && reminders < MOST_REMINDERS
                    && !now.isBefore(seen.plus(REMIND_AFTER));
            return remind
                    ? new Unacknowledged(now, reminders + 1, Optional.empty())
                    : new Acknowledged(raised, seen, reminders, over);
        }

        @Override
        public AlarmState chosen() {
            return new Normal();
        }

        @Override
        public boolean speaksForOthers(AlarmSetting setting, Instant now) {
            return !offDelayOver(setting, overSince, now);
        }

        @Override
        public boolean isStanding() {
            return true;
        }
    }

    /** Passed: its condition is over, but nobody has seen it. */
    record ReturnedUnacknowledged(Instant raised, Instant returned) implements AlarmState {
        public ReturnedUnacknowledged {
            Objects.requireNonNull(raised, "raised");
            Objects.requireNonNull(returned, "returned");
        }

        @Override
        public AlarmState next(AlarmSetting setting, Finding finding, Instant now) {
            return finding.condition() == Condition.MET ? new Unacknowledged(now, 0, Optional.empty()) : this;
        }

        @Override
        public AlarmState seen(Instant now) {
            return new Normal();
        }

        @Override
        public AlarmState chosen() {
            return new Normal();
        }

        @Override
        public boolean isStanding() {
            return true;
        }
    }

    /**
     * Set aside by the maker.
     *
     * @param until when it comes back by itself
     * @param latest what its condition said at the last look
     */
    record Shelved(Instant until, Condition latest) implements AlarmState {
        public Shelved {
            Objects.requireNonNull(until, "until");
            Objects.requireNonNull(latest, "latest");
        }

        @Override
        public AlarmState next(AlarmSetting setting, Finding finding, Instant now) {
            Condition present = finding.condition() == Condition.UNKNOWN ? latest : finding.condition();
            if (now.isBefore(until)) return new Shelved(until, present);
            return present == Condition.MET ? new Unacknowledged(now, 0, Optional.empty()) : new Normal();
        }

        /** Ended by hand: what still holds is known, not new. */
        AlarmState taken(Instant now) {
            return latest == Condition.MET ? new Acknowledged(now, now, 0, Optional.empty()) : new Normal();
        }
    }

    /** Held back: not meant for this phase, or spoken for by a worse alarm. */
    record Suppressed(Reason reason) implements AlarmState {
        /** Why it is held back. */
        public enum Reason {
            NOT_IN_THIS_PHASE,
            WORSE_ALARM_STANDS,
            NO_TRUE_READING
        }

        public Suppressed {
            Objects.requireNonNull(reason, "reason");
        }

        /** It is only asked again once nothing holds it back; then it begins from scratch, with its whole on-delay. */
        @Override
        public AlarmState next(AlarmSetting setting, Finding finding, Instant now) {
            return new Normal().next(setting, finding, now);
        }
    }

    private static Optional<Instant> stillOver(Optional<Instant> overSince, Finding finding, Instant now) {
        return switch (finding.condition()) {
            case OVER -> Optional.of(overSince.orElse(now));
            case UNKNOWN -> overSince;
            case MET, BETWEEN -> Optional.empty();
        };
    }

    private static boolean offDelayOver(AlarmSetting setting, Optional<Instant> overSince, Instant now) {
        return overSince.isPresent() && !now.isBefore(overSince.get().plus(setting.offDelay()));
    }
}
