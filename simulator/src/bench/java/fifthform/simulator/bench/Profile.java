package fifthform.simulator.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import jdk.jfr.Recording;
import jdk.jfr.consumer.RecordedEvent;
import jdk.jfr.consumer.RecordedFrame;
import jdk.jfr.consumer.RecordedMethod;
import jdk.jfr.consumer.RecordingFile;

/** Where the time goes: samples of the running methods, taken by the JDK's own flight recorder. */
final class Profile implements AutoCloseable {
    private static final String OURS = "fifthform.";
    private static final int SHOWN = 8;

    private final Recording recording;

    private Profile(Recording recording) {
        this.recording = recording;
    }

    static Profile begin() {
        Recording recording = new Recording();
        recording.enable("jdk.ExecutionSample").withPeriod(Duration.ofMillis(10));
        recording.start();
        return new Profile(recording);
    }

    /** Shares by package of ours, and by the innermost method of ours, most first. */
    String text() throws IOException {
        Path file = Files.createTempFile("fleet", ".jfr");
        try {
            recording.dump(file);
            List<RecordedEvent> samples = RecordingFile.readAllEvents(file);
            Map<String, Integer> packages = new HashMap<>();
            Map<String, Integer> methods = new HashMap<>();
            for (RecordedEvent sample : samples) {
                innermost(sample).ifPresent(method -> {
                    String type = method.getType().getName();
                    packages.merge(type.substring(0, type.lastIndexOf('.')), 1, Integer::sum);
                    methods.merge(type.substring(type.lastIndexOf('.') + 1) + "." + method.getName(), 1, Integer::sum);
                });
            }
            return "    by package: " + shares(packages) + "\n    by method:  " + shares(methods) + "\n";
        } finally {
            Files.delete(file);
        }
    }

    private static Optional<RecordedMethod> innermost(RecordedEvent sample) {
        if (sample.getStackTrace() == null) return Optional.empty();
        return sample.getStackTrace().getFrames().stream()
                .map(RecordedFrame::getMethod)
                .filter(method -> method.getType().getName().startsWith(OURS))
                .findFirst();
    }

    private static String shares(Map<String, Integer> counts) {
        double all = counts.values().stream().mapToInt(Integer::intValue).sum();
        StringBuilder text = new StringBuilder();
        counts.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                .limit(SHOWN)
                .forEach(each -> text.append(String.format(
                        Locale.ROOT, "%s %.0f %%, ", each.getKey().replace(OURS, ""), 100 * each.getValue() / all)));
        return text.isEmpty() ? "no samples" : text.substring(0, text.length() - 2);
    }

    @Override
    public void close() {
        recording.close();
    }
}
