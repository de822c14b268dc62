package fifthform.simulator.proofs;

/** Prints what the proof of temper reaches over kitchens that no limit was tuned on: {@code KITCHENS FIRST_SEED}. */
public final class ProofBench {
    private static final int KITCHENS = 250;
    private static final long FIRST_SEED = 7_500_000;

    private ProofBench() {}

    public static void main(String[] args) {
        int kitchens = args.length > 0 ? Integer.parseInt(args[0]) : KITCHENS;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : FIRST_SEED;
        ProofFigures.of(seed, kitchens).lines().forEach(System.out::println);
    }
}
