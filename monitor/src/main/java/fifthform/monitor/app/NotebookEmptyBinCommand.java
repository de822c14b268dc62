package fifthform.monitor.app;

import fifthform.monitor.notebook.Bin;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** The one command that deletes. */
@Command(
        name = "empty-bin",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Deletes the batches in the bin for good, after one question. Nothing else ever deletes a batch.",
        footer = {"", "Example:", "  monitor/run notebook empty-bin"})
final class NotebookEmptyBinCommand implements Callable<Integer> {
    private static final String YES = "yes";

    @ParentCommand
    private NotebookCommand notebook;

    @Option(names = "--yes", description = "the answer to the question, for scripts")
    private boolean yes;

    @Option(names = "--ask", description = "ask, also where there is no terminal")
    private boolean ask;

    @Override
    public Integer call() throws Refusal {
        try {
            List<Bin.Binned> asked = notebook.bin().list();
            if (asked.isEmpty()) {
                notebook.out().println("The bin is empty. Nothing was deleted.");
                return Exit.DONE.code();
            }
            if (!yes && !agreed(asked)) {
                notebook.out().println("Nothing was deleted.");
                return Exit.ANSWER_IS_NO.code();
            }
            int gone = notebook.bin().empty(asked);
            notebook.out().println(gone + (gone == 1 ? " batch was" : " batches were") + " deleted.");
            return Exit.DONE.code();
        } catch (IOException e) {
            throw new Refusal(
                    Exit.FILE,
                    "The bin could not be emptied: " + e.getMessage()
                            + ". What is still in it can be brought back. Check that you may write there.");
        }
    }

    private boolean agreed(List<Bin.Binned> asked) throws Refusal, IOException {
        if (!ask && !Screens.hasTerminal()) {
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    "There is no terminal to ask on. Nothing was deleted. Say --yes if you mean it.");
        }
        asked.forEach(batch -> notebook.out().println("  " + batch.name() + "  " + NotebookBinCommand.files(batch)));
        notebook.out()
                .println("Delete " + (asked.size() == 1 ? "this batch" : "these " + asked.size() + " batches")
                        + " for good? This cannot be taken back. Type yes, or anything else to keep.");
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        String answer = in.readLine();
        return answer != null && answer.strip().equalsIgnoreCase(YES);
    }
}
