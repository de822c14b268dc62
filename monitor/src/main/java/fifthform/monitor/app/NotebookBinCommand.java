package fifthform.monitor.app;

import fifthform.monitor.notebook.Bin;
import fifthform.monitor.store.StoreException;
import fifthform.monitor.texts.NotebookText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Puts a batch away, or shows what was. */
@Command(name = "bin", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class NotebookBinCommand implements Callable<Integer> {
    @ParentCommand
    private NotebookCommand notebook;

    @Parameters(paramLabel = "SESSION", arity = "0..1")
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
            throw new Refusal(Exit.FILE, NotebookText.THE_BIN_COULD_NOT_BE_USED.say(e.getMessage()));
        }
    }

    private void put() throws Refusal, IOException, StoreException {
        Path session = SessionNames.find(name, notebook.folders().sessions());
        Bin.Binned batch = notebook.bin().put(session);
        notebook.out().println(NotebookText.IS_IN_THE_BIN_BRING_IT.say(batch.name(), files(batch), batch.name()));
    }

    private void list() throws IOException {
        for (Bin.Binned batch : notebook.bin().list()) notebook.out().println(batch.name() + "  " + files(batch));
        if (notebook.bin().list().isEmpty()) notebook.out().println(NotebookText.BIN_EMPTY.say());
    }

    static String files(Bin.Binned batch) {
        return NotebookText.FILES.say(batch.files());
    }
}
