package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.texts.CommandText;
import fifthform.monitor.texts.PretendLanguage;
import fifthform.monitor.texts.SetupText;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The language of the settings, for programs of their own: it is chosen before anything is said. */
class ChosenLanguageTest {
    @TempDir
    Path home;

    private void settings(String text) throws Exception {
        Path file = home.resolve("config/fifthform/settings.json");
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    @Test
    void theSettingsSayIn() throws Exception {
        PretendLanguage language = PretendLanguage.spoken();
        String network = SetupText.NETWORK.say();
        String refusal = CommandText.NOTHING_WAS_DONE_TRY_HELP.say("monitor/run setup");
        Program chosen;
        Program english;
        Program mistyped;
        try {
            settings("{\"language\":\"" + PretendLanguage.CODE + "\"}");
            chosen = Program.ran(home, "setup", "--screen", "lines");
            mistyped = Program.ran(home, "setup", "--scren");
            settings("{\"language\":\"en\"}");
            english = Program.ran(home, "setup", "--screen", "lines");
        } finally {
            language.close();
        }
        assertTrue(chosen.out().contains(network), chosen.out() + chosen.err());
        assertTrue(mistyped.err().contains(refusal), mistyped.err());
        assertTrue(english.out().contains(SetupText.NETWORK.say()), english.out() + english.err());
        assertFalse(english.out().contains(network), english.out());
    }

    @Test
    void oneWithoutTextsIsToldAndLeftAside() throws Exception {
        settings("{\"language\":\"fr\"}");
        Program setup = Program.ran(home, "setup", "--screen", "lines");
        assertTrue(setup.err().contains("\"language\" is \"fr\", and there are no texts in it"), setup.err());
        assertTrue(setup.err().contains("Possible: en"), setup.err());
        assertTrue(setup.out().contains(SetupText.NETWORK.say()), setup.out());
    }

    @Test
    void oneWithoutTextsIsNotTaken() throws Exception {
        Program setup = Program.ran(home, "setup", "--set", "language=fr");
        assertEquals(Exit.NOT_UNDERSTOOD.code(), setup.exit());
        assertTrue(setup.err().contains("There are no texts in \"fr\"."), setup.err());
        assertTrue(setup.err().contains("Say one of: computer, en."), setup.err());
        assertEquals(0, Program.ran(home, "setup", "--set", "language=en").exit());
        assertTrue(
                Files.readString(home.resolve("config/fifthform/settings.json")).contains("\"language\":\"en\""));
    }
}
