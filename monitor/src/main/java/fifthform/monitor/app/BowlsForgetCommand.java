package fifthform.monitor.app;

import fifthform.monitor.bowls.KeptBowl;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** A bowl that is gone. */
@Command(
        name = "forget",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Forgets a bowl; its file is kept under another name.",
        footer = {"", "Example, for a bowl that was added as steel:", "  monitor/run bowls forget steel"})
final class BowlsForgetCommand implements Callable<Integer> {
    @ParentCommand
    private BowlsCommand bowls;

    @Parameters(paramLabel = "ID", description = "id or name of the bowl")
    private String id;

    @Override
    public Integer call() throws Refusal {
        KeptBowl bowl = BowlWords.known(id, bowls.load());
        try {
            Path kept = bowls.bowls().forget(bowl);
            bowls.said(bowl, "Forgotten. Its file is kept as " + kept + ".");
            return Exit.DONE.code();
        } catch (IOException e) {
            throw BowlsCommand.notWritten(e);
        }
    }
}
