package fifthform.probe.protocol;

import fifthform.curves.check.Problem;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What to ask an instrument next: who it is, its unit, then readings for ever; after a silence its error queue, and another
 * way to ask. Unit and function are asked for again now and then, because a hand at the instrument's buttons changes them.
 */
final class ScpiDialogue {
    /** A kind of question. */
    enum Step {
        IDENTITY,
        UNIT,
        FUNCTION,
        READING,
        ERROR;

        /** Whether it is asked at the pace of readings; the others as soon as the line is quiet. */
        boolean isPaced() {
            return this == READING || this == FUNCTION;
        }
    }

    /** What a line was to the dialogue. */
    enum Reply {
        /** The answer to what was asked last. */
        ANSWER,
        /** Understood, and no answer to that. */
        REMARK,
        NOTHING
    }

    /** A changed unit is noticed within so many readings, five seconds as a rule (our choice). */
    private static final int READINGS_BETWEEN_CHECKS = 10;

    /** One lost answer is soon forgotten; three are no accident (our choice). */
    private static final int ENOUGH = 3;

    /** An instrument keeps some twenty errors (common practice, no source); one that always has another is not emptied. */
    private static final int MOST_ERRORS = 20;

    /** What READ? and FETC? give while these are set is no temperature: SCPI-1999 volume 2, 19 (from memory). */
    private static final List<String> NO_TEMPERATURE =
            List.of("VOLT", "CURR", "RES", "FRES", "FREQ", "PER", "CAP", "DIOD", "CONT");

    private final ScpiPlan plan;
    private Step next = Step.IDENTITY;
    private Optional<Step> asked = Optional.empty();
    private boolean garbledSince;
    private Optional<String> model = Optional.empty();
    private Optional<Unit> toldUnit = Optional.empty();
    /** The unit has been asked for, and neither told nor refused by silence. */
    private boolean unitOpen;

    private boolean functionChecked;
    private boolean functionKnown;
    private boolean functionWrong;
    private int query;
    private boolean querySettled;
    private int readings;
    private int vain;
    private int errors;
    private Optional<ScpiAnswer.QueueEntry> lastError = Optional.empty();
    private Optional<Problem> complaint = Optional.empty();

    ScpiDialogue(ScpiPlan plan) {
        this.plan = plan;
    }

    Step next() {
        return next;
    }

    /** The question goes out. */
    String asks(Step step) {
        asked = Optional.of(step);
        garbledSince = false;
        if (step == Step.UNIT && toldUnit.isEmpty()) unitOpen = true;
        return words(step);
    }

    private String words(Step step) {
        return switch (step) {
            case IDENTITY -> "*IDN?";
            case UNIT -> "UNIT:TEMP?";
            case FUNCTION -> "FUNC?";
            case READING -> plan.withChannels(plan.queries().get(query));
            case ERROR -> "SYST:ERR?";
        };
    }

    /**
     * Unit of numbers that stand alone; empty as long as it is not known whether the instrument will tell, and where they
     * are no temperatures.
     */
    Optional<Unit> unit() {
        if (functionWrong) return Optional.empty();
        if (plan.unit().isPresent()) return plan.unit();
        if (toldUnit.isPresent()) return toldUnit;
        return unitOpen ? Optional.empty() : Optional.of(Unit.CELSIUS);
    }

    Optional<String> model() {
        return model;
    }

    Optional<Problem> complaint() {
        return complaint;
    }

    /** A line that is no reading. */
    Reply said(String line) {
        for (Step step : Step.values()) if (line.equals(words(step))) return Reply.REMARK; // our own question came back
        Optional<ScpiAnswer.QueueEntry> error = ScpiAnswer.error(line);
        if (error.isPresent()) return error(error.get());
        Optional<Unit> unit = ScpiAnswer.unit(line);
        if (unit.isPresent()) {
            toldUnit = unit;
            unitOpen = false;
            return answers(Step.UNIT, reading());
        }
        if (asked.filter(step -> step == Step.FUNCTION).isPresent()
                && ScpiAnswer.function(line).isPresent()) return function(line);
        return identity(line);
    }

