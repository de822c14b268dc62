package fifthform.monitor.app;

import fifthform.monitor.json.Decimal;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;

/** Asks at a terminal for what was not said; Enter takes the usual. */
final class PlanQuestions {
    private final BufferedReader in;
    private final PrintWriter out;

    PlanQuestions(BufferedReader in, PrintWriter out) {
        this.in = in;
        this.out = out;
    }

    /** A number, or null where only Enter came. */
    Double number(String question, double low, double high) throws Refusal {
        while (true) {
            String said = line(question + " [Enter: leave it to the plan] ");
            if (said.isEmpty()) return null;
            try {
                double value = Double.parseDouble(said.replace(',', '.'));
                if (value >= low && value <= high) return value;
            } catch (NumberFormatException e) {
                // said again below
            }
            out.println("A number from " + Decimal.of(low, 0) + " to " + Decimal.of(high, 0) + ", please.");
        }
    }

    /** Words, or the usual ones. */
    String words(String question, String usual) throws Refusal {
        String said = line(question + " [Enter: " + usual + "] ");
        return said.isEmpty() ? usual : said;
    }

    private String line(String question) throws Refusal {
        out.print(question);
        out.flush();
        try {
            String line = in.readLine();
            if (line == null) {
                throw new Refusal(
                        Exit.NOT_UNDERSTOOD, "The answers ended too soon. Nothing was done. Use options instead.");
            }
            return line.strip();
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, "The answer could not be read: " + e.getMessage() + ". Use options instead.");
        }
    }
}
