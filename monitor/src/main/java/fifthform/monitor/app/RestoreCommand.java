package fifthform.monitor.app;

import fifthform.monitor.backup.Restore;
import fifthform.monitor.texts.CommandText;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** A backup back, here or on another computer. */
@Command(name = "restore", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class RestoreCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "FILE")
    private Path archive;

    @Override
    public Integer call() throws Refusal {
        if (!Files.isRegularFile(archive))
            throw new Refusal(Exit.FILE, CommandText.THERE_IS_NO_FILE_NOTHING_WAS.say(archive));
        try {
            Restore.Done done = new Restore(common.folders()).all(archive);
            PrintWriter out = common.out();
            out.println(CommandText.RESTORED_FILES_WERE_HERE.say(done.added(), done.same(), done.grown()));
            done.apart()
                    .ifPresent(folder ->
                            out.println(CommandText.OF_FILES_ANOTHER_VERSION_IS.say(done.apartFiles(), folder)));
            if (!done.twins().isEmpty())
                out.println(CommandText.OF_THESE_NAMES_THAT_DIFFER.say(String.join(", ", done.twins())));
            if (!done.unlisted().isEmpty())
                out.println(CommandText.LEFT_OUT_SINCE_THEY_ARE_NOT.say(String.join(", ", done.unlisted())));
            return Exit.DONE.code();
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, CommandText.COULD_NOT_BE_RESTORED_WHAT_WAS.say(archive, e.getMessage()));
        }
    }
}
