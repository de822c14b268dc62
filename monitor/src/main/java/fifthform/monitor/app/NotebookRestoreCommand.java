package fifthform.monitor.app;

import fifthform.monitor.notebook.Bin;
import fifthform.monitor.texts.NotebookText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Brings a batch back. */
@Command(name = "restore", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class NotebookRestoreCommand implements Callable<Integer> {
    @ParentCommand
    private NotebookCommand notebook;

    @Parameters(paramLabel = "SESSION")
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
            notebook.out().println(NotebookText.IS_BACK.say(name, file));
            return Exit.DONE.code();
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, NotebookText.COULD_NOT_BE_BROUGHT_BACK.say(name, e.getMessage()));
        }
    }

    private Refusal notThere(List<Bin.Binned> all) {
        String there = all.isEmpty()
                ? NotebookText.BIN_EMPTY.say()
                : NotebookText.IN_THE_BIN.say(
                        String.join(", ", all.stream().map(Bin.Binned::name).toList()));
        return new Refusal(Exit.FILE, NotebookText.THERE_IS_NO_IN_THE_BIN.say(name, there));
    }
}
