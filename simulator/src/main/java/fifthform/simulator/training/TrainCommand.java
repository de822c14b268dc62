package fifthform.simulator.training;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Makes the network's weights: simulates sessions, learns from them, writes the file. simulator/README.md tells how. */
public final class TrainCommand {
    private static final int NOT_UNDERSTOOD = 2;
    private static final int FAILED = 1;

    private final Kitchens kitchens;
    private final PrintStream out;

    /** Where sessions come from. */
    interface Kitchens {
        /** @param threads have no influence on what comes */
        List<Session> sessions(int count, long seed, int threads);
    }

    TrainCommand(Kitchens kitchens, PrintStream out) {
        this.kitchens = kitchens;
        this.out = out;
    }

    /** Exits with 0 if the weights are written, 1 if that failed, 2 if the arguments are not understood. */
    public static void main(String[] arguments) {
        Map<String, String> properties = new HashMap<>();
        System.getProperties().forEach((name, value) -> properties.put(name.toString(), value.toString()));
        System.exit(new TrainCommand(TrainingKitchens::sessions, System.out).run(arguments, properties));
    }

    /** Answers with the code to exit with: 0 if the weights are written. */
    int run(String[] arguments, Map<String, String> properties) {
        TrainOptions options;
        try {
            options = TrainOptions.of(arguments, properties);
        } catch (IllegalArgumentException e) {
            out.println(e.getMessage());
            return NOT_UNDERSTOOD;
        }
        try {
            Stopwatch watch = new Stopwatch();
            new Schooling(options, sessions(options, watch), watch, out).all();
            return 0;
        } catch (IOException e) {
            out.println(e.getMessage());
            return FAILED;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return FAILED;
        }
    }

    private List<Session> sessions(TrainOptions options, Stopwatch watch) throws IOException {
        boolean kept = options.cache().filter(Files::exists).isPresent();
        List<Session> sessions = kept
                ? SessionFile.read(options.cache().get(), options.request())
                : kitchens.sessions(options.sessions(), options.seed(), options.threads());
        String verb = kept ? "read" : "simulated";
        out.println(String.format(Locale.ROOT, "%s %d sessions in %.0f s", verb, sessions.size(), watch.seconds()));
        if (!kept && options.cache().isPresent()) keep(options.cache().get(), options, sessions);
        return sessions;
    }

    private static void keep(Path cache, TrainOptions options, List<Session> sessions) throws IOException {
        SessionFile.write(cache, options.request(), sessions);
    }
}
