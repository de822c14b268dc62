package fifthform.probe.protocol;

import java.util.Optional;
import java.util.Set;

/**
 * One number of a line of EMFs with what stands around it.
 *
 * @param label what stands before it
 * @param number empty where the adapter wrote {@code nan} or {@code open} in its place
 * @param emfUnit its unit of EMF, behind it or within its label
 * @param temperature its unit of temperature, behind it or within its label; FOREIGN where it has some other
 */
record EmfField(Label label, Optional<Written> number, Optional<EmfUnit> emfUnit, Unit temperature) {
    private static final Set<String> EMF = Set.of("emf", "mv", "uv", "v", "volt", "volts", "voltage", "seebeck");
    private static final Set<String> JUNCTION = Set.of("junction", "tj");

    /** What the number is. */
    enum Meaning {
        EMF,
        JUNCTION,
        BARE,
        FAULT_CODE,
        OTHER
    }

    static EmfField of(Field field) {
        Unit unit = field.agreedUnit().orElse(Unit.FOREIGN);
        return new EmfField(
                field.label(), field.number(), EmfUnit.among(field.label().words()), unit);
    }

    Meaning meaning() {
        Label.Meaning said = label.meaning();
        if (said == Label.Meaning.FAULT_CODE) return Meaning.FAULT_CODE;
        if (temperature == Unit.FOREIGN) return Meaning.OTHER;
        if (emfUnit.isPresent()) return temperature.isTemperature() ? Meaning.OTHER : Meaning.EMF;
        boolean junction =
                said == Label.Meaning.JUNCTION || label.words().stream().anyMatch(JUNCTION::contains);
        if (junction) return Meaning.JUNCTION;
        if (label.words().stream().anyMatch(EMF::contains)) {
            return temperature.isTemperature() ? Meaning.OTHER : Meaning.EMF;
        }
        if (said != Label.Meaning.NONE) return Meaning.OTHER;
        return temperature.isTemperature() ? Meaning.JUNCTION : Meaning.BARE;
    }
}
