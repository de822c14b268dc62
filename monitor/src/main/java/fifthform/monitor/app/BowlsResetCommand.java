package fifthform.monitor.app;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** A bowl that begins anew. */
@Command(name = "reset", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class BowlsResetCommand implements Callable<Integer> {
    @ParentCommand
    private BowlsCommand bowls;

    @Parameters(paramLabel = "ID")
    private String id;

    @Override
    public Integer call() throws Refusal {
        return bowls.keep(BowlWords.known(id, bowls.load()).untaught());
    }
}
