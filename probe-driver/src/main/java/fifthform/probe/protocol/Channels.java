package fifthform.probe.protocol;

import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Which number a channel has that the adapter calls by name: the lowest free one when the name first appears. */
final class Channels {
    /** No channel can be told. */
    static final int NONE = -1;

    private final Map<String, Integer> byName = new LinkedHashMap<>();
    private final BitSet numbered = new BitSet();

    /** The label's channel, or {@link #NONE} where its number belongs to a name already or there are too many names. */
    int of(Label label) {
        if (label.name().isEmpty()) {
            if (!byName.isEmpty() && byName.containsValue(label.channel())) return NONE;
            numbered.set(label.channel());
            return label.channel();
        }
        Integer known = byName.get(label.name());
        if (known != null) return known;
        for (int number = 0; number <= Label.HIGHEST_CHANNEL; number++) {
            if (numbered.get(number) || byName.containsValue(number)) continue;
            byName.put(label.name(), number);
            return number;
        }
        return NONE;
    }

    Optional<String> name(int channel) {
        return byName.entrySet().stream()
                .filter(entry -> entry.getValue() == channel)
                .map(Map.Entry::getKey)
                .findFirst();
    }
}
