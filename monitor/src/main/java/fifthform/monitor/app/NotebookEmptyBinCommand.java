package fifthform.monitor.app;

import fifthform.monitor.notebook.Bin;
import fifthform.monitor.texts.NotebookText;
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
@Command(name = "empty-bin", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class NotebookEmptyBinCommand implements Callable<Integer> {
    private static final String YES = "yes";

    @ParentCommand
    private NotebookCommand notebook;

    @Option(names = "--yes")
    private boolean yes;

    @Option(names = "--ask")
    private boolean ask;

    @Override
    public Integer call() throws Refusal {
        try {
            List<Bin.Binned> asked = notebook.bin().list();
            if (asked.isEmpty()) {
                notebook.out().println(NotebookText.THE_BIN_IS_EMPTY_NOTHING_WAS.say());
                return Exit.DONE.code();
            }
            if (!yes && !agreed(asked)) {
                notebook.out().println(NotebookText.NOTHING_WAS_DELETED.say());
                return Exit.ANSWER_IS_NO.code();
            }
            int gone = notebook.bin().empty(asked);
            notebook.out().println(NotebookText.DELETED.say(gone));
            return Exit.DONE.code();
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, NotebookText.THE_BIN_COULD_NOT_BE_EMPTIED.say(e.getMessage()));
        }
    }

    private boolean agreed(List<Bin.Binned> asked) throws Refusal, IOException {
        if (!ask && !Screens.hasTerminal()) {
            throw new Refusal(Exit.NOT_UNDERSTOOD, NotebookText.THERE_IS_NO_TERMINAL_TO_ASK.say());
        }
        asked.forEach(batch -> notebook.out().println("  " + batch.name() + "  " + NotebookBinCommand.files(batch)));
        notebook.out().println(NotebookText.DELETE_FOR_GOOD_THIS_CANNOT_BE.say(asked.size()));
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        String answer = in.readLine();
        return answer != null && answer.strip().equalsIgnoreCase(YES);
    }
}
