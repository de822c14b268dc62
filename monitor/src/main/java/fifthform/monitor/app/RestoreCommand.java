package fifthform.monitor.app;

import fifthform.monitor.backup.Restore;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A backup back, here or on another computer. */
@Command(
        name = "restore",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Brings a backup into this computer. Nothing that is here is overwritten.",
        footer = {"", "Example: monitor/run restore my-chocolate.zip"})
final class RestoreCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "FILE", description = "an archive that backup made")
    private Path archive;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal {
        if (!Files.isRegularFile(archive))
            throw new Refusal(Exit.FILE, "There is no file " + archive + ". Nothing was restored. Check the path.");
        try {
            Restore.Done done = new Restore(common.folders()).all(archive);
            PrintWriter out = spec.commandLine().getOut();
            out.println("Restored: " + done.added() + " files. " + done.same() + " were here already, " + done.grown()
                    + " have grown.");
            done.apart()
                    .ifPresent(folder -> out.println("Of " + done.apartFiles()
                            + " files another version is here. Yours were left as they are; those of the backup lie in "
                            + folder + "."));
            if (!done.twins().isEmpty())
                out.println("Of these, names that differ from another one only in small and capital letters: "
                        + String.join(", ", done.twins()) + ". Rename them before you move them to where they belong.");
            if (!done.unlisted().isEmpty())
                out.println("Left out, since they are not in its list of contents: "
                        + String.join(", ", done.unlisted()) + ".");
            return Exit.DONE.code();
        } catch (IOException e) {
            throw new Refusal(
                    Exit.FILE,
                    archive + " could not be restored: " + e.getMessage()
                            + ". What was here is as it was. Try another copy of the backup.");
        }
    }
}
