package fifthform.monitor.app;

import fifthform.monitor.bowls.KeptBowl;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Another name or material for a bowl. */
@Command(
        name = "edit",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Changes the name or the material of a bowl; what it taught stays.",
        footer = {"", "Example, for a bowl that was added as steel:", "  monitor/run bowls edit steel --name Thin-steel"
        })
final class BowlsEditCommand implements Callable<Integer> {
    @ParentCommand
    private BowlsCommand bowls;

    @Parameters(paramLabel = "ID", description = "id or name of the bowl")
    private String id;

    @Option(names = "--material", description = "steel, glass, plastic, aluminium or unknown")
    private String material;

    @Option(names = "--name", description = "its name on the screens")
    private String name;

    @Override
    public Integer call() throws Refusal {
        KeptBowl bowl = BowlWords.known(id, bowls.load());
        if (name == null && material == null) {
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    "Neither --name nor --material was given. Nothing was done. Say what is to be changed.");
        }
        if (name != null) BowlWords.mustBeAName(name);
        return bowls.keep(bowl.as(
                name == null ? bowl.name() : name, material == null ? bowl.material() : BowlWords.material(material)));
    }
}