    private Reply identity(String line) {
        boolean text = line.matches("[ -~]*[A-Za-z][ -~]*")
                && asked.filter(step -> step == Step.IDENTITY).isPresent();
        Optional<String> told = ScpiAnswer.model(line).or(() -> text ? Optional.of(line) : Optional.empty());
        if (told.isEmpty()) return Reply.NOTHING;
        model = told;
        return answers(Step.IDENTITY, afterIdentity());
    }

    private Reply error(ScpiAnswer.QueueEntry entry) {
        if (entry.code() != 0) lastError = Optional.of(entry);
        boolean more = entry.code() != 0 && ++errors < MOST_ERRORS;
        Reply reply = answers(Step.ERROR, more ? Step.ERROR : reading());
        if (next != Step.ERROR) complain();
        return reply;
    }

    private Reply function(String line) {
        String function = ScpiAnswer.function(line).orElseThrow().toUpperCase(Locale.ROOT);
        boolean wrong = NO_TEMPERATURE.stream().anyMatch(function::startsWith);
        functionKnown = true;
        functionWrong = wrong;
        functionChecked = !wrong;
        if (wrong)
            tell(
                    "The instrument is set to measure " + function + ", not a temperature.",
                    "Set it to its thermocouple's function.");
        return answers(Step.FUNCTION, reading());
    }

    private Reply answers(Step step, Step then) {
        if (asked.filter(last -> last == step).isEmpty()) return Reply.REMARK;
        asked = Optional.empty();
        next = then;
        return Reply.ANSWER;
    }

    /** Bytes came that are no answer to anything. */
    void garbled() {
        garbledSince = true;
    }

    /** A temperature or its fault came; true if it was asked for. */
    boolean readingCame() {
        vain = 0;
        errors = 0;
        lastError = Optional.empty();
        complaint = Optional.empty();
        boolean was = asked.filter(step -> step == Step.READING).isPresent();
        if (!was) return false;
        querySettled = true;
        asked = Optional.empty();
        next = ++readings % READINGS_BETWEEN_CHECKS == 0 ? check() : reading();
        return true;
    }

    void wrongCount(int numbers) {
        tell(
                "The instrument answers with " + numbers + " numbers where " + plan.numbers() + " was expected.",
                "Name its channels, for example channels=101/102, or choose another query.");
    }

    /** The answer to the last question did not come. */
    void silent() {
        if (asked.isEmpty()) return;
        Step step = asked.get();
        asked = Optional.empty();
        errors = 0;
        switch (step) {
            case IDENTITY -> next = afterIdentity();
            case UNIT -> {
                // Spoiled on the way: only silence means that it does not know.
                boolean ask = garbledSince && toldUnit.isEmpty();
                if (!ask) unitOpen = false;
                next = ask ? Step.UNIT : toldUnit.isPresent() ? reading() : Step.ERROR;
            }
            case FUNCTION -> {
                functionChecked = true;
                next = Step.ERROR;
            }
            case READING -> {
                vain++;
                if (!querySettled && !garbledSince)
                    query = (query + 1) % plan.queries().size();
                next = Step.ERROR;
            }
            case ERROR -> {
                complain();
                next = reading();
            }
        }
    }

    private Step afterIdentity() {
        return plan.unit().isPresent() ? reading() : Step.UNIT;
    }

    private Step reading() {
        boolean measures = plan.queries().get(query).equals(ScpiPlan.MEASURE);
        return measures || functionChecked ? Step.READING : Step.FUNCTION;
    }

    private Step check() {
        if (functionKnown) functionChecked = false;
        return plan.unit().isEmpty() && toldUnit.isPresent() ? Step.UNIT : reading();
    }

    private void complain() {
        if (vain < ENOUGH) return;
        if (lastError.isPresent())
            tell(
                    "The instrument reports error " + lastError.get().code() + ", \""
                            + lastError.get().text() + "\".",
                    "Look it up in its manual; choose another query= if it does not know the question.");
        else
            tell(
                    "The instrument has not answered the last questions.",
                    "Check that it is on and set to its serial port, baud and parity, line-end=, and the cable"
                            + " (crossed or straight).");
    }

    private void tell(String what, String whatToDo) {
        complaint = Optional.of(new Problem("scpi", what + " No reading can be taken.", whatToDo));
    }
}
