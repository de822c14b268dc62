package fifthform.probe.protocol;

import fifthform.curves.check.Problem;
import java.util.Optional;

/** Why a device gives no temperature, gathered until it does; in words for the maker. */
final class RegisterComplaint {
    /** One unanswered question is soon forgotten on a long wire; three are no accident (our choice). */
    private static final int ENOUGH = 3;

    private final RegisterQuestion question;
    private int unanswered;
    private int damaged;
    private int echoes;
    private int foreign;
    private Optional<Problem> told = Optional.empty();

    RegisterComplaint(RegisterQuestion question) {
        this.question = question;
    }

    Optional<Problem> told() {
        return told;
    }

    void answered() {
        unanswered = 0;
        damaged = 0;
        echoes = 0;
        foreign = 0;
        told = Optional.empty();
    }

    void damaged() {
        damaged++;
    }

    void echoed() {
        echoes++;
    }

    void foreign() {
        foreign++;
    }

    void dead() {
        tell(
                unit() + " answers with zeros only, in the tip's register and in the junction's.",
                "Check that its sensor module is connected, and the numbers of the registers.");
    }

    void unanswered() {
        unanswered++;
        if (unanswered < ENOUGH) return;
        if (damaged > 0)
            tell(
                    unit() + " answers, but its answers arrived damaged (wrong CRC).",
                    "Check baud and parity, the wires and their shield, and that both ends share one ground.");
        else if (echoes > 0)
            tell(
                    "Only our own question comes back; " + unit() + " has not answered the last questions.",
                    "Check that the device has power, its unit number, baud and parity, and whether A and B are swapped.");
        else if (foreign > 0)
            tell(
                    "Another device answers, or one that was asked for something else; " + unit()
                            + " has not answered the last questions.",
                    "Check unit=, and that no other program or controller asks on this line.");
        else
            tell(
                    unit() + " has not answered the last questions.",
                    "Check that the device has power, its unit number, baud and parity, and whether A and B are swapped.");
    }

    /** Meaning of the codes: MODBUS Application Protocol Specification V1.1b3, 7 (from memory). */
    void refused(int exception) {
        unanswered = 0;
        switch (exception) {
            case 1 ->
                tell(
                        unit() + " does not give " + question.table().word()
                                + " registers (exception 1, illegal function).",
                        "Try table=" + question.table().other().word() + ".");
            case 2 -> noSuchRegister();
            case 3 ->
                tell(
                        unit() + " does not give " + question.count()
                                + " registers in one answer (exception 3, illegal data value).",
                        "Name fewer registers, or such as lie closer together.");
            case 5, 6 ->
                tell(
                        unit() + " is busy (exception " + exception + ").",
                        "It is asked again by itself; if this stays, switch the device off and on.");
            case 10, 11 ->
                tell(
                        "A gateway cannot reach " + unit() + " (exception " + exception + ").",
                        "Check unit= and the line behind the gateway.");
            default ->
                tell(
                        unit() + " reports a failure of its own (exception " + exception + ").",
                        "Look at the device and its sensor; its manual may explain the code.");
        }
    }

    private void noSuchRegister() {
        int first = question.first();
        RegisterTable table = question.table();
        String which = question.count() == 1
                ? "no " + table.word() + " register " + first
                : "not all of the " + table.word() + " registers " + first + " to " + (first + question.count() - 1);
        tell(
                unit() + " has " + which + ", counted from 0 (exception 2, illegal data address).",
                "Change register=. Manuals that count from 1 call this register " + (first + 1)
                        + ", others " + (table.firstInManuals() + first) + "; else try table="
                        + table.other().word() + "." + between());
    }

    /** All registers are read in one question, gaps included. */
    private String between() {
        return question.count() <= 2
                ? ""
                : " The registers between those you named are read too; if the device lacks one, name only neighbours.";
    }

    private String unit() {
        return "Unit " + question.unit();
    }

    private void tell(String what, String whatToDo) {
        told = Optional.of(new Problem("modbus-rtu", what + " No reading can be taken.", whatToDo));
    }
}
