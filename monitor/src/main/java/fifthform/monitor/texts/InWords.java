package fifthform.monitor.texts;

import fifthform.curves.alarm.Priority;
import fifthform.curves.bowlcheck.OtherBowl;
import fifthform.curves.crystal.SeedWord;
import fifthform.curves.cue.CueId;
import fifthform.curves.input.MakerAction.SampleProved;
import fifthform.curves.learning.Bloom;
import fifthform.curves.proof.Smear;
import fifthform.curves.proof.TemperClass;
import fifthform.curves.recipe.OtherFat;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.Holding.Warmth;
import fifthform.curves.setup.Role;

/**
 * The engine's constants in words. Their own {@code word()} is for files, options and scripts, in every language the
 * same. A constant without a text does not compile.
 */
public final class InWords {
    /** What follows the word in data, see {@code Spoken.inData()}. */
    private static final String THICK = " thick";

    private InWords() {}

    public static String of(Phase phase) {
        return switch (phase) {
            case MELT -> WordText.PHASE_MELT.say();
            case COOL -> WordText.PHASE_COOL.say();
            case SEED -> WordText.PHASE_SEED.say();
            case REWARM -> WordText.PHASE_REWARM.say();
            case WORK -> WordText.PHASE_WORK.say();
            case REST -> WordText.PHASE_REST.say();
        };
    }

    public static String of(SeedWord word) {
        return switch (word) {
            case ENOUGH -> WordText.CRYSTALS_ENOUGH.say();
            case DOUBTFUL -> WordText.CRYSTALS_DOUBTFUL.say();
            case TOO_FEW -> WordText.CRYSTALS_TOO_FEW.say();
        };
    }

    /** What is said of the crystals, for example {@code enough, thick}. */
    public static String crystals(SeedWord word, boolean thick) {
        return thick ? WordText.CRYSTALS_AND_THICK.say(of(word)) : of(word);
    }

    /** The same from how data spells it; as it stands there where only a newer program knows it. */
    public static String crystals(String inData) {
        boolean thick = inData.endsWith(THICK);
        String bare = thick ? inData.substring(0, inData.length() - THICK.length()) : inData;
        for (SeedWord word : SeedWord.values()) if (word.word().equals(bare)) return crystals(word, thick);
        return inData;
    }

    public static String of(BowlMaterial material) {
        return switch (material) {
            case STEEL -> WordText.MATERIAL_STEEL.say();
            case GLASS -> WordText.MATERIAL_GLASS.say();
            case PLASTIC -> WordText.MATERIAL_PLASTIC.say();
            case ALUMINIUM -> WordText.MATERIAL_ALUMINIUM.say();
            case UNKNOWN -> WordText.MATERIAL_UNKNOWN.say();
        };
    }

    public static String of(OtherFat fat) {
        return switch (fat) {
            case LIKE_BUTTER -> WordText.OTHER_FAT_LIKE_BUTTER.say();
            case SOFT -> WordText.OTHER_FAT_SOFT.say();
            case LAURIC -> WordText.OTHER_FAT_LAURIC.say();
        };
    }

    /** A bowl by its name; one that has no other than the word of its wall, in words. */
    public static String bowl(String name, BowlMaterial material) {
        return name.equals(material.word()) ? of(material) : name;
    }

    public static String of(OtherBowl like) {
        return switch (like) {
            case HEAVIER -> WordText.BOWL_HEAVIER.say();
            case LIGHTER -> WordText.BOWL_LIGHTER.say();
        };
    }

    public static String of(Warmth warmth) {
        return switch (warmth) {
            case BATH -> WordText.WARMED_BY_BATH.say();
            case AIR -> WordText.WARMED_BY_AIR.say();
            case BOX -> WordText.WARMED_BY_BOX.say();
        };
    }

    public static String of(Role role) {
        return switch (role) {
            case BOWL -> WordText.PROBE_OF_BOWL.say();
            case BATH -> WordText.PROBE_OF_BATH.say();
            case ROOM -> WordText.PROBE_OF_ROOM.say();
        };
    }

