package fifthform.curves.fault;

import fifthform.curves.fault.Suspect.Evidence;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Weighs causes by clues, with Bayes's rule: each clue that is known, there or not there, counts by how likely it is with
 * the cause, and one that nobody knows counts for nothing. Nothing wrong is one of the answers, and on bars that look well
 * nothing is claimed, whatever the curve did.
 */
public final class FaultFinder {
    /** A cause below this is no answer but a possibility. Own choice. */
    private static final double CLAIMED_FROM = 0.65;

    /** From here on the bars are rather good than not. */
    private static final double RATHER_FINE = 0.5;

    /** Above this nobody is bothered with questions. Own choice. */
    private static final double SURELY_FINE = 0.95;

    /** How often bars with a weak sign or none are good, beside the causes' own numbers. Own choice. */
    private static final double FINE_OFTEN = 13;

    /** A clue that counts for less than this is not worth a line. */
    private static final double WORTH_A_LINE = 1.5;

    /** A question that clears up less than this is not asked, bits. Own choice. */
    private static final double WORTH_ASKING_BITS = 0.04;

    /** What makes bars fail: without one of these nothing is looked for. */
    private static final List<Clue> SYMPTOMS =
            List.of(Clue.PATTERN, Clue.SUGAR, Clue.OILY, Clue.SOFT, Clue.BENDS, Clue.DULL, Clue.STUCK, Clue.SOME_STUCK);

    private final FaultBook book;

    public FaultFinder(FaultBook book) {
        this.book = Objects.requireNonNull(book, "book");
    }

    /** What is to be said of bars of which this is known. */
    public Diagnosis find(Clues clues) {
        return find(clues, List.of());
    }

    /**
     * What is to be said of bars of which this is known.
     *
     * @param passed questions that the maker could not answer, so that none is asked twice
     */
    public Diagnosis find(Clues clues, Collection<Clue> passed) {
        double[] shares = shares(clues.known());
        List<Suspect> suspects = new ArrayList<>();
        for (Fault fault : Fault.values()) suspects.add(suspect(fault, shares, clues.known()));
        suspects.sort(Comparator.comparingDouble(Suspect::share).reversed());
        double fine = shares[Fault.values().length];
        Diagnosis.Word word = word(clues, suspects.get(0).share(), fine);
        boolean asks = word == Diagnosis.Word.LIKELY
                || word == Diagnosis.Word.OPEN
                || word == Diagnosis.Word.WEAK && fine < SURELY_FINE;
        return new Diagnosis(word, suspects, fine, asks ? question(clues.known(), passed, shares) : Optional.empty());
    }

    private static Diagnosis.Word word(Clues clues, double first, double fine) {
        if (clues.grows()) return Diagnosis.Word.NOT_FOR_EATING;
        if (!clues.looked()) return Diagnosis.Word.NOT_LOOKED;
        boolean symptom = SYMPTOMS.stream().anyMatch(c -> clues.known().getOrDefault(c, false));
        if (!symptom) return Diagnosis.Word.BARS_ARE_GOOD;
        if (fine >= RATHER_FINE) return Diagnosis.Word.WEAK;
        return first >= CLAIMED_FROM ? Diagnosis.Word.LIKELY : Diagnosis.Word.OPEN;
    }

    /** How likely each cause is, in the order of {@link Fault}, and last that nothing is wrong; they sum to 1. */
    private double[] shares(Map<Clue, Boolean> known) {
        Fault[] faults = Fault.values();
        double[] shares = new double[faults.length + 1];
        for (int i = 0; i < faults.length; i++) {
            shares[i] = book.of(faults[i]).often();
            for (Map.Entry<Clue, Boolean> clue : known.entrySet())
                shares[i] *= of(book.chance(clue.getKey(), faults[i]), clue.getValue());
        }
        shares[faults.length] = FINE_OFTEN;
        for (Map.Entry<Clue, Boolean> clue : known.entrySet())
            shares[faults.length] *= of(book.usual(clue.getKey()), clue.getValue());
        double sum = 0;
        for (double share : shares) sum += share;
        for (int i = 0; i < shares.length; i++) shares[i] /= sum;
        return shares;
    }

    private static double of(double chance, boolean there) {
        return there ? chance : 1 - chance;
    }

    private Suspect suspect(Fault fault, double[] shares, Map<Clue, Boolean> known) {
        List<Evidence> all = new ArrayList<>();
        for (Map.Entry<Clue, Boolean> clue : known.entrySet()) {
            double with = of(book.chance(clue.getKey(), fault), clue.getValue());
            double without = without(clue.getKey(), clue.getValue(), fault, shares);
            all.add(new Evidence(clue.getKey(), clue.getValue(), with / without));
        }
        List<Evidence> supports = all.stream()
                .filter(e -> e.times() >= WORTH_A_LINE)
                .sorted(Comparator.comparingDouble(Evidence::times).reversed())
                .toList();
        List<Evidence> opposes = all.stream()
                .filter(e -> e.times() <= 1 / WORTH_A_LINE)
                .sorted(Comparator.comparingDouble(Evidence::times))
                .toList();
        return new Suspect(fault, shares[fault.ordinal()], supports, opposes);
    }

    /** How likely a clue is where it is another cause, or none: half by what is likely here, half by what is usual. */
    private double without(Clue clue, boolean there, Fault fault, double[] shares) {
        double sum = 0;
        double others = 0;
        for (Fault other : Fault.values()) {
            if (other == fault) continue;
            sum += shares[other.ordinal()] * of(book.chance(clue, other), there);
            others += shares[other.ordinal()];
        }
        double usual = of(book.usual(clue), there);
        return others < 1e-9 ? usual : 0.5 * sum / others + 0.5 * usual;
    }

    /** The question whose answer clears up most on the whole. */
    private Optional<Clue> question(Map<Clue, Boolean> known, Collection<Clue> passed, double[] shares) {
        double now = bits(shares);
        Optional<Clue> best = Optional.empty();
        double most = WORTH_ASKING_BITS;
        for (Clue clue : Clue.values()) {
            if (clue.from() != Clue.From.MAKER || known.containsKey(clue) || passed.contains(clue)) continue;
            double yes = 0;
            for (Fault fault : Fault.values()) yes += shares[fault.ordinal()] * book.chance(clue, fault);
            yes += shares[shares.length - 1] * book.usual(clue);
            double left =
                    yes * bits(shares(with(known, clue, true))) + (1 - yes) * bits(shares(with(known, clue, false)));
            if (now - left > most) {
                most = now - left;
                best = Optional.of(clue);
            }
        }
        return best;
    }

    private static Map<Clue, Boolean> with(Map<Clue, Boolean> known, Clue clue, boolean answer) {
        Map<Clue, Boolean> more = new EnumMap<>(Clue.class);
        more.putAll(known);
        more.put(clue, answer);
        return more;
    }

    private static double bits(double[] shares) {
        double bits = 0;
        for (double share : shares) if (share > 0) bits -= share * StrictMath.log(share) / StrictMath.log(2);
        return bits;
    }
}
