package fifthform.monitor.app;

import fifthform.curves.setup.BowlMaterial;
import fifthform.monitor.bowls.KeptBowl;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** A new bowl. */
@Command(
        name = "add",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Remembers a new bowl, before its first batch.",
        footer = {"", "Example: monitor/run bowls add steel --material steel --name Steel-1kg"})
final class BowlsAddCommand implements Callable<Integer> {
    @ParentCommand
    private BowlsCommand bowls;

    @Parameters(paramLabel = "ID", description = "a short name for --bowl, for example steel or big-glass")
    private String id;

    @Option(names = "--material", description = "steel, glass, plastic, aluminium or unknown; else from the name")
    private String material;

    @Option(names = "--name", description = "its name on the screens")
    private String name;

    @Override
    public Integer call() throws Refusal {
        KeptBowl fresh = BowlWords.fresh(id);
        if (bowls.load().find(fresh.id()).isPresent()) {
            throw new Refusal(
                    Exit.ANSWER_IS_NO,
                    "There is a bowl \"" + fresh.id()
                            + "\" already. Nothing was done. Change it with: monitor/run bowls edit " + fresh.id());
        }
        BowlMaterial wall = material == null ? fresh.material() : BowlWords.material(material);
        if (name != null) BowlWords.mustBeAName(name);
        return bowls.keep(fresh.as(name == null ? id : name, wall));
    }
}
