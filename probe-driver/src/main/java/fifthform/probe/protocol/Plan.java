package fifthform.probe.protocol;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Which fields of a labelled line are tips, and which field is whose junction. Numbers that are no temperature are passed
 * over, unless they report a fault; a number without a word of ours counts only if it has a unit and no other claims to be
 * the tip.
 *
 * @param readings in the order in which they get channels: numbered ones, the chocolate's, other names, the room
 * @param comparesValues whether the plan would be another one with other values
 */
record Plan(List<Reading> readings, boolean comparesValues) {
    /** There is no junction. */
    static final int NONE = -1;

    /** Nothing can be read. */
    static final Plan NOTHING = new Plan(List.of(), true);

    /** The same temperature in two units may differ by the rounding of both. */
    private static final double SAME_KELVIN = 0.2;

    /**
     * One channel.
     *
     * @param tip index of its field
     * @param junction index of its junction's field, or {@link #NONE}
     */
    record Reading(int tip, int junction) {}

    Plan {
        readings = List.copyOf(readings);
    }

    static Plan of(List<Field> fields) {
        if (fields.stream().anyMatch(Plan::reportsFault)) return NOTHING;
        List<Integer> tips = tips(fields);
        Map<Integer, Label> distinct = new LinkedHashMap<>();
        boolean repeats = false;
        for (int tip : tips) {
            Field field = fields.get(tip);
            if (field.agreedUnit().filter(unit -> unit != Unit.FOREIGN).isEmpty()) return NOTHING;
            List<Integer> same = distinct.keySet().stream()
                    .filter(other -> fields.get(other).label().isBeside(field.label()))
                    .toList();
            if (same.isEmpty()) distinct.put(tip, field.label());
            else if (!agree(fields.get(same.get(0)), field)) return NOTHING;
            repeats |= !same.isEmpty();
        }
        List<Reading> readings = new ArrayList<>();
        for (int tip : distinct.keySet()) readings.add(new Reading(tip, junction(fields, tip, distinct.size())));
        return readings.isEmpty() ? NOTHING : new Plan(readings, repeats);
    }

    private static List<Integer> tips(List<Field> fields) {
        List<Integer> tips = meaning(fields, Label.Meaning.TIP);
        if (tips.isEmpty()) {
            if (fields.stream().anyMatch(Field::isBare)) return List.of();
            tips = meaning(fields, Label.Meaning.NONE);
            tips.addAll(meaning(fields, Label.Meaning.OTHER));
            tips.removeIf(i -> !fields.get(i).unit().isTemperature());
        } else {
            for (int other : meaning(fields, Label.Meaning.OTHER))
                if (fields.get(other).unit().isTemperature()) tips.add(other);
        }
        tips.removeIf(i -> fields.get(i).unit() == Unit.FOREIGN);
        if (!tips.isEmpty()) {
            List<Integer> besides = meaning(fields, Label.Meaning.TIP_BESIDES);
            besides.removeIf(i -> fields.get(i).unit() == Unit.FOREIGN);
            tips.addAll(besides);
        }
        tips.sort((one, other) -> Integer.compare(
                turn(fields.get(one).label()), turn(fields.get(other).label())));
        return tips;
    }

    /** The sort is stable: within a turn the order of the line stays. */
    private static int turn(Label label) {
        if (label.name().isEmpty()) return label.channel();
        if (label.isOfTheChocolate()) return Label.HIGHEST_CHANNEL + 1;
        return Label.HIGHEST_CHANNEL + (label.meaning() == Label.Meaning.TIP_BESIDES ? 3 : 2);
    }

    private static int junction(List<Field> fields, int tip, int tips) {
        List<Integer> junctions = meaning(fields, Label.Meaning.JUNCTION);
        for (int junction : junctions)
            if (fields.get(junction).label().isBeside(fields.get(tip).label())) return junction;
        boolean nobodyElses = tips == 1
                && junctions.size() == 1
                && fields.get(junctions.get(0)).label().name().isEmpty()
                && fields.get(junctions.get(0)).label().index().isEmpty()
                && !fields.get(tip).label().name().isEmpty();
        return nobodyElses ? junctions.get(0) : NONE;
    }

    private static boolean reportsFault(Field field) {
        return field.label().meaning() == Label.Meaning.FAULT_CODE
                && field.number().filter(n -> n.value() == 0).isEmpty();
    }

    private static List<Integer> meaning(List<Field> fields, Label.Meaning meaning) {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < fields.size(); i++) if (fields.get(i).label().meaning() == meaning) found.add(i);
        return found;
    }

    private static boolean agree(Field one, Field other) {
        OptionalDouble first = Temperatures.celsius(one);
        OptionalDouble second = Temperatures.celsius(other);
        return first.isPresent()
                && second.isPresent()
                && Math.abs(first.getAsDouble() - second.getAsDouble()) <= SAME_KELVIN;
    }
}
