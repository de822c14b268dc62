package fifthform.monitor.view;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.text.Text;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.testfx.api.FxToolkit;

/**
 * Skips a window test, with the reason, where JavaFX cannot draw text; with {@code -Dscreen.required=true} that is a
 * failure. It stands above {@code @ExtendWith(ApplicationExtension.class)}.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(NeedsScreen.Check.class)
public @interface NeedsScreen {
    /** Asks once a process; by FxToolkit, since after Platform.startup no mouse event arrives under Monocle. */
    final class Check implements ExecutionCondition {
        private static Optional<Optional<String>> answer = Optional.empty();

        /** Not in a static initialiser: the FX thread would wait for this class and this class for the FX thread. */
        private static synchronized Optional<String> refusal() {
            if (answer.isEmpty()) answer = Optional.of(ask());
            return answer.get();
        }

        private static Optional<String> ask() {
            CompletableFuture<Double> width = new CompletableFuture<>();
            try {
                FxToolkit.registerPrimaryStage();
                Platform.runLater(() -> measure(width));
                return width.get(20, TimeUnit.SECONDS) > 0 ? Optional.empty() : Optional.of("text has no width");
            } catch (Exception | LinkageError refused) {
                Throwable deepest = refused;
                while (deepest.getCause() != null) deepest = deepest.getCause();
                return Optional.of(deepest.toString());
            }
        }

        private static void measure(CompletableFuture<Double> width) {
            try {
                width.complete(new Text("8").getLayoutBounds().getWidth());
            } catch (Throwable refused) {
                width.completeExceptionally(refused);
            }
        }

        @Override
        public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
            Optional<String> refusal = refusal();
            if (Boolean.getBoolean("screen.required") && refusal.isPresent())
                throw new IllegalStateException("JavaFX has no screen here: " + refusal.get());
            return refusal.map(why -> ConditionEvaluationResult.disabled("JavaFX has no screen here: " + why))
                    .orElse(ConditionEvaluationResult.enabled("a screen"));
        }
    }
}
