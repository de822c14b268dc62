package fifthform.monitor.replay;

import fifthform.curves.input.MakerAction;
import fifthform.curves.input.MakerAction.Acts;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.MakerAction.StirringSaid.Stirring;
import fifthform.monitor.model.Spans;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.ReplayText;
import java.util.Locale;

/** What the maker did, in words. */
final class ActWords implements Acts<String> {
    private final Units units;

    ActWords(Units units) {
        this.units = units;
    }

    static String place(Place place) {
        return switch (place) {
            case BATH -> ReplayText.ACT_BATH.say();
            case TABLE -> ReplayText.ACT_TABLE.say();
            case COLD_WATER -> ReplayText.ACT_COLD_WATER.say();
        };
    }

    @Override
    public String bowlMoved(MakerAction.BowlMoved action) {
        return place(action.to());
    }

    @Override
    public String stirringSaid(MakerAction.StirringSaid action) {
        return action.stirring() == Stirring.STIRRED ? ReplayText.ACT_STIRRED.say() : ReplayText.ACT_STILL.say();
    }

    @Override
    public String seedAdded(MakerAction.SeedAdded action) {
        long grams = Math.round(action.grams());
        return grams > 0 ? ReplayText.ACT_SEED_GRAMS.say(Long.toString(grams)) : ReplayText.ACT_SEED.say();
    }

    @Override
    public String phaseConfirmed(MakerAction.PhaseConfirmed action) {
        return ReplayText.ACT_PHASE.say(InWords.of(action.phase()));
    }

    @Override
    public String alarmAcknowledged(MakerAction.AlarmAcknowledged action) {
        return ReplayText.ACT_SEEN.say(AlarmNames.of(action.alarm()).toLowerCase(Locale.ROOT));
    }

    @Override
    public String alarmShelved(MakerAction.AlarmShelved action) {
        return ReplayText.ACT_SET_ASIDE.say(
                AlarmNames.of(action.alarm()).toLowerCase(Locale.ROOT), Spans.words(action.duration()));
    }

    @Override
    public String sampleProved(MakerAction.SampleProved action) {
        return switch (action.verdict()) {
            case IN_TEMPER -> ReplayText.ACT_SAMPLE_GOOD.say();
            case NOT_IN_TEMPER -> ReplayText.ACT_SAMPLE_BAD.say();
            case UNCLEAR -> ReplayText.ACT_SAMPLE_UNCLEAR.say();
        };
    }

    @Override
    public String noted(MakerAction.Noted action) {
        return action.text().isBlank() ? ReplayText.ACT_MARK.say() : ReplayText.ACT_NOTE.say(action.text());
    }

    @Override
    public String probeTakenOut(MakerAction.ProbeTakenOut action) {
        return ReplayText.ACT_PROBE_OUT.say();
    }

    @Override
    public String probePutBack(MakerAction.ProbePutBack action) {
        return ReplayText.ACT_PROBE_BACK.say();
    }

    @Override
    public String otherThermometer(MakerAction.OtherThermometer action) {
        return ReplayText.ACT_OTHER.say(units.withUnit(action.celsius()));
    }

    @Override
    public String bowlConfirmed(MakerAction.BowlConfirmed action) {
        return ReplayText.ACT_BOWL_CONFIRMED.say();
    }

    @Override
    public String setupChanged(MakerAction.SetupChanged action) {
        return ReplayText.ACT_SETUP.say(action.setup().recipe().name());
    }

    @Override
    public String undone(MakerAction.Undone action) {
        return ReplayText.ACT_UNDONE.say();
    }
}
