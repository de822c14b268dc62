package fifthform.monitor.setup;

import fifthform.monitor.texts.SetupText;

/** The values of settings as the window shows them; options, files and lists keep their own words. */
public final class SettingWords {
    private SettingWords() {}

    /** In words; a number, a path or a key as it is. */
    public static String of(String value) {
        return switch (value) {
            case "bright" -> SetupText.VALUE_BRIGHT.say();
            case "dark" -> SetupText.VALUE_DARK.say();
            case "blinking" -> SetupText.VALUE_BLINKING.say();
            case "still" -> SetupText.VALUE_STILL.say();
            case "celsius" -> SetupText.VALUE_CELSIUS.say();
            case "fahrenheit" -> SetupText.VALUE_FAHRENHEIT.say();
            case "screen-only" -> SetupText.VALUE_SCREEN_ONLY.say();
            case "soft" -> SetupText.VALUE_SOFT.say();
            case "medium" -> SetupText.VALUE_MEDIUM.say();
            case "full" -> SetupText.VALUE_FULL.say();
            case SettingTable.NONE -> SetupText.PROMPT_USUAL.say();
            default -> value;
        };
    }
}
