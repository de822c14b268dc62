package fifthform.monitor.replay;

import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.engine.State;
import fifthform.curves.forecast.Forecast;
import fifthform.curves.forecast.Outlook;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Contact;
import fifthform.curves.situation.Reason.Figure;
import fifthform.monitor.model.Phrases;
import fifthform.monitor.model.Spans;
import fifthform.monitor.replay.Compared.Agreement;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.ReplayText;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** One moment as it was told then, beside the same moment as it is computed now. */
final class ThenAndNow {
    private final Recording recording;
    private final Units units;
    private final Phrases phrases;

    ThenAndNow(Recording recording, Units units) {
        this.recording = recording;
        this.units = units;
        this.phrases = new Phrases(units, recording.setup().recipe());
    }

    /**
     * The lines.
     *
     * @param nanos the moment, since the session's start
     * @param eventsNow what is told now, as far as it is computed
     * @param state what is known now at that moment; empty where it is not computed yet
     */
    List<Compared> at(long nanos, List<Event> eventsNow, Optional<State> state) {
        Instant moment = recording.at(nanos);
        SaidSoFar then = SaidSoFar.at(
                recording.told().stream().map(Recording.Told::event).toList(), moment);
        Optional<SaidSoFar> now = state.map(s -> SaidSoFar.at(eventsNow, moment));
        List<Compared> lines = new ArrayList<>();
        lines.add(temperature(nanos, state));
        lines.add(forecast(then, state));
        lines.add(line(ReplayText.LINE_DUE, cue(then), now.map(this::cue)));
        lines.add(line(ReplayText.LINE_ALARMS, alarms(then), now.map(this::alarms)));
        lines.add(line(ReplayText.LINE_CRYSTALS, crystals(then), now.map(this::crystals)));
        lines.add(line(ReplayText.LINE_PHASE, phase(then), now.map(this::phase)));
        return lines;
    }

    private static Compared line(ReplayText label, String then, Optional<String> now) {
        Agreement agreement = now.map(n -> n.equals(then) ? Agreement.SAME : Agreement.DIFFERS)
                .orElse(Agreement.NOT_COMPARED);
        return new Compared(label.say(), then, now.orElse(ReplayText.NOT_YET.say()), agreement);
    }

    /** What was read then; what the chocolate is held to have had, the tip's lag and its probe's error undone. */
    private Compared temperature(long nanos, Optional<State> state) {
        Readings bowl = recording.bowl();
        int last = bowl.lastAt(nanos);
        String then = last < 0 || nanos - bowl.nanos(last) > bowl.gapNanos()
                ? ReplayText.NO_READING.say()
                : ReplayText.READ.say(units.withUnit(bowl.celsius(last)));
        String now = state.map(s -> s.estimate()
                        .filter(e -> e.isUsable())
                        .map(e -> ReplayText.ESTIMATED.say(
                                units.withUnit(e.chocolateCelsius()), signed(e.rateKelvinPerMinute()), units.symbol()))
                        .orElse(ReplayText.NO_ESTIMATE.say()))
                .orElse(ReplayText.NOT_YET.say());
        return new Compared(ReplayText.LINE_TEMPERATURE.say(), then, now, Agreement.NOT_COMPARED);
    }

    private String signed(double kelvinPerMinute) {
        return Units.format("%+.1f", units.shownDifference(kelvinPerMinute)).replace('-', '−');
    }

    /** A recording keeps forecasts only as figures of what was told; between those nothing is known of then. */
    private Compared forecast(SaidSoFar then, Optional<State> state) {
        Optional<CueGiven> told = then.cues().values().stream()
                .filter(cue -> turn(cue).isPresent())
                .reduce((before, after) -> after.at().isBefore(before.at()) ? before : after);
        String words = told.map(cue ->
                        ReplayText.FORECAST_TOLD.say(units.withUnit(turn(cue).getAsDouble()), InWords.of(cue.cue())))
                .orElse(ReplayText.FORECAST_NOT_TOLD.say());
        String now = state.map(s -> s.forecast().map(f -> forecast(f, s)).orElse(ReplayText.NO_FORECAST.say()))
                .orElse(ReplayText.NOT_YET.say());
        return new Compared(ReplayText.LINE_FORECAST.say(), words, now, Agreement.NOT_COMPARED);
    }

    private static OptionalDouble turn(CueGiven cue) {
        return cue.reason().map(r -> r.figure(Figure.TURN_C)).orElse(OptionalDouble.empty());
    }

    private String forecast(Forecast forecast, State state) {
        Outlook turn = forecast.ifLifted();
        Contact contact = state.batch().contact();
        String turns = units.withUnit(turn.celsius());
        String lower = units.oneDecimal(turn.lowerCelsius());
        String upper = units.oneDecimal(turn.upperCelsius());
        if (contact.place() == Place.TABLE) return ReplayText.FORECAST_TURNS.say(turns, lower, upper);
        String left = units.withUnit(forecast.at(Forecast.HORIZON).celsius());
        return ReplayText.FORECAST_IF_LIFTED.say(turns, lower, upper, left, Spans.words(Forecast.HORIZON));
    }

    private String cue(SaidSoFar said) {
        return said.cue()
                .map(cue -> Happenings.words(phrases, cue, said.phase()))
                .orElse(ReplayText.NOTHING_DUE.say());
    }

    private String alarms(SaidSoFar said) {
        return said.alarms().isEmpty()
                ? ReplayText.NONE.say()
                : said.alarms().values().stream()
                        .map(a -> ReplayText.ALARM_WORDS.say(InWords.of(a.priority()), AlarmNames.of(a.alarm())))
                        .collect(Collectors.joining("; "));
    }

    private String crystals(SaidSoFar said) {
        return said.crystals().map(Happenings::crystals).orElse(ReplayText.NOTHING_SAID.say());
    }

    private String phase(SaidSoFar said) {
        return said.place()
                .map(p -> InWords.of(said.phase()) + ", " + ActWords.place(p.place()))
                .orElse(InWords.of(said.phase()));
    }
}
