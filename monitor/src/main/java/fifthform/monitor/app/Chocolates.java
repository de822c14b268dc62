package fifthform.monitor.app;

import fifthform.curves.recipe.Recipe;
import fifthform.monitor.catalogue.KnownRecipe;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.texts.CommandText;
import java.io.PrintWriter;

/** Finds the chocolate a command was asked for. */
final class Chocolates {
    private Chocolates() {}

    /** The recipe with this id or in this file; remarks about others go to {@code err}. */
    static Recipe find(String idOrPath, Folders folders, PrintWriter err) throws Refusal {
        Recipes recipes = Recipes.load(folders.recipes());
        recipes.remarks().forEach(err::println);
        recipes.problems().forEach(p -> err.println(CommandText.PASSED_OVER.say(p)));
        return find(idOrPath, recipes).recipe();
    }

    /** The recipe with this id or in this file: an id that nobody knows is a slip of the tongue, not of the disk. */
    static KnownRecipe find(String idOrPath, Recipes recipes) throws Refusal {
        Exit exit = Recipes.namesFile(idOrPath) ? Exit.FILE : Exit.NOT_UNDERSTOOD;
        return Answers.orRefuse(recipes.find(idOrPath), exit);
    }
}
