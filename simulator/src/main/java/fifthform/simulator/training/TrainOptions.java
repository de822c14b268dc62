package fifthform.simulator.training;

import fifthform.curves.check.Require;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What the command can be told, as {@code --name value} or as the system property {@code train.name}; the former wins.
 *
 * @param sessions how many kitchens
 * @param seed of everything
 * @param networks whose answers are averaged
 * @param threads without influence on the weights
 * @param minutes after which no pass is begun; the weights then depend on the machine
 * @param cache file that keeps the simulated sessions
 * @param out file of the weights
 * @param plan how each network is trained
 */
record TrainOptions(
        int sessions,
        long seed,
        int networks,
        int threads,
        Optional<Double> minutes,
        Optional<Path> cache,
        Path out,
        Plan plan) {
    /** Names, usual values and what they mean; an empty value means none. */
    private static final String[][] KNOWN = {
        {"sessions", "4000", "sessions to simulate, each in a kitchen of its own"},
        {"seed", "1", "decides kitchens, first weights and order"},
        {"passes", "40", "passes through all sessions; the best one is kept"},
        {"networks", "1", "networks whose answers are averaged"},
        {"threads", "", "threads; all cores if empty; no influence on the weights"},
        {"minutes", "", "begin no further pass after so long"},
        {"cache", "", "file that keeps the sessions for another training"},
        {"out", "", "file of the weights (must be given)"},
        {"batch", "16", "sessions between two steps of the weights"},
        {"pace", "0.003", "most that a weight goes in a step, about"},
        {"shrink", "0.01", "share of every weight that goes with each step, per unit of pace"},
        {"layers", "2", "recurrent layers"},
        {"units", "32", "units in each of them"},
        {"middle", "64", "units of the dense layer"},
        {"place", "0.05", "how much knowing the place counts"},
        {"bulk", "0.05", "how much knowing the bulk counts"},
    };

    TrainOptions {
        Require.within(sessions, 2, 10_000_000, "sessions");
        Require.within(networks, 1, 100, "networks");
        Require.within(threads, 1, 1024, "threads");
        minutes.ifPresent(m -> Require.within(m, 0, 1e6, "minutes"));
    }

    /**
     * @param arguments {@code --name value} pairs
     * @param properties value of a system property, or an empty text
     * @throws IllegalArgumentException if something is not understood; the message is for whoever typed it
     */
    static TrainOptions of(String[] arguments, Map<String, String> properties) {
        Map<String, String> values = new LinkedHashMap<>();
        for (String[] option : KNOWN) {
            String told = properties.getOrDefault("train." + option[0], "");
            values.put(option[0], told.isEmpty() ? option[1] : told);
        }
        for (int i = 0; i < arguments.length; i += 2) take(arguments, i, values);
        if (values.get("out").isEmpty()) throw new IllegalArgumentException("say with --out where the weights go");
        Shape shape = new Shape(whole("layers", values), whole("units", values), whole("middle", values));
        Plan plan = new Plan(
                shape,
                whole("passes", values),
                whole("batch", values),
                number("pace", values),
                number("shrink", values),
                number("place", values),
                number("bulk", values));
        boolean allCores = values.get("threads").isEmpty();
        return new TrainOptions(
                whole("sessions", values),
                whole("seed", values),
                whole("networks", values),
                allCores ? Runtime.getRuntime().availableProcessors() : whole("threads", values),
                given("minutes", values).map(text -> number("minutes", values)),
                given("cache", values).map(Path::of),
                Path.of(values.get("out")),
                plan);
    }

    private static void take(String[] arguments, int at, Map<String, String> values) {
        String name = arguments[at].startsWith("--") ? arguments[at].substring(2) : "";
        if (!values.containsKey(name)) {
            throw new IllegalArgumentException("'" + arguments[at] + "' is not known. Known are:\n" + usage());
        }
        if (at + 1 == arguments.length) throw new IllegalArgumentException(arguments[at] + " wants a value");
        values.put(name, arguments[at + 1]);
    }

    static String usage() {
        StringBuilder text = new StringBuilder();
        for (String[] option : KNOWN) {
            String usual = option[1].isEmpty() ? "" : ", usually " + option[1];
            text.append("  --")
                    .append(option[0])
                    .append(": ")
                    .append(option[2])
                    .append(usual)
                    .append('\n');
        }
        return text.toString();
    }

    private static Optional<String> given(String name, Map<String, String> values) {
        return Optional.of(values.get(name)).filter(text -> !text.isEmpty());
    }

    private static int whole(String name, Map<String, String> values) {
        try {
            return Integer.parseInt(values.get(name));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("--" + name + " wants a whole number, not '" + values.get(name) + "'");
        }
    }

    private static double number(String name, Map<String, String> values) {
        try {
            return Double.parseDouble(values.get(name));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("--" + name + " wants a number, not '" + values.get(name) + "'");
        }
    }

    /** Which sessions: what a file of sessions must have been made for. */
    String request() {
        return sessions + " sessions, seed " + seed;
    }

    /** The command that makes the same weights again, without what differs from machine to machine. */
    String command() {
        return "mvn -q -Ptrain -pl simulator -am package -DskipTests -Dtrain.sessions=" + sessions + " -Dtrain.seed="
                + seed + " -Dtrain.passes=" + plan.passes() + " -Dtrain.networks=" + networks + " -Dtrain.batch="
                + plan.batch() + " -Dtrain.pace=" + plan.pace() + " -Dtrain.shrink=" + plan.shrink()
                + " -Dtrain.layers="
                + plan.shape().layers() + " -Dtrain.units=" + plan.shape().units() + " -Dtrain.middle="
                + plan.shape().middle() + " -Dtrain.place=" + plan.placeShare() + " -Dtrain.bulk=" + plan.bulkShare();
    }
}
