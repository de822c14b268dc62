package fifthform.monitor.app;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** One bowl with all its amounts. */
@Command(name = "show", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class BowlsShowCommand implements Callable<Integer> {
    @ParentCommand
    private BowlsCommand bowls;

    @Parameters(paramLabel = "ID")
    private String id;

    @Override
    public Integer call() throws Refusal {
        bowls.show(BowlWords.known(id, bowls.load()));
        return Exit.DONE.code();
    }
}
