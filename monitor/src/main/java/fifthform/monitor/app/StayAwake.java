package fifthform.monitor.app;

import fifthform.monitor.texts.ProbeText;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Keeps the computer from going to sleep while a session is recorded, through the helper that the platform has for it.
 * Where there is none, that is said, so that the maker can set it by hand.
 */
final class StayAwake implements AutoCloseable {
    private final Optional<Process> helper;

    private StayAwake(Optional<Process> helper) {
        this.helper = helper;
    }

    /** Starts the helper, if there is one. */
    static StayAwake begin() {
        for (List<String> command : commands()) {
            try {
                Process process = new ProcessBuilder(command)
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start();
                // A helper that cannot do its work ends at once.
                if (!process.waitFor(200, java.util.concurrent.TimeUnit.MILLISECONDS)) {
                    return new StayAwake(Optional.of(process));
                }
            } catch (IOException notThere) {
                continue;
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                break;
            }
        }
        return new StayAwake(Optional.empty());
    }

    /** Whether the computer stays awake by our doing. */
    boolean isHeld() {
        return helper.filter(Process::isAlive).isPresent();
    }

    private static List<List<String>> commands() {
        String os = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        String pid = Long.toString(ProcessHandle.current().pid());
        if (os.startsWith("mac")) return List.of(List.of("caffeinate", "-i", "-w", pid));
        if (os.startsWith("linux")) {
            return List.of(List.of(
                    "systemd-inhibit",
                    "--what=idle:sleep",
                    "--who=Fifth Form",
                    ProbeText.WHY_A_BATCH_IS_BEING_RECORDED.say(),
                    "tail",
                    "--pid=" + pid,
                    "-f",
                    "/dev/null"));
        }
        return List.of();
    }

    @Override
    public void close() {
        helper.ifPresent(Process::destroy);
    }
}
