package fifthform.monitor.looks;

import fifthform.monitor.store.Session;
import fifthform.monitor.texts.LooksText;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * Looks that are still to come as a calendar file, RFC 5545 (iCalendar): lines of at most 75 octets that end in CR LF,
 * times in UTC, one event a look with an alarm of its own. A look keeps its UID, so a file that is taken in twice gives no
 * second entry.
 */
public final class LookCalendar {
    private static final DateTimeFormatter UTC =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private static final String END_OF_LINE = "\r\n";

    /** RFC 5545, 3.1: lines are not to be longer, without the end of the line. */
    private static final int LONGEST_OCTETS = 75;

    private final String session;
    private final String chocolate;
    private final Instant ended;
    private final ZoneOffset zone;
    private final Optional<LocalTime> at;

    /**
     * The calendar of one batch.
     *
     * @param session its name
     * @param chocolate what people call it
     * @param ended when the batch ended
     * @param zone the kitchen's offset
     * @param at time of day at which the maker has time for it; otherwise that at which the batch ended
     */
    public LookCalendar(String session, String chocolate, Instant ended, ZoneOffset zone, Optional<LocalTime> at) {
        this.session = Objects.requireNonNull(session, "session");
        this.chocolate = Objects.requireNonNull(chocolate, "chocolate");
        this.ended = Objects.requireNonNull(ended, "ended");
        this.zone = Objects.requireNonNull(zone, "zone");
        this.at = Objects.requireNonNull(at, "at");
    }

    /** The calendar of this recorded batch. */
    public static LookCalendar of(Session session, Optional<LocalTime> at) {
        return new LookCalendar(
                session.header().session(),
                session.header().setup().recipe().name(),
                session.lastWall(),
                session.header().zone(),
                at);
    }

    /** When this look is to be made: at the wanted time of day, once the bars are old enough for it to count. */
    public Instant when(LookTime look) {
        Instant exact = look.after(ended);
        if (at.isEmpty()) return exact;
        Instant earliest = ended.plusSeconds(3600L * look.hadFromHours());
        ZonedDateTime day = earliest.atZone(zone).with(at.get());
        return (day.toInstant().isBefore(earliest) ? day.plusDays(1) : day).toInstant();
    }

    /** The looks that are still to come. */
    public List<LookTime> toCome(Instant now) {
        List<LookTime> left = new ArrayList<>();
        for (LookTime look : LookTime.values()) if (when(look).isAfter(now)) left.add(look);
        return left;
    }

    /** The file, with the looks that are still to come; a calendar holds one at least. */
    public String text(Instant now) {
        if (toCome(now).isEmpty()) throw new IllegalStateException("no look is still to come");
        StringBuilder out = new StringBuilder();
        line(out, "BEGIN:VCALENDAR");
        line(out, "VERSION:2.0");
        line(out, "PRODID:-//Fifth Form//Looks at bars//EN");
        line(out, "CALSCALE:GREGORIAN");
        line(out, "METHOD:PUBLISH");
        for (LookTime look : toCome(now)) event(out, look, now);
        line(out, "END:VCALENDAR");
        return out.toString();
    }

    private void event(StringBuilder out, LookTime look, Instant now) {
        String what = LooksText.LOOK_AT_THE_BARS_OF_OLD.say(chocolate, look.age());
        line(out, "BEGIN:VEVENT");
        line(out, "UID:" + escaped(session) + "." + look.hours() + "h@fifthform.invalid");
        line(out, "DTSTAMP:" + UTC.format(now));
        line(out, "DTSTART:" + UTC.format(when(look)));
        line(out, "DURATION:PT15M");
        line(out, "SUMMARY:" + escaped(what));
        line(out, "DESCRIPTION:" + escaped(LooksText.LOOK_FOR_KEEP_IT_WITH_MONITOR.say(look.lookFor(), session)));
        line(out, "TRANSP:TRANSPARENT");
        line(out, "BEGIN:VALARM");
        line(out, "ACTION:DISPLAY");
        line(out, "DESCRIPTION:" + escaped(what));
        line(out, "TRIGGER;RELATED=START:PT0S");
        line(out, "END:VALARM");
        line(out, "END:VEVENT");
    }

    /** RFC 5545, 3.3.11. */
    static String escaped(String text) {
        return text.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replace("\r\n", "\\n")
                .replace("\n", "\\n")
                .replace("\r", "\\n");
    }

    /** RFC 5545, 3.1: a long line goes on behind a space, and no character is cut in two. */
    private static void line(StringBuilder out, String text) {
        int octets = 0;
        for (int i = 0; i < text.length(); ) {
            int point = text.codePointAt(i);
            String character = new String(Character.toChars(Character.isISOControl(point) ? '?' : point));
            int more = character.getBytes(StandardCharsets.UTF_8).length;
            if (octets + more > LONGEST_OCTETS) {
                out.append(END_OF_LINE).append(' ');
                octets = 1;
            }
            out.append(character);
            octets += more;
            i += Character.charCount(point);
        }
        out.append(END_OF_LINE);
    }
}
