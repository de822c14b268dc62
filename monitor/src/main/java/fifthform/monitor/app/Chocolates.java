package fifthform.monitor.app;

import fifthform.curves.recipe.Recipe;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.settings.Folders;
import java.io.PrintWriter;

/** Finds the chocolate a command was asked for. */
final class Chocolates {
    private Chocolates() {}

    /** The recipe with this id or in this file; remarks about others go to {@code err}. */
    static Recipe find(String idOrPath, Folders folders, PrintWriter err) throws Refusal {
        Recipes recipes = Recipes.load(folders.recipes());
        recipes.remarks().forEach(err::println);
        recipes.problems().forEach(p -> err.println("Passed over: " + p));
        return Answers.orRefuse(recipes.find(idOrPath), Exit.FILE).recipe();
    }
}
