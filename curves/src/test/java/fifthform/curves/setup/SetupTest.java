package fifthform.curves.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import fifthform.curves.engine.TestRecipes;
import fifthform.curves.recipe.Recipe;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A set-up with one thing changed is otherwise the same, whatever is added to it later. */
class SetupTest {
    /** Nothing in it is what a maker has who says nothing. */
    private static final Setup TOLD = new Setup(
            TestRecipes.dark(),
            new Bowl("told", BowlMaterial.GLASS, OptionalDouble.of(700), Optional.empty()),
            TestRecipes.setup().probes(),
            Duration.ofMillis(1234),
            OptionalDouble.of(44),
            OptionalDouble.of(19),
            Origin.REAL,
            Approach.ONE_LIFT,
            OptionalDouble.of(12),
            Beginning.WHOLE,
            Optional.empty());

    private static final Map<String, Object> OTHERS = Map.of(
            "reactionTime", Duration.ofSeconds(9),
            "recipe", hotter(TestRecipes.dark()),
            "approach", Approach.TOUCHES_WHERE_UNSURE,
            "seedGrams", OptionalDouble.empty(),
            "beginning", new Beginning.InTemper(),
            "holding", Optional.of(new Holding(Duration.ofMinutes(40), Holding.Warmth.AIR)));

    private static Recipe hotter(Recipe r) {
        return new Recipe(
                r.id(),
                r.name(),
                r.composition(),
                r.melt(),
                r.cool(),
                r.work(),
                r.meltOut(),
                r.scorchCelsius() + 1,
                r.rewarmBathCelsius(),
                r.basis(),
                r.sources());
    }

    @Test
    void eachWithChangesItsOwnFieldAndKeepsAllOthers() throws ReflectiveOperationException {
        List<Method> withs = Arrays.stream(Setup.class.getMethods())
                .filter(m -> m.getReturnType() == Setup.class && m.getName().startsWith("with"))
                .toList();
        assertEquals(OTHERS.size(), withs.size(), "a value for each of " + withs);
        for (Method with : withs) {
            String name = with.getName().substring("with".length());
            String field = name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
            Setup changed = (Setup) with.invoke(TOLD, OTHERS.get(field));
            for (RecordComponent part : Setup.class.getRecordComponents()) {
                Object before = part.getAccessor().invoke(TOLD);
                Object after = part.getAccessor().invoke(changed);
                if (part.getName().equals(field)) assertNotEquals(before, after, with.getName());
                else assertEquals(before, after, part.getName() + " after " + with.getName());
            }
        }
    }

    /** A shorter one would fill in what its caller forgot to hand on. */
    @Test
    void thereIsOneConstructorOnly() {
        assertEquals(1, Setup.class.getDeclaredConstructors().length);
    }
}
