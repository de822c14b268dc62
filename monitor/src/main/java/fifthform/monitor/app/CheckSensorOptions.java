package fifthform.monitor.app;

import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.Sensor;
import fifthform.curves.thermocouple.ThermocoupleType;
import fifthform.curves.thermocouple.ToleranceClass;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** What the maker says of thermocouple and converter. */
final class CheckSensorOptions {
    @Option(names = "--type", paramLabel = "K|J|T|N|E")
    private String type;

    @Option(names = "--class", paramLabel = "1|2|3")
    private String toleranceClass;

    @Option(names = "--converter", paramLabel = "CHIP")
    private String converter;

    /** {@code known} with what the maker says instead. */
    Sensor over(Sensor known) throws Refusal {
        Optional<ThermocoupleType> letter = known.type();
        if (type != null)
            letter = Optional.of(
                    OneOf.named("--type", type, List.of(ThermocoupleType.values()), ThermocoupleType::name));
        ToleranceClass limits = toleranceClass == null
                ? known.toleranceClass()
                : OneOf.named("--class", toleranceClass, List.of(ToleranceClass.values()), ToleranceClass::word);
        Converter chip = converter == null
                ? known.converter()
                : OneOf.named("--converter", converter, List.of(Converter.values()), Converter::word);
        return new Sensor(letter, limits, chip);
    }
}
