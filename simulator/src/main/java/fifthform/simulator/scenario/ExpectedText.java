package fifthform.simulator.scenario;

import fifthform.curves.check.Nearest;
import fifthform.curves.check.Problem;
import fifthform.curves.input.AlarmId;
import fifthform.curves.review.Verdict;
import fifthform.simulator.scenario.Expected.Cooled;
import fifthform.simulator.scenario.Expected.Tempered;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** Reads how a scenario should end, as {@code ends = in-range} and {@code raises = heading-over, near-melt-out}. */
final class ExpectedText {
    private final Map<Wording, String> words;
    private final Map<Wording, Integer> lines;
    private final List<Problem> problems;

    /**
     * @param words what the file says
     * @param lines where
     * @param problems where what cannot be read is added
     */
    ExpectedText(Map<Wording, String> words, Map<Wording, Integer> lines, List<Problem> problems) {
        this.words = words;
        this.lines = lines;
        this.problems = problems;
    }

    Expected read() {
        Optional<Landed> ends = one(Wording.ENDS, Landed.values(), Landed::word);
        Optional<Cooled> cools = one(Wording.COOLS, Cooled.values(), Cooled::word);
        Optional<Tempered> tempers = one(Wording.TEMPERS, Tempered.values(), Tempered::word);
        Optional<Verdict> verdict = one(Wording.VERDICT, Verdict.values(), Verdict::word);
        Set<AlarmId> raises = alarms(Wording.RAISES);
        Set<AlarmId> raisesNot = alarms(Wording.RAISES_NOT);
        for (AlarmId both : raises) {
            if (raisesNot.contains(both)) {
                problem(
                        Wording.RAISES_NOT,
                        "\"" + both.word() + "\" must and must not be raised.",
                        "Keep one of the two.");
            }
        }
        return new Expected(ends, cools, tempers, verdict, raises, raisesNot);
    }

    private <T> Optional<T> one(Wording wording, T[] all, Function<T, String> wordOf) {
        return Optional.ofNullable(words.get(wording)).flatMap(said -> one(wording, said, all, wordOf));
    }

    private Set<AlarmId> alarms(Wording wording) {
        Set<AlarmId> read = EnumSet.noneOf(AlarmId.class);
        String said = words.getOrDefault(wording, "");
        if (said.isEmpty()) return read;
        for (String word : said.split(",", -1)) {
            one(wording, word.strip(), AlarmId.values(), AlarmId::word).ifPresent(read::add);
        }
        return read;
    }

    private <T> Optional<T> one(Wording wording, String said, T[] all, Function<T, String> wordOf) {
        for (T each : all) if (wordOf.apply(each).equals(said)) return Optional.of(each);
        List<String> known = Stream.of(all).map(wordOf).toList();
        String whatToDo = Nearest.to(said, known)
                .map(near -> "Did you mean \"" + near + "\"?")
                .orElse("Use " + String.join(", ", known) + ".");
        problem(wording, "\"" + wording.word() + "\" cannot be \"" + said + "\".", whatToDo);
        return Optional.empty();
    }

    private void problem(Wording wording, String what, String whatToDo) {
        problems.add(new Problem("line " + lines.get(wording), what, whatToDo));
    }
}
