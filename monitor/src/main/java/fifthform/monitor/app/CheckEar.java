package fifthform.monitor.app;

import fifthform.curves.input.Sample;
import fifthform.curves.probecheck.CheckInput;
import fifthform.curves.probecheck.CheckInput.NoReading;
import fifthform.curves.probecheck.CheckInput.Passed;
import fifthform.curves.probecheck.CheckInput.Reading;
import fifthform.curves.probecheck.Curve;
import fifthform.curves.thermocouple.Sensor;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import fifthform.probe.link.Arrival;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** One channel of an open line, heard as a check wants it: with the converter's slope undone, but not corrected. */
final class CheckEar implements AutoCloseable {
    private final ByteLink link;
    private final ProbeProtocol.Decoder decoder;
    private final Sensor sensor;
    private OptionalInt channel;
    private boolean junctionMissed;

    private CheckEar(CheckSubject subject, ByteLink link) {
        this.link = link;
        this.decoder = subject.spoken().protocol().newDecoder();
        this.sensor = subject.sensor();
        this.channel = subject.channel();
    }

    static CheckEar open(CheckSubject subject) throws LinkException {
        return new CheckEar(subject, subject.source().open());
    }

    /** What one read of the line brings; empty when a recording has ended. */
    Optional<List<CheckInput>> listen() throws LinkException, InterruptedException {
        Optional<Arrival> arrival = link.read();
        if (arrival.isEmpty()) return Optional.empty();
        Instant at = arrival.get().at();
        List<CheckInput> heard = new ArrayList<>();
        decoder.feed(arrival.get().bytes(), signal -> hear(at, signal, heard));
        Optional<byte[]> question = decoder.ask(at, signal -> hear(at, signal, heard));
        if (question.isPresent()) link.write(question.get());
        heard.add(new Passed(at));
        return Optional.of(heard);
    }

    /** The channel that was heard; 0 where nothing was. */
    int channel() {
        return channel.orElse(0);
    }

    /** Whether the converter's one slope was undone in every reading. */
    Curve curve() {
        boolean undone = sensor.type().isPresent() && sensor.converter().tellsItsJunction() && !junctionMissed;
        return undone ? Curve.UNDONE : Curve.AS_READ;
    }

    private void hear(Instant at, Signal signal, List<CheckInput> heard) {
        signal.fold(new Signal.Cases<Void>() {
            @Override
            public Void measured(Signal.Measured m) {
                if (isOurs(m.channel())) heard.add(reading(at, m));
                return null;
            }

            @Override
            public Void openCircuit(Signal.OpenCircuit s) {
                return nothing(s.channel());
            }

            @Override
            public Void shorted(Signal.Shorted s) {
                return nothing(s.channel());
            }

            @Override
            public Void outOfRange(Signal.OutOfRange s) {
                return nothing(s.channel());
            }

            @Override
            public Void aside(Signal.Aside understood) {
                return null;
            }

            @Override
            public Void unreadable(Signal.Unreadable s) {
                return null;
            }

            private Void nothing(int of) {
                if (isOurs(of)) heard.add(new NoReading(at));
                return null;
            }
        });
    }

    private boolean isOurs(int heard) {
        if (channel.isEmpty()) channel = OptionalInt.of(heard);
        return channel.getAsInt() == heard;
    }

    /** The resolution is the width of a rectangle, so its standard uncertainty is width/√12 (JCGM 100:2008, F.2.2.1). */
    private CheckInput reading(Instant at, Signal.Measured m) {
        if (m.junctionCelsius().isEmpty()) junctionMissed = true;
        double celsius = sensor.tipCelsius(m.tipCelsius(), m.junctionCelsius(), m.emfMillivolts());
        boolean possible = celsius >= Sample.LOWEST_CELSIUS && celsius <= Sample.HIGHEST_CELSIUS;
        return possible
                ? new Reading(at, celsius, Math.min(5, m.resolutionKelvin() / Math.sqrt(12)))
                : new NoReading(at);
    }

    @Override
    public void close() {
        link.close();
    }
}
