package fifthform.curves.recipe;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What published tempering tables print, to show how far they agree. The same rows as this project's reference table of
 * targets (role "source"); {@code read} or from memory as said there. For melt-out: melting points of form V.
 *
 * @param kind dark, milk, white
 * @param lowCelsius °C
 * @param highCelsius °C; the same where one figure is printed
 * @param source short name of the print
 */
record Printed(Target target, String kind, double lowCelsius, double highCelsius, String source) {
    private static final String COOKBOOK = "published chocolate cookbook";
    private static final String CHART = "general food-science chart";
    private static final String COLLECTION = "public recipe collection";
    private static final String GUIDE = "cocoa quality guide";
    private static final String TALBOT = "Talbot in Beckett ed., from memory";
    private static final String MINIFIE = "Minifie 3rd ed., from memory";
    private static final String CRAFT = "Wybauw, Beckett, from memory";

    static final List<Printed> ROWS = List.of(
            new Printed(Target.MELT, "dark", 50, 55, COOKBOOK),
            new Printed(Target.MELT, "dark", 45, 50, CHART),
            new Printed(Target.MELT, "dark", 50, 55, COLLECTION),
            new Printed(Target.MELT, "dark", 45, 45, GUIDE),
            new Printed(Target.MELT, "dark", 50, 50, TALBOT),
            new Printed(Target.MELT, "dark", 45, 50, MINIFIE),
            new Printed(Target.MELT, "dark", 48, 50, CRAFT),
            new Printed(Target.MELT, "milk", 45, 50, COOKBOOK),
            new Printed(Target.MELT, "milk", 40, 45, CHART),
            new Printed(Target.MELT, "milk", 45, 50, COLLECTION),
            new Printed(Target.MELT, "white", 45, 50, COOKBOOK),
            new Printed(Target.MELT, "white", 40, 40, CHART),
            new Printed(Target.MELT, "white", 45, 50, COLLECTION),
            new Printed(Target.COOL, "dark", 28, 29, COOKBOOK),
            new Printed(Target.COOL, "dark", 28, 29, CHART),
            new Printed(Target.COOL, "dark", 28, 29, COLLECTION),
            new Printed(Target.COOL, "dark", 27, 27, GUIDE),
            new Printed(Target.COOL, "dark", 27, 27, TALBOT),
            new Printed(Target.COOL, "dark", 27, 28, CRAFT),
            new Printed(Target.COOL, "milk", 27, 28, COOKBOOK),
            new Printed(Target.COOL, "milk", 27, 28, CHART),
            new Printed(Target.COOL, "milk", 27, 28, COLLECTION),
            new Printed(Target.COOL, "white", 26, 27, COOKBOOK),
            new Printed(Target.COOL, "white", 24, 25, CHART),
            new Printed(Target.COOL, "white", 26, 27, COLLECTION),
            new Printed(Target.WORK, "dark", 31, 32, COOKBOOK),
            new Printed(Target.WORK, "dark", 31, 32, CHART + ", from memory"),
            new Printed(Target.WORK, "dark", 31, 32, COLLECTION),
            new Printed(Target.WORK, "dark", 32, 32, "Greweling 2007"),
            new Printed(Target.WORK, "dark", 31, 31, GUIDE),
            new Printed(Target.WORK, "dark", 29, 31, TALBOT),
            new Printed(Target.WORK, "dark", 31, 33, MINIFIE),
            new Printed(Target.WORK, "dark", 31, 32, CRAFT),
            new Printed(Target.WORK, "milk", 30, 31, COOKBOOK),
            new Printed(Target.WORK, "milk", 30, 31, CHART + ", from memory"),
            new Printed(Target.WORK, "milk", 29, 30, COLLECTION),
            new Printed(Target.WORK, "milk", 29, 31, MINIFIE),
            new Printed(Target.WORK, "milk", 29, 30, "Afoakwa 2010, from memory"),
            new Printed(Target.WORK, "white", 29, 30, COOKBOOK),
            new Printed(Target.WORK, "white", 27, 28, CHART + ", from memory"),
            new Printed(Target.WORK, "white", 28, 29, COLLECTION),
            new Printed(Target.MELT_OUT, "dark", 33.8, 33.8, "Wille and Lutton 1966, through an encyclopaedia"),
            new Printed(Target.MELT_OUT, "dark", 34, 34, "Greweling 2007"),
            new Printed(Target.MELT_OUT, "dark", 33, 34, "Coady 1993"),
            new Printed(Target.MELT_OUT, "dark", 34, 35, "Beckett ed. 1999, from memory"));

    static List<Printed> of(Target target, List<String> kinds) {
        return ROWS.stream()
                .filter(row -> row.target == target && kinds.contains(row.kind))
                .toList();
    }

    /** From the lowest to the highest that is printed; empty where nothing is. */
    static Optional<CelsiusRange> spread(List<Printed> rows) {
        if (rows.isEmpty()) return Optional.empty();
        return Optional.of(new CelsiusRange(
                rows.stream().mapToDouble(Printed::lowCelsius).min().orElseThrow(),
                rows.stream().mapToDouble(Printed::highCelsius).max().orElseThrow()));
    }

    /** For example {@code 28-29 (a, b), 27 (c)}. */
    static String words(List<Printed> rows) {
        Map<String, List<String>> byFigure = new LinkedHashMap<>();
        for (Printed row : rows) {
            byFigure.computeIfAbsent(row.figure(), figure -> new ArrayList<>()).add(row.source);
        }
        List<String> parts = new ArrayList<>();
        byFigure.forEach((figure, sources) -> parts.add(figure + " (" + String.join("; ", sources) + ")"));
        return String.join(", ", parts);
    }

    private String figure() {
        return lowCelsius == highCelsius ? bare(lowCelsius) : bare(lowCelsius) + "-" + bare(highCelsius);
    }

    static String bare(double celsius) {
        return celsius == Math.rint(celsius)
                ? String.valueOf(Math.round(celsius))
                : String.format(Locale.ROOT, "%.1f", celsius);
    }
}
