package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A first evening from plan to report, as README tells it, with an invented kitchen and an empty data folder. */
class NewcomersEveningTest {
    @TempDir
    Path home;

    private Said say(String... arguments) {
        List<String> all = new ArrayList<>(List.of(arguments));
        all.add(1, "--data=" + home.resolve("data").resolve("fifthform"));
        Said said = Said.by(all.toArray(String[]::new));
        assertEquals(0, said.exit(), () -> String.join(" ", all) + "\n" + said.out() + said.err());
        return said;
    }

    @Test
    void fromPlanToReport() throws Exception {
        Said plan = say("plan", "--amount", "500", "--bowl", "steel", "--tap", "14", "--thermometer", "checked");
        assertTrue(plan.err().contains("Hot water and steam scald"), plan.err());
        assertTrue(plan.out().contains("monitor/run watch --chocolate dark --amount 500"), plan.out());

        assertTrue(say("check-probe", "--probe", "practice", "--ice").out().contains("ice"));

        // Watching has threads of its own and ends its program, so it gets one.
        Program watch = Program.ran(home, "watch", "--probe", "practice", "--screen", "none", "--speed", "max");
        assertEquals(0, watch.exit(), watch.err());
        assertTrue(watch.out().contains("cooled long enough"), watch.out());

        String proof = say("prove", "--probe", "practice", "--speed", "max").out();
        assertTrue(proof.contains("Result: IN TEMPER"), proof);

        String setting = say("set", "--probe", "practice", "--speed", "max", "--room", "21", "--humidity", "50", "last")
                .out();
        assertTrue(setting.contains("pull away from the mould"), setting);
        Said fridge =
                say("set", "--place", "fridge", "--probe", "practice", "--room", "22", "--humidity", "55", "last");
        assertTrue((fridge.out() + fridge.err()).contains("19 min  Look now, after 19 min"), fridge.toString());

        String look = say("look", "last", "--age", "24h", "--bloom", "none", "--snap", "clean", "--gloss", "bright")
                .out();
        assertTrue(look.contains("It counts as fine."), look);

        assertTrue(say("why", "last", "--dont-ask").out().startsWith("These bars are good"));

        String learned = say("learn", "--practice").out();
        assertTrue(learned.contains("Nothing is claimed"), learned);

        Path report = home.resolve("report.pdf");
        say("export", "last", "--as", "pdf", "--out", report.toString());
        assertEquals("%PDF", new String(Files.readAllBytes(report), 0, 4, StandardCharsets.US_ASCII));
    }
}
