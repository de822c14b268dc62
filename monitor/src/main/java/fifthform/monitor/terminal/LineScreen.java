package fifthform.monitor.terminal;

import fifthform.monitor.model.OtherWords;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.model.WatchPicture.AlarmRow;
import fifthform.monitor.model.WatchPicture.Band;
import fifthform.monitor.model.WatchPicture.Crystals;
import fifthform.monitor.model.WatchPicture.Flag;
import fifthform.monitor.model.WatchPicture.Mark;
import fifthform.monitor.model.WatchPicture.Numeral;
import fifthform.monitor.model.WatchPicture.Outlook;
import fifthform.monitor.model.WatchPicture.Tone;
import fifthform.monitor.texts.TerminalText;
import fifthform.monitor.texts.UnitText;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * The Watch screen as plain lines, for pipes and screen readers: news at once, otherwise one line every ten seconds
 * of the batch. Pure: the next screen and its lines follow from this one, a picture and the time.
 *
 * @param before the picture printed last
 * @param statusAt batch time of the last status line
 */
public record LineScreen(Optional<WatchPicture> before, Duration statusAt) {
    private static final Duration STATUS_EVERY = Duration.ofSeconds(10);

    /** Nothing printed yet. */
    public static final LineScreen START = new LineScreen(Optional.empty(), Duration.ZERO);

    public LineScreen {
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(statusAt, "statusAt");
    }

    /** The screen after a picture, and the lines to print for it. */
    public record Printed(LineScreen after, List<String> lines) {
        public Printed {
            lines = List.copyOf(lines);
        }
    }

    /** @param elapsed batch time at which {@code picture} holds */
    public Printed next(WatchPicture picture, Duration elapsed) {
        List<String> said = new ArrayList<>();
        if (before.isEmpty()) introduction(picture, said);
        else changes(before.get(), picture, said);
        boolean due = before.isEmpty() || elapsed.minus(statusAt).compareTo(STATUS_EVERY) >= 0;
        boolean news = !said.isEmpty();
        if (due || news) said.add(status(picture));
        String time = time(elapsed);
        List<String> lines = said.stream().map(words -> time + "  " + words).toList();
        return new Printed(new LineScreen(Optional.of(picture), due || news ? elapsed : statusAt), lines);
    }

    private static void introduction(WatchPicture picture, List<String> said) {
        if (picture.simulated()) said.add(TerminalText.PRACTICE_THIS_BOWL_IS.say());
        picture.banner().ifPresent(said::add);
        said.add(TerminalText.WATCHING.say(picture.subject()));
        said.add(TerminalText.A_LINE_WITH_DO_NOW_IS.say());
        headline(picture.band(), said);
        picture.alarms().forEach(alarm -> said.add(alarm(alarm)));
        crystals(Crystals.NONE, picture.crystals(), said);
        said.addAll(picture.numeral().trust());
    }

    private static void changes(WatchPicture was, WatchPicture is, List<String> said) {
        if (!phase(was).equals(phase(is))) said.add(TerminalText.PHASE.say(phase(is)));
        boolean sameTone = was.band().tone() == is.band().tone();
        if (!sameTone || !steady(was.band().headline()).equals(steady(is.band().headline()))) {
            headline(is.band(), said);
            // Nobody can ask a pipe, so it tells the reason unasked.
            if (is.band().tone() != Tone.CALM && !is.why().isEmpty())
                said.add(TerminalText.BECAUSE.say(String.join(" ", is.why())));
        }
        List<String> known = was.alarms().stream().map(LineScreen::steady).toList();
        for (AlarmRow alarm : is.alarms()) if (!known.contains(steady(alarm))) said.add(alarm(alarm));
        List<String> left =
                is.alarms().stream().map(alarm -> steady(alarm.words())).toList();
        for (AlarmRow alarm : was.alarms())
            if (!left.contains(steady(alarm.words()))) said.add(TerminalText.OVER.say(alarm.words()));
        for (Mark mark : is.marks())
            if (!mark.good() && !was.marks().contains(mark)) said.add(TerminalText.ATTENTION.say(mark.word()));
        if (!was.foot().equals(is.foot()) && is.foot().startsWith(OtherWords.BEGINNING.say())) said.add(is.foot());
        losses(was, is, said);
        crystals(was.crystals(), is.crystals(), said);
        List<String> trusted =
                was.numeral().trust().stream().map(LineScreen::steady).toList();
        for (String words : is.numeral().trust()) if (!trusted.contains(steady(words))) said.add(words);
        if (!was.undo().equals(is.undo())) is.undo().ifPresent(said::add);
        if (!was.banner().equals(is.banner())) is.banner().ifPresent(said::add);
    }

