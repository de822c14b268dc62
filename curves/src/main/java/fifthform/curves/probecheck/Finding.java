package fifthform.curves.probecheck;

import fifthform.curves.check.Parsed;
import fifthform.curves.setup.Correction;
import fifthform.curves.thermocouple.Sensor;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A correction and the doubt it leaves at working temperature.
 *
 * <p>Points: true {@code T}, read {@code r}. One point: {@code offset = T₀ − r₀}. Two points: {@code gain = (T₁ − T₀)/(r₁ −
 * r₀)}, {@code offset = T₀ − gain·r₀}. The corrected value at {@code t} is then {@code (1 − w)·T₀ + w·T₁} with {@code w = (t
 * − T₀)/(T₁ − T₀)}, so that at 31.5 °C a wrong boiling point hands 31 % of its error down. Parts are independent and add in
 * squares with their sensitivities (JCGM 100:2008, 5.1.2):
 *
 * <pre>
 * one point:  u² = u₀² + (share·t/√3)² + chip² + junction²
 * two points: u² = ((1−w)·u₀)² + (w·u₁)² + between² + chip² + junction²
 * </pre>
 *
 * @param correction what to apply
 * @param parts what its standard uncertainty is made of
 */
public record Finding(Correction correction, List<Part> parts) {
    /** The middle of the working range of dark chocolate, °C: there a check must be good. */
    public static final double WORK_CELSIUS = 31.5;

    /** Change of the junction's error between check and batch, of an open board; own estimate, no source. */
    private static final double JUNCTION_KELVIN = 0.15;
    /** Curvature of wire and converter that two points do not show; own estimate, no source. */
    private static final double BETWEEN_KELVIN = 0.05;

    public Finding {
        Objects.requireNonNull(correction, "correction");
        parts = List.copyOf(parts);
    }

    /** The offset that an ice point shows; refused where it is more than the sensor is allowed to be off. */
    public static Parsed<Finding> onePoint(Point ice, Sensor sensor, Curve curve) {
        Optional<Parsed<Finding>> wrong = beyondClass(ice, sensor);
        if (wrong.isPresent()) return wrong.get();
        List<Part> parts = new ArrayList<>();
        parts.add(new Part(Part.Source.ICE_POINT, ice.sigmaKelvin()));
        parts.add(new Part(Part.Source.WIRE, Allowed.wireShare(sensor) * WORK_CELSIUS / Math.sqrt(3)));
        chip(sensor, curve.lowAfterIceKelvin(sensor, WORK_CELSIUS)).ifPresent(parts::add);
        parts.add(new Part(Part.Source.JUNCTION, JUNCTION_KELVIN));
        return Parsed.accepted(finding(1, -ice.errorKelvin(), ice.at(), parts));
    }

    /**
     * Gain and offset that ice and boiling point show together.
     *
     * @param boil taken with the pressure of the day
     */
    public static Parsed<Finding> twoPoints(Point ice, Point boil, Sensor sensor, Curve curve) {
        Optional<Parsed<Finding>> wrong = beyondClass(ice, sensor).or(() -> beyondClass(boil, sensor));
        if (wrong.isPresent()) return wrong.get();
        double apart = boil.target().trueCelsius() - ice.target().trueCelsius();
        double gain = apart / (boil.readCelsius() - ice.readCelsius());
        double offset = ice.target().trueCelsius() - gain * ice.readCelsius();
        double weight = (WORK_CELSIUS - ice.target().trueCelsius()) / apart;
        List<Part> parts = new ArrayList<>();
        parts.add(new Part(Part.Source.ICE_POINT, (1 - weight) * ice.sigmaKelvin()));
        parts.add(new Part(Part.Source.BOILING_POINT, weight * boil.sigmaKelvin()));
        parts.add(new Part(Part.Source.BETWEEN, BETWEEN_KELVIN));
        chip(
                        sensor,
                        curve.lowAfterBothKelvin(
                                sensor, WORK_CELSIUS, boil.target().trueCelsius()))
                .ifPresent(parts::add);
        parts.add(new Part(Part.Source.JUNCTION, JUNCTION_KELVIN));
        return Parsed.accepted(finding(gain, offset, boil.at(), parts));
    }

    private static Optional<Part> chip(Sensor sensor, OptionalDouble lowKelvin) {
        if (lowKelvin.isEmpty()) return Optional.empty();
        return Optional.of(new Part(Part.Source.CHIP, Curve.standardKelvin(sensor, lowKelvin.getAsDouble())));
    }

    private static Finding finding(double gain, double offsetKelvin, Instant at, List<Part> parts) {
        double squares = parts.stream()
                .mapToDouble(p -> p.standardKelvin() * p.standardKelvin())
                .sum();
        return new Finding(new Correction(gain, offsetKelvin, Math.sqrt(squares), Optional.of(at)), parts);
    }

    private static Optional<Parsed<Finding>> beyondClass(Point point, Sensor sensor) {
        double allowed = Allowed.kelvin(sensor, point.target().trueCelsius());
        double off = Math.abs(point.errorKelvin());
        if (off <= allowed + 2 * point.sigmaKelvin()) return Optional.empty();
        boolean ice = point.target().kind() == Target.Kind.ICE;
        return Optional.of(
                Parsed.refused(
                        ice ? "ice point" : "boiling point",
                        String.format(
                                Locale.ROOT,
                                "The probe reads %.2f K %s there. Its class and converter allow %.1f K, so it is broken, or not %s. Nothing is corrected.",
                                off,
                                point.errorKelvin() > 0 ? "too high" : "too low",
                                allowed,
                                ice ? "in ice water" : "in water at a rolling boil"),
                        ice
                                ? "Use crushed ice with just enough water to fill the gaps, stir, and check again; if it stays, do not use this probe."
                                : "Let the water boil hard, keep the tip off the bottom, and check again; if it stays, do not use this probe."));
    }
}
