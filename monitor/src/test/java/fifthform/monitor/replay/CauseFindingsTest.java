package fifthform.monitor.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.settings.Units;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the Replay screen says of a batch that went wrong. */
class CauseFindingsTest {
    @TempDir
    private Path folder;

    @Test
    void theFirstCauseIsTheHeadlineAndEachHasItsTime() {
        ReplayDesk desk = Desks.withCauses(Desks.tape("demo-own-way", folder));
        List<Finding> found = desk.findings();
        assertTrue(found.get(0).at().isPresent(), found.toString());
        assertFalse(found.get(0).words().contains(";"), "the headline is a few words: " + found.get(0));
        List<Finding> timed = found.stream().filter(f -> f.at().isPresent()).toList();
        assertTrue(timed.size() >= 2, found.toString());
        assertTrue(
                found.stream()
                        .anyMatch(f ->
                                f.words().startsWith("Lifted ") && f.words().endsWith(" late")),
                found.toString());
    }

    /** The alarm of the warning temperature ends where a worse one begins to speak for it; the heat does not. */
    @Test
    void oneStayAboveTheRangeIsToldOnce() {
        ReplayDesk desk = Desks.withCauses(Desks.tape("demo-own-way", folder));
        List<String> stays = desk.findings().stream()
                .map(Finding::words)
                .filter(words -> words.startsWith("Too warm"))
                .toList();
        assertEquals(1, stays.size(), stays.toString());
        assertTrue(desk.findings().toString().contains("34.5"), desk.findings().toString());
    }

    @Test
    void anotherActIsAnsweredOrRefusedWithItsReason() {
        Recording recording = Desks.read(Desks.tape("demo-own-way", folder));
        CauseFindings causes = new CauseFindings(recording, Units.CELSIUS);
        List<WhatIf> answers = new ArrayList<>();
        WhatIfs heard = (batch, last) -> {
            answers.addAll(causes.answers(batch, last));
            return answers;
        };
        new ReplayDesk(recording, Units.CELSIUS, causes, heard, () -> Desks.WRITTEN).computeAll();
        assertEquals(2, answers.size(), answers.toString());
        for (WhatIf answer : answers) {
            assertTrue(
                    answer.change().startsWith("lifted ") || answer.change().startsWith("the water "), answer.change());
            assertEquals(answer.course().isEmpty(), answer.answer().startsWith("No what-if: "), answer.answer());
        }
    }
}