    /** A new word with its limits, and its reason unasked; a question once. */
    private static void crystals(Crystals was, Crystals is, List<String> said) {
        if (is.isSaid() && !was.word().equals(is.word())) {
            said.add(is.line());
            said.add(TerminalText.BECAUSE.say(String.join(" ", is.why())));
        }
        if (!is.survived().isEmpty() && !steady(is.survived()).equals(steady(was.survived()))) said.add(is.survived());
        if (!is.question().isEmpty() && !is.question().equals(was.question())) said.add(is.question());
    }

    /** What is marked through the whole curve is told at once: who listens to lines sees no mark. */
    private static void losses(WatchPicture was, WatchPicture is, List<String> said) {
        for (Flag flag : is.trace().flags())
            if (flag.weight() == Flag.Weight.THROUGH && !was.trace().flags().contains(flag)) said.add(flag.word());
    }

    private static void headline(Band band, List<String> said) {
        String words = band.headline() + (band.aside().isEmpty() ? "" : "; " + band.aside());
        said.add(
                switch (band.tone()) {
                    case CALM -> words;
                    case CUE -> TerminalText.DO_NOW.say(words);
                    case ADVISE -> TerminalText.ADVISE.say(words);
                    case PROMPT -> TerminalText.PROMPT.say(words);
                    case URGENT -> TerminalText.URGENT.say(words);
                });
    }

    private static String alarm(AlarmRow alarm) {
        if (alarm.isNotice()) return TerminalText.ADVISE_NOTICE.say(alarm.words(), alarm.state());
        TerminalText loudness = switch (alarm.tone()) {
            case CALM, CUE -> TerminalText.ALARM;
            case ADVISE -> TerminalText.ALARM_ADVISE;
            case PROMPT -> TerminalText.ALARM_PROMPT;
            case URGENT -> TerminalText.ALARM_URGENT;
        };
        return loudness.say(alarm.state(), alarm.words());
    }

    private static String status(WatchPicture picture) {
        Numeral numeral = picture.numeral();
        String value = numeral.whole() + numeral.hundredths() + " " + numeral.unit();
        StringBuilder words = new StringBuilder(phase(picture)).append("  ");
        words.append(numeral.stale()
                .map(age -> TerminalText.NO_TRUE_TEMPERATURE_THE_LAST.say(value, age))
                .orElse(value));
        if (numeral.stale().isEmpty() && !numeral.doubt().isEmpty())
            words.append(" ").append(numeral.doubt());
        if (!picture.rate().isEmpty()) words.append(", ").append(picture.rate());
        for (Outlook outlook : picture.outlooks())
            words.append("; ")
                    .append(outlook.label())
                    .append(' ')
                    .append(outlook.value())
                    .append(" (")
                    .append(outlook.detail())
                    .append(')');
        if (picture.simulated()) words.append(TerminalText.PRACTICE_AFTER_A_LINE.say());
        return words.toString();
    }

    /** The heading up to its first figure or dot: {@code rewarm · 3 min …} is {@code rewarm}. */
    private static String phase(WatchPicture picture) {
        return picture.heading().split(" · ", 2)[0];
    }

    private static String steady(AlarmRow alarm) {
        return steady(alarm.words()) + "|" + steady(alarm.state());
    }

    /** Words without their figures, so that a countdown is not news each second. */
    private static String steady(String words) {
        return words.replaceAll("[0-9]+([.,][0-9]+)?", "#")
                .replace(UnitText.HOURS_AND_MINUTES.say("#", "#"), "#")
                .replace(UnitText.HOURS.say("#"), "#")
                .replace(UnitText.MINUTES_AND.say("#", UnitText.AND_SECONDS.say("#")), "#")
                .replace(UnitText.MINUTES.say("#"), "#")
                .replace(UnitText.SECONDS.say("#"), "#");
    }

    private static String time(Duration elapsed) {
        return String.format(
                Locale.ROOT, "%d:%02d:%02d", elapsed.toHours(), elapsed.toMinutesPart(), elapsed.toSecondsPart());
    }
}
