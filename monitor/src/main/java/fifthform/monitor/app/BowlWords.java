package fifthform.monitor.app;

import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.monitor.bowls.Bowls;
import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.bowls.Taught;
import fifthform.monitor.bowls.TaughtWords;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.BowlsText;
import fifthform.monitor.texts.DidYouMean;
import fifthform.monitor.texts.InWords;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** What is said of bowls. */
final class BowlWords {
    private BowlWords() {}

    /** The bowl of this name as it is remembered, or a new one. */
    static Bowl named(String name, OptionalDouble grams, Bowls.Loaded bowls) throws Refusal {
        Optional<KeptBowl> known = bowls.find(name);
        return known.isPresent() ? known.get().with(grams) : fresh(name).with(grams);
    }

    /** A bowl that nobody has named before; a name with a material in it also says what the wall is made of. */
    static KeptBowl fresh(String name) throws Refusal {
        mustBeAName(name);
        return KeptBowl.named(name, Setups.bowl(name, OptionalDouble.empty()).material());
    }

    static void mustBeAName(String name) throws Refusal {
        if (TaughtWords.isName(name)) return;
        String shown = name.codePoints()
                .map(c -> Character.isISOControl(c) ? '?' : c)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        throw new Refusal(Exit.NOT_UNDERSTOOD, BowlsText.CANNOT_BE_THE_NAME_OF_A.say(shown));
    }

    static BowlMaterial material(String word) throws Refusal {
        return OneOf.named("--material", word, List.of(BowlMaterial.values()), BowlMaterial::word);
    }

    /** One that must be known. */
    static KeptBowl known(String name, Bowls.Loaded bowls) throws Refusal {
        Optional<KeptBowl> known = bowls.find(name);
        if (known.isPresent()) return known.get();
        String all = String.join(", ", bowls.bowls().stream().map(KeptBowl::id).toList());
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                BowlsText.THERE_IS_NO_BOWL_NOTHING_WAS.say(
                        name,
                        all.isEmpty() ? BowlsText.NONE_IS_KNOWN_YET_BEGIN_ONE.say(name) : BowlsText.KNOWN.say(all)));
    }

    /** Said where a bowl's name is new and only nearly one that is known: what it teaches would go to a bowl of its own. */
    static Optional<String> doubtful(String name, Bowls.Loaded bowls) {
        return Optional.of(meant(name, bowls))
                .filter(question -> !question.isEmpty())
                .map(question -> BowlsText.NO_BOWL_IS_CALLED_SO_FAR.say(name, question));
    }

    /** The bowl or the material that was most likely meant, as a question; empty where the name is one of them or near none. */
    private static String meant(String name, Bowls.Loaded bowls) {
        List<String> known = Stream.concat(
                        bowls.bowls().stream().map(KeptBowl::id),
                        Stream.of(BowlMaterial.values()).map(BowlMaterial::word))
                .toList();
        return known.stream().anyMatch(name::equalsIgnoreCase) ? "" : DidYouMean.oneOf(known, name);
    }

    /** The line with which a session begins; empty where the maker named no bowl. */
    static Optional<String> begins(Bowl bowl, Bowls.Loaded bowls, Units units) {
        if (bowl.id().equals(Bowl.ANY.id())) return Optional.empty();
        String what = BowlsText.BOWL.say(bowl.id());
        if (bowl.learned().isEmpty()) {
            return Optional.of(BowlsText.ITS_COAST_HAS_NOT_BEEN_SEEN
                    .say(what, InWords.of(bowl.material()), meant(bowl.id(), bowls))
                    .strip());
        }
        String words = TaughtWords.coast(bowl.learned().get(), units);
        Optional<Taught> same = bowls.find(bowl.id()).flatMap(b -> b.taughtWith(bowl.amountGrams()));
        return Optional.of(what
                + words
                + same.filter(t -> t.coast().isPresent())
                        .map(t -> " (" + TaughtWords.from(t) + ").")
                        .orElse(BowlsText.TAKEN_OVER_FROM_ANOTHER_AMOUNT.say()));
    }
}
