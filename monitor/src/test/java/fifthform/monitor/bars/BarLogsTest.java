package fifthform.monitor.bars;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.fault.Clue;
import fifthform.curves.setting.Condensation;
import fifthform.curves.setting.CoolingPlace;
import fifthform.curves.setting.SetEvent;
import fifthform.curves.setting.SetInput;
import fifthform.curves.setting.SetPlan;
import fifthform.curves.setting.SetTime;
import fifthform.curves.setting.SettingWatch;
import fifthform.curves.setting.StoreEvent;
import fifthform.curves.setting.StoreWatch;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Slow logs beside a session: written, torn, and gone through again. */
class BarLogsTest {
    private static final Instant START = Instant.parse("2026-06-01T08:00:00Z");

    @TempDir
    Path folder;

    private Path session;

    @BeforeEach
    void aSession() {
        session = folder.resolve("2026-05-31-180000-dark.tempering.jsonl");
    }

    @Test
    void aStoreLogSaysTheSameWhenItIsReadAgainAlsoAfterACut() throws Exception {
        StoreLog log = StoreLog.beside(session, "2026-05-31-180000-dark");
        log.begin(START, "cellar", "/dev/demo");
        StoreWatch watch = StoreWatch.START;
        List<StoreEvent> heard = new ArrayList<>();
        for (int second = 0; second < 5 * 3600; second += 30) {
            double celsius = 20 + Math.max(0, second - 3600) / 3600.0;
            StoreWatch.Step step = watch.next(new SetInput.Reading(START.plusSeconds(second), celsius));
            if (step.minute().isPresent()) log.minute(step.minute().get());
            heard.addAll(step.events());
            watch = step.after();
        }
        StoreLog.Loaded loaded = log.load();
        assertEquals(
                heard.stream().map(StoreEvent::kind).toList(),
                loaded.events().stream().map(StoreEvent::kind).toList());
        assertEquals(StoreEvent.Kind.NEARLY_WARM, heard.get(0).kind());
        assertEquals(List.of(), loaded.problems());
        assertEquals(
                watch.record().watched().toMinutes(),
                loaded.watch().record().watched().toMinutes(),
                1);
        Files.writeString(log.path(), "{\"k\":\"m\",\"at\":\"2026-06-0", StandardOpenOption.APPEND);
        log.bestBefore(START, "1 September");
        StoreLog.Loaded torn = log.load();
        assertEquals(1, torn.problems().size());
        assertEquals(Optional.of("1 September"), torn.bestBefore());
        assertEquals(loaded.watch().record(), torn.watch().record());
    }

    @Test
    void aSetLogIsGoneThroughAnew() throws Exception {
        SetLog log = SetLog.beside(session, "2026-05-31-180000-dark");
        SetPlan plan = SetPlan.of(
                CoolingPlace.FRIDGE, OptionalDouble.of(10), SetTime.Air.STILL, 8, Optional.of(Condensation.in(22, 55)));
        log.begin(START, plan, SetTime.Air.STILL);
        SettingWatch watch = SettingWatch.of(plan);
        List<SetEvent> heard = new ArrayList<>();
        for (int second = 0; second < 1300; second += 5) {
            SetInput input = new SetInput.Reading(START.plusSeconds(second), 10 + 14 * Math.exp(-second / 240.0));
            log.input(input);
            SettingWatch.Step step = watch.next(input);
            heard.addAll(step.events());
            watch = step.after();
        }
        SetInput out = new SetInput.Said(START.plusSeconds(1301), SetInput.Act.TAKEN_OUT);
        log.input(out);
        heard.addAll(watch.next(out).events());
        SetLog.Loaded loaded = log.load();
        assertEquals(
                heard.stream().map(SetEvent::kind).toList(),
                loaded.events().stream().map(SetEvent::kind).toList());
        assertEquals(Optional.of(true), loaded.record().orElseThrow().cameOutWet());
    }

    @Test
    void aLaterAnswerStandsForAnEarlierAndAWordNobodyKnowsIsPassedOver() throws Exception {
        MarkFile marks = MarkFile.beside(session, "2026-05-31-180000-dark");
        marks.add(START, Clue.SAID_WATER, true);
        marks.add(START, Clue.SAID_WATER, false);
        Files.writeString(
                marks.path(), "{\"k\":\"a\",\"clue\":\"heat\",\"answer\":\"yes\"}\n", StandardOpenOption.APPEND);
        MarkFile.Loaded loaded = marks.load();
        assertEquals(Map.of(Clue.SAID_WATER, false), loaded.answers());
        assertEquals(1, loaded.problems().size());
        assertTrue(loaded.problems().get(0).toString().contains("passed over"));
    }
}