    public static String of(Priority priority) {
        return switch (priority) {
            case ADVISE -> WordText.PRIORITY_ADVISE.say();
            case PROMPT -> WordText.PRIORITY_PROMPT.say();
            case URGENT -> WordText.PRIORITY_URGENT.say();
        };
    }

    public static String of(CueId cue) {
        return switch (cue) {
            case MELTED -> WordText.CUE_MELTED.say();
            case MELT_FIRST -> WordText.CUE_MELT_FIRST.say();
            case WARM_UP -> WordText.CUE_WARM_UP.say();
            case SEED_NOW -> WordText.CUE_SEED_NOW.say();
            case SEED_OUT -> WordText.CUE_SEED_OUT.say();
            case STOP_COOLING -> WordText.CUE_STOP_COOLING.say();
            case STIR_ON -> WordText.CUE_STIR_ON.say();
            case CRYSTALS_ENOUGH -> WordText.CUE_CRYSTALS_ENOUGH.say();
            case GET_READY -> WordText.CUE_GET_READY.say();
            case LIFT_NOW -> WordText.CUE_LIFT_NOW.say();
            case OFF_NOW -> WordText.CUE_OFF_NOW.say();
            case WIPE_AND_STIR -> WordText.CUE_WIPE_AND_STIR.say();
            case PUT_BACK -> WordText.CUE_PUT_BACK.say();
            case WEAK_BATH -> WordText.CUE_WEAK_BATH.say();
            case IN_RANGE -> WordText.CUE_IN_RANGE.say();
            case TOUCH_OF_WARMTH -> WordText.CUE_TOUCH_OF_WARMTH.say();
            case TOUCH_OF_WARM_AIR -> WordText.CUE_TOUCH_OF_WARM_AIR.say();
            case BOX_WARMER -> WordText.CUE_BOX_WARMER.say();
            case BOX_COOLER -> WordText.CUE_BOX_COOLER.say();
            case KEEP_FLUID -> WordText.CUE_KEEP_FLUID.say();
            case HOLD_OVER -> WordText.CUE_HOLD_OVER.say();
            case THICKENS_SOON -> WordText.CUE_THICKENS_SOON.say();
        };
    }

    /** A cue by its name in files; the words of the name where only a newer program knows it. */
    public static String cue(String name) {
        return CueId.fromWord(name).map(InWords::of).orElseGet(() -> name.replace('-', ' '));
    }

    public static String of(SampleProved.Verdict verdict) {
        return switch (verdict) {
            case IN_TEMPER -> WordText.SAMPLE_IN_TEMPER.say();
            case NOT_IN_TEMPER -> WordText.SAMPLE_NOT_IN_TEMPER.say();
            case UNCLEAR -> WordText.SAMPLE_UNCLEAR.say();
        };
    }

    public static String of(TemperClass temper) {
        return switch (temper) {
            case NO_TEMPER -> WordText.TEMPER_NONE.say();
            case UNDER -> WordText.TEMPER_UNDER.say();
            case IN_TEMPER -> WordText.TEMPER_GOOD.say();
            case OVER -> WordText.TEMPER_OVER.say();
            case UNCLEAR -> WordText.TEMPER_UNCLEAR.say();
        };
    }

    public static String of(Smear.Look look) {
        return switch (look) {
            case GLOSSY -> WordText.FILM_GLOSSY.say();
            case STREAKS -> WordText.FILM_STREAKS.say();
            case MATT -> WordText.FILM_MATT.say();
            case WET_MIDDLE -> WordText.FILM_WET_MIDDLE.say();
        };
    }

    public static String of(Bloom bloom) {
        return switch (bloom) {
            case NONE -> WordText.BLOOM_NONE.say();
            case VEIL -> WordText.BLOOM_VEIL.say();
            case STREAKS -> WordText.BLOOM_STREAKS.say();
            case BLOTCHES -> WordText.BLOOM_BLOTCHES.say();
            case SUGAR -> WordText.BLOOM_SUGAR.say();
            case OILY -> WordText.BLOOM_OILY.say();
            case FUZZY -> WordText.BLOOM_FUZZY.say();
        };
    }
}
