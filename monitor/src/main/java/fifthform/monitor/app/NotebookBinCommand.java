package fifthform.monitor.app;

import fifthform.monitor.notebook.Bin;
import fifthform.monitor.store.StoreException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Puts a batch away, or shows what was. */
@Command(
        name = "bin",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Puts a batch into the bin: its session with its looks, proofs and notes. Nothing is deleted by that.",
            "Without a name it lists what is in the bin."
        },
        footer = {"", "Example:", "  monitor/run notebook bin 2026-01-31-101500-dark"})
final class NotebookBinCommand implements Callable<Integer> {
    @ParentCommand
    private NotebookCommand notebook;

    @Parameters(paramLabel = "SESSION", arity = "0..1", description = "its name in the data folder, or last")
    private String name;

    @Override
    public Integer call() throws Refusal {
        try {
            if (name == null) list();
            else put();
            return Exit.DONE.code();
        } catch (StoreException e) {
            throw new Refusal(Exit.FILE, e.getMessage());
        } catch (IOException e) {
            throw new Refusal(
                    Exit.FILE,
                    "The bin could not be used: " + e.getMessage()
                            + ". Nothing was deleted. Check that you may write to the data folder.");
        }
    }

    private void put() throws Refusal, IOException, StoreException {
        Path session = SessionNames.find(name, notebook.folders().sessions());
        Bin.Binned batch = notebook.bin().put(session);
        notebook.out()
                .println(batch.name() + " is in the bin, " + files(batch)
                        + ". Bring it back: monitor/run notebook restore " + batch.name());
    }

    private void list() throws IOException {
        for (Bin.Binned batch : notebook.bin().list()) notebook.out().println(batch.name() + "  " + files(batch));
        if (notebook.bin().list().isEmpty()) notebook.out().println("The bin is empty.");
    }

    static String files(Bin.Binned batch) {
        return batch.files() == 1 ? "1 file" : batch.files() + " files";
    }
}
