package fifthform.monitor.app;

import fifthform.monitor.backup.Backup;
import fifthform.monitor.backup.Backup.Also;
import fifthform.monitor.store.AddedLines;
import fifthform.monitor.texts.CommandText;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Everything into one file. */
@Command(name = "backup", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class BackupCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "FILE")
    private Path archive;

    @Option(names = "--practice")
    private boolean practice;

    @Option(names = "--with-bin")
    private boolean bin;

    @Override
    public Integer call() throws Refusal {
        if (Files.exists(archive)) throw new Refusal(Exit.FILE, CommandText.IS_THERE_ALREADY_IT_WAS_LEFT.say(archive));
        Set<Also> also = EnumSet.noneOf(Also.class);
        if (practice) also.add(Also.PRACTICE);
        if (bin) also.add(Also.BIN);
        try {
            Backup.Made made = new Backup(common.folders()).write(archive, also, Instant.now());
            PrintWriter out = common.out();
            out.println(CommandText.KEPT_IN_FILES_OF_THEM_BATCHES.say(archive, made.files(), made.sessions()));
            if (made.practiceLeftOut() > 0)
                out.println(CommandText.PRACTICE_BATCHES_LEFT_OUT_THEY.say(made.practiceLeftOut()));
            out.println(CommandText.ON_ANOTHER_COMPUTER_MONITOR.say(archive.getFileName()));
            return Exit.DONE.code();
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, CommandText.THE_BACKUP_COULD_NOT_BE_MADE.say(AddedLines.why(archive, e)));
        }
    }
}
