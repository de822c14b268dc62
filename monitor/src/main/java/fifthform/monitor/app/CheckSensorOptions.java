package fifthform.monitor.app;

import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.Sensor;
import fifthform.curves.thermocouple.ThermocoupleType;
import fifthform.curves.thermocouple.ToleranceClass;
import fifthform.monitor.texts.CheckText;
import fifthform.monitor.texts.DidYouMean;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
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
                    named("--type", type.toUpperCase(Locale.ROOT), ThermocoupleType.values(), ThermocoupleType::name));
        ToleranceClass limits = toleranceClass == null
                ? known.toleranceClass()
                : named("--class", toleranceClass, ToleranceClass.values(), ToleranceClass::word);
        Converter chip = converter == null
                ? known.converter()
                : named("--converter", converter.toLowerCase(Locale.ROOT), Converter.values(), Converter::word);
        return new Sensor(letter, limits, chip);
    }

    private static <T> T named(String option, String said, T[] choices, Function<T, String> word) throws Refusal {
        Optional<T> choice =
                Stream.of(choices).filter(c -> word.apply(c).equals(said)).findFirst();
        if (choice.isPresent()) return choice.get();
        List<String> words = Stream.of(choices).map(word).toList();
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                CheckText.WAS_NOTHING_WAS_DONE_POSSIBLE.say(option, said, DidYouMean.oneOf(words, said), String.join(", ", words)));
    }
}
