package fifthform.monitor.app;

import fifthform.monitor.backup.Backup;
import fifthform.monitor.backup.Backup.Also;
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
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Everything into one file. */
@Command(
        name = "backup",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Puts everything that is kept into one archive: batches, looks, notes, recipes, bowls, probes,"
                + " cups, settings. May run while a batch is recorded.",
        footer = {"", "Example: monitor/run backup my-chocolate.zip"})
final class BackupCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "FILE", description = "the archive; no such file may be there yet")
    private Path archive;

    @Option(names = "--practice", description = "practice batches too")
    private boolean practice;

    @Option(names = "--with-bin", description = "batches in the bins too, your own and those of others")
    private boolean bin;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal {
        if (Files.exists(archive))
            throw new Refusal(
                    Exit.FILE, archive + " is there already. It was left as it is. Give the backup another name.");
        Set<Also> also = EnumSet.noneOf(Also.class);
        if (practice) also.add(Also.PRACTICE);
        if (bin) also.add(Also.BIN);
        try {
            Backup.Made made = new Backup(common.folders()).write(archive, also, Instant.now());
            PrintWriter out = spec.commandLine().getOut();
            out.println("Kept in " + archive + ": " + made.files() + " files, " + made.sessions()
                    + " of them batches. It was read again, and all is there.");
            if (made.practiceLeftOut() > 0)
                out.println(
                        "Practice batches left out: " + made.practiceLeftOut() + ". They come along with --practice.");
            out.println("On another computer: monitor/run restore " + archive.getFileName());
            return Exit.DONE.code();
        } catch (IOException e) {
            throw new Refusal(
                    Exit.FILE,
                    "The backup could not be made (" + e.getMessage() + "). Nothing was written. Check the folder and"
                            + " the room on the disk.");
        }
    }
}
