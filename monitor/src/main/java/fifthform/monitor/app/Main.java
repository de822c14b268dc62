package fifthform.monitor.app;

import fifthform.monitor.settings.SettingsFile;
import fifthform.monitor.texts.CommandText;
import fifthform.monitor.texts.Language;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Where the program starts. Does not extend a JavaFX class, so that it starts where there is no JavaFX screen. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        // Some tiles and audio lines leave threads behind; everything recorded is closed by now.
        System.exit(run(args));
    }

    /** Runs one command and answers with its exit code. */
    static int run(String... args) {
        // Before anything is said, which help and a wrong option do before any command begins.
        new SettingsFile(CommonOptions.ofTheComputer().settingsFile())
                .language()
                .ifPresent(Language::speak);
        CommandLine line = FifthForm.line(args);
        line.setOut(new PrintWriter(System.out, true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(new PlainWriter(new OutputStreamWriter(System.err, StandardCharsets.UTF_8)), true));
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setExecutionExceptionHandler(refusals(Arrays.asList(args).contains("--trace")));
        line.setParameterExceptionHandler((e, given) -> notUnderstood(e));
        int code = execute(line, args);
        boolean lost = line.getOut().checkError() && code == Exit.DONE.code();
        if (lost) line.getErr().println(CommandText.THE_RESULTS_COULD_NOT_BE.say());
        return lost ? Exit.FILE.code() : code;
    }

    /** Errors of the machine, such as too little memory, end as orderly as faults of the program. */
    private static int execute(CommandLine line, String... args) {
        try {
            return line.execute(args);
        } catch (OutOfMemoryError | StackOverflowError tooMuch) {
            line.getErr().println(CommandText.THAT_WAS_MORE_THAN_THIS.say(tooMuch));
            return Exit.FAULT.code();
        } catch (LinkageError brokenPacking) {
            return fault(line, brokenPacking, Arrays.asList(args).contains("--trace"));
        }
    }

    static IExecutionExceptionHandler refusals(boolean trace) {
        return (e, line, parsed) -> {
            if (e instanceof Refusal refusal) {
                line.getErr().println(refusal.getMessage());
                return refusal.exit().code();
            }
            return fault(line, e, trace);
        };
    }

    private static int fault(CommandLine line, Throwable e, boolean trace) {
        line.getErr().println(CommandText.THIS_IS_A_FAULT_OF_THE.say(e, cause(e)));
        line.getErr().println(CommandText.WHAT_HAS_BEEN_RECORDED_IS_KEPT.say());
        if (trace) e.printStackTrace(line.getErr());
        return Exit.FAULT.code();
    }

    /** What it began with, since what lies between tells only where it passed. */
    private static String cause(Throwable e) {
        Throwable first = e;
        while (first.getCause() != null) first = first.getCause();
        return first == e ? "" : " (" + first + ")";
    }

    private static int notUnderstood(ParameterException e) {
        PrintWriter err = e.getCommandLine().getErr();
        err.println(ParameterWords.of(e));
        meant(e).ifPresent(err::println);
        err.println(CommandText.NOTHING_WAS_DONE_TRY_HELP.say(
                e.getCommandLine().getCommandSpec().qualifiedName()));
        return Exit.NOT_UNDERSTOOD.code();
    }

    private static Optional<String> meant(ParameterException e) {
        if (!(e instanceof UnmatchedArgumentException unmatched)) return Optional.empty();
        List<String> near = unmatched.getSuggestions();
        return near.isEmpty()
                ? Optional.empty()
                : Optional.of(CommandText.DID_YOU_MEAN.say(String.join(CommandText.OR.say(), near)));
    }
}
