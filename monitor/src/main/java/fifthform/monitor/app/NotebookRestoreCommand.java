package fifthform.monitor.app;

import fifthform.monitor.notebook.Bin;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Brings a batch back. */
@Command(
        name = "restore",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Brings a batch back from the bin, with all files that belong to it.",
        footer = {"", "Example:", "  monitor/run notebook restore 2026-01-31-101500-dark"})
final class NotebookRestoreCommand implements Callable<Integer> {
    @ParentCommand
    private NotebookCommand notebook;

    @Parameters(paramLabel = "SESSION", description = "name of the batch, as the bin lists it")
    private String name;

    @Override
    public Integer call() throws Refusal {
        try {
            List<Bin.Binned> all = notebook.bin().list();
            Bin.Binned batch = all.stream()
                    .filter(each -> each.name().equals(name))
                    .findFirst()
                    .orElseThrow(() -> notThere(all));
            Path file = notebook.bin().restore(batch);
            notebook.out().println(name + " is back: " + file);
            return Exit.DONE.code();
        } catch (IOException e) {
            throw new Refusal(
                    Exit.FILE, name + " could not be brought back: " + e.getMessage() + ". Nothing was deleted.");
        }
    }

    private Refusal notThere(List<Bin.Binned> all) {
        String there = all.isEmpty()
                ? "The bin is empty."
                : "In the bin: "
                        + String.join(", ", all.stream().map(Bin.Binned::name).toList()) + ".";
        return new Refusal(Exit.FILE, "There is no " + name + " in the bin. Nothing was done. " + there);
    }
}
