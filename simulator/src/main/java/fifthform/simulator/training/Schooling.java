package fifthform.simulator.training;

import java.io.IOException;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * The whole of it: network after network, pass after pass. After every pass that was the best so far the weights are
 * written, so that whoever is cut off keeps them.
 */
final class Schooling {
    private final TrainOptions options;
    private final Lessons lessons;
    private final String version;
    private final Stopwatch watch;
    private final PrintStream out;
    private boolean cutShort;
    private final List<Parameters> finished = new ArrayList<>();
    private final Map<String, String> results = new LinkedHashMap<>();

    /** @param watch runs since the command began; its minutes include the simulation */
    Schooling(TrainOptions options, List<Session> sessions, Stopwatch watch, PrintStream out) {
        this.options = options;
        this.lessons = Lessons.of(sessions);
        this.version = SessionFile.version(sessions);
        this.watch = watch;
        this.out = out;
    }

    void all() throws InterruptedException, IOException {
        say(
                "%d sessions teach, %d examine; data %s",
                lessons.teaching().size(), lessons.examining().size(), version);
        SplittableRandom seeds = new SplittableRandom(options.seed());
        try (Workers workers = new Workers(options.threads(), options.plan().shape())) {
            for (int i = 1; i <= options.networks() && (i == 1 || !late()); i++) {
                network(i, new Training(lessons, options.plan(), seeds.nextLong(), workers), workers);
            }
            if (finished.size() > 1) {
                Score together = Examination.of(finished, lessons.examining(), workers);
                results.put("validation of all together", together.text());
                say("all %d together: %s", finished.size(), together.text());
            }
        }
        save(finished);
        say("wrote %d networks after %.0f s", finished.size(), watch.seconds());
    }

    private void network(int number, Training training, Workers workers) throws InterruptedException, IOException {
        Parameters best = training.weights().copy();
        double least = Double.POSITIVE_INFINITY;
        for (int pass = 1; pass <= options.plan().passes() && (pass == 1 || !late()); pass++) {
            double from = watch.seconds();
            double loss = training.pass();
            Score score = Examination.of(List.of(training.weights()), lessons.examining(), workers);
            boolean better = score.meanPinball() < least;
            String mark = better ? " *" : "";
            double took = watch.seconds() - from;
            say("network %d pass %d: loss %.4f; %s; %.1f s%s", number, pass, loss, score.text(), took, mark);
            if (!better) continue;
            least = score.meanPinball();
            best = training.weights().copy();
            results.put("network " + number, "pass " + pass + ", " + score.text());
            List<Parameters> soFar = new ArrayList<>(finished);
            soFar.add(best);
            save(soFar);
        }
        if (least == Double.POSITIVE_INFINITY) throw new ArithmeticException("no pass led to a loss that is a number");
        finished.add(best);
    }

    /** Once it said so, it goes on saying so. */
    private boolean late() {
        cutShort |= options.minutes().filter(m -> watch.seconds() > 60 * m).isPresent();
        return cutShort;
    }

    private void save(List<Parameters> networks) throws IOException {
        WeightWriter.write(options.out(), WeightWriter.lines(provenance(), networks));
    }

    private Map<String, String> provenance() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("what", "weights of the network that guesses turning points; made by simulator.training");
        all.put("command", options.command());
        all.put("data", options.request() + ", version " + version);
        all.put(
                "divided",
                lessons.teaching().size() + " sessions taught, "
                        + lessons.examining().size() + " examined");
        Shape shape = options.plan().shape();
        all.put("sizes", shape.layers() + " recurrent layers of " + shape.units() + ", dense " + shape.middle());
        if (cutShort) all.put("cut short", "by the clock: the command alone does not lead to these weights");
        all.putAll(results);
        return all;
    }

    private void say(String format, Object... values) {
        out.println(String.format(Locale.ROOT, format, values));
    }
}
