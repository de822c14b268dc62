package fifthform.curves.plan;

import java.util.Locale;

/** Formulas as text, with numbers put in the same way in every country. */
final class Formula {
    static final String BALANCE =
            "heat balance; heat capacities: Beckett ed. 2009, pp. 667–668 (chocolate), textbook (rest)";
    static final String TWO_BODIES = BALANCE + "; bath and bowl as two bodies, exchange and losses estimated";
    static final String PRACTICE = "common practice, no source";
    static final String RECIPE = "the recipe; its file names the source of each value";

    private Formula() {}

    static String of(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
