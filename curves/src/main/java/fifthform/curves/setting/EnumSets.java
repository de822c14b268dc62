package fifthform.curves.setting;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/** Sets of words that are gone through in the order of their declaration, in every run. */
final class EnumSets {
    private EnumSets() {}

    /** One that can be changed. */
    static <E extends Enum<E>> EnumSet<E> of(Class<E> kind, Collection<E> values) {
        EnumSet<E> set = EnumSet.noneOf(kind);
        set.addAll(values);
        return set;
    }

    /** One that cannot. */
    static <E extends Enum<E>> Set<E> kept(Class<E> kind, Collection<E> values) {
        return Collections.unmodifiableSet(of(kind, values));
    }
}
