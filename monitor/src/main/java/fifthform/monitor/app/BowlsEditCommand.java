package fifthform.monitor.app;

import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.texts.BowlsText;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Another name or material for a bowl. */
@Command(name = "edit", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class BowlsEditCommand implements Callable<Integer> {
    @ParentCommand
    private BowlsCommand bowls;

    @Parameters(paramLabel = "ID")
    private String id;

    @Option(names = "--material")
    private String material;

    @Option(names = "--name")
    private String name;

    @Override
    public Integer call() throws Refusal {
        KeptBowl bowl = BowlWords.known(id, bowls.load());
        if (name == null && material == null) {
            throw new Refusal(Exit.NOT_UNDERSTOOD, BowlsText.NEITHER_NAME_NOR_MATERIAL_WAS.say());
        }
        if (name != null) BowlWords.mustBeAName(name);
        return bowls.keep(bowl.as(
                name == null ? bowl.name() : name, material == null ? bowl.material() : BowlWords.material(material)));
    }
}
