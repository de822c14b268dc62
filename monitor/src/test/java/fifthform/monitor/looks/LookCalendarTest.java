package fifthform.monitor.looks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.io.ParseWarning;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The calendar file, read back by a library that others wrote (biweekly), and by the letter of RFC 5545. */
class LookCalendarTest {
    private static final Instant ENDED = Instant.parse("2026-01-31T21:40:10Z");
    private static final String NAME = "Dark; 70 %, “Näscherei” \\ with a name that is far too long for one line of it";

    private static LookCalendar calendar(Optional<LocalTime> at) {
        return new LookCalendar("2026-01-31-204000-dark", NAME, ENDED, ZoneOffset.ofHours(2), at);
    }

    private static ICalendar parsed(String text) {
        List<List<ParseWarning>> warnings = new ArrayList<>();
        ICalendar calendar = Biweekly.parse(text).warnings(warnings).first();
        assertTrue(warnings.stream().allMatch(List::isEmpty), warnings.toString());
        assertTrue(
                calendar.validate(ICalVersion.V2_0).isEmpty(),
                () -> calendar.validate(ICalVersion.V2_0).toString());
        return calendar;
    }

    @Test
    void anIndependentParserTakesItAndFindsFourLooksWithAlarms() {
        List<VEvent> events = parsed(calendar(Optional.empty()).text(ENDED)).getEvents();
        assertEquals(4, events.size());
        long[] hours = {24, 48, 168, 672};
        for (int i = 0; i < hours.length; i++) {
            VEvent event = events.get(i);
            Instant starts = event.getDateStart().getValue().toInstant();
            assertEquals(ENDED.plus(Duration.ofHours(hours[i])), starts);
            assertTrue(event.getSummary().getValue().startsWith("Look at the bars of " + NAME));
            assertTrue(
                    event.getDescription().getValue().contains("\nKeep it with: monitor/run look 2026-01-31-204000"));
            assertEquals(1, event.getAlarms().size());
            VAlarm alarm = event.getAlarms().get(0);
            assertTrue(alarm.getAction().isDisplay());
        }
    }

    @Test
    void uidsAreTheSameEachTimeAndDifferFromLookToLook() {
        List<String> first = uids(calendar(Optional.empty()).text(ENDED));
        assertEquals(first, uids(calendar(Optional.of(LocalTime.of(8, 0))).text(ENDED.plusSeconds(60))));
        assertEquals(4, first.stream().distinct().count());
    }

    private static List<String> uids(String text) {
        return parsed(text).getEvents().stream().map(e -> e.getUid().getValue()).toList();
    }

    @Test
    void noLineIsLongerThanSeventyFiveOctetsAndAllEndInCrLf() {
        String text = calendar(Optional.empty()).text(ENDED);
        assertTrue(text.endsWith("END:VCALENDAR\r\n"));
        assertEquals(
                text.chars().filter(c -> c == '\n').count(),
                text.chars().filter(c -> c == '\r').count());
        for (String line : text.split("\r\n")) {
            int octets = line.getBytes(StandardCharsets.UTF_8).length;
            assertTrue(octets <= 75, octets + ": " + line);
            assertTrue(line.indexOf('\ufffd') < 0, line);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 7, 12, 18, 23})
    void atATimeOfDayALookIsLateEnoughToCount(int hour) {
        LookCalendar calendar = calendar(Optional.of(LocalTime.of(hour, 30)));
        for (LookTime look : LookTime.values()) {
            Instant when = calendar.when(look);
            assertEquals(
                    LocalTime.of(hour, 30), when.atOffset(ZoneOffset.ofHours(2)).toLocalTime());
            double age = Duration.between(ENDED, when).toMinutes() / 60.0;
            assertTrue(age >= look.hadFromHours() && age < look.hadFromHours() + 24, look + " at " + age);
        }
    }

    @Test
    void whatIsPastIsLeftOut() {
        assertEquals(
                List.of(LookTime.WEEK, LookTime.FOUR_WEEKS),
                calendar(Optional.empty()).toCome(ENDED.plus(Duration.ofHours(50))));
        LookCalendar calendar = calendar(Optional.empty());
        Instant late = ENDED.plus(Duration.ofDays(40));
        assertEquals(List.of(), calendar.toCome(late));
        assertThrows(IllegalStateException.class, () -> calendar.text(late));
    }
}
