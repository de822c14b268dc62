package fifthform.monitor.app;

import fifthform.monitor.json.Decimal;
import fifthform.monitor.texts.PlanText;
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
            String said = line(PlanText.ENTER_LEAVE_IT_TO_THE_PLAN.say(question));
            if (said.isEmpty()) return null;
            try {
                double value = Double.parseDouble(said.replace(',', '.'));
                if (value >= low && value <= high) return value;
            } catch (NumberFormatException e) {
                // said again below
            }
            out.println(PlanText.A_NUMBER_FROM_TO_PLEASE.say(Decimal.of(low, 0), Decimal.of(high, 0)));
        }
    }

    /** Words, or the usual ones. */
    String words(String question, String usual) throws Refusal {
        String said = line(PlanText.ENTER.say(question, usual));
        return said.isEmpty() ? usual : said;
    }

    private String line(String question) throws Refusal {
        out.print(question);
        out.flush();
        try {
            String line = in.readLine();
            if (line == null) {
                throw new Refusal(Exit.NOT_UNDERSTOOD, PlanText.THE_ANSWERS_ENDED_TOO_SOON.say());
            }
            return line.strip();
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, PlanText.THE_ANSWER_COULD_NOT_BE_READ.say(e.getMessage()));
        }
    }
}
