package fifthform.monitor.app;

import fifthform.curves.setup.BowlMaterial;
import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.texts.BowlsText;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** A new bowl. */
@Command(name = "add", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class BowlsAddCommand implements Callable<Integer> {
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
        KeptBowl fresh = BowlWords.fresh(id);
        if (bowls.load().find(fresh.id()).isPresent()) {
            throw new Refusal(Exit.ANSWER_IS_NO, BowlsText.THERE_IS_A_BOWL_ALREADY.say(fresh.id(), fresh.id()));
        }
        BowlMaterial wall = material == null ? fresh.material() : BowlWords.material(material);
        if (name != null) BowlWords.mustBeAName(name);
        return bowls.keep(fresh.as(name == null ? id : name, wall));
    }
}
