package fifthform.monitor.app;

import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.texts.BowlsText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** A bowl that is gone. */
@Command(name = "forget", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class BowlsForgetCommand implements Callable<Integer> {
    @ParentCommand
    private BowlsCommand bowls;

    @Parameters(paramLabel = "ID")
    private String id;

    @Override
    public Integer call() throws Refusal {
        KeptBowl bowl = BowlWords.known(id, bowls.load());
        try {
            Path kept = bowls.bowls().forget(bowl);
            bowls.said(bowl, BowlsText.FORGOTTEN_ITS_FILE_IS_KEPT_AS.say(kept));
            return Exit.DONE.code();
        } catch (IOException e) {
            throw BowlsCommand.notWritten(e);
        }
    }
}
