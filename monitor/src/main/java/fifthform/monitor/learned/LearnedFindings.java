package fifthform.monitor.learned;

import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.notebook.BatchKind;
import fifthform.monitor.notebook.Finding;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.StoreException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What {@code learn} says of marked and fine bars, for the notebook's page. */
public final class LearnedFindings {
    private LearnedFindings() {}

    /** Of all own batches of a kind. What cannot be read the notebook's rows say themselves. */
    public static List<Finding> of(Folders folders, Units units, BatchKind kind) {
        LookedSessions.Of of = kind == BatchKind.REAL ? LookedSessions.Of.REAL : LookedSessions.Of.PRACTICE;
        try {
            LookedSessions looked = LookedSessions.in(
                    folders.sessions(), of, Recipes.load(folders.recipes()), ReadBefore.in(folders.learnedIndex()));
            return looked.chocolates().stream()
                    .map(chocolate -> finding(chocolate, kind, units))
                    .toList();
        } catch (StoreException e) {
            return List.of();
        }
    }

    private static Finding finding(LearnedChocolate chocolate, BatchKind kind, Units units) {
        Set<String> names = new TreeSet<>();
        chocolate.batches().forEach(batch -> names.add(batch.session()));
        return new Finding(
                kind,
                names,
                new ComparisonWords(units).page(chocolate.published().name(), chocolate.comparison()));
    }
}
