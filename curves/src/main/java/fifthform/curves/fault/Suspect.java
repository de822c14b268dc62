package fifthform.curves.fault;

import java.util.List;
import java.util.Objects;

/**
 * One cause with what speaks for and against it.
 *
 * @param fault the cause
 * @param share how likely it is among all, 0 to 1
 * @param supports what speaks for it, strongest first
 * @param opposes what speaks against it, strongest first
 */
public record Suspect(Fault fault, double share, List<Evidence> supports, List<Evidence> opposes) {
    public Suspect {
        Objects.requireNonNull(fault, "fault");
        supports = List.copyOf(supports);
        opposes = List.copyOf(opposes);
    }

    /**
     * A clue as it speaks here.
     *
     * @param clue what
     * @param there whether it is so
     * @param times how many times as likely it is with this cause as without it; below 1 against it
     */
    public record Evidence(Clue clue, boolean there, double times) {
        public Evidence {
            Objects.requireNonNull(clue, "clue");
        }
    }
}
