package fifthform.monitor.app;

/** Where the program starts. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(70);
    }
}
