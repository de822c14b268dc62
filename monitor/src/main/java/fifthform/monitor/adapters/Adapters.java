package fifthform.monitor.adapters;

import fifthform.curves.check.Problem;
import fifthform.curves.setup.Origin;
import fifthform.monitor.settings.KeptFiles;
import fifthform.monitor.texts.FileText;
import fifthform.probe.find.KnownAdapter;
import fifthform.probe.find.KnownProbe;
import fifthform.probe.find.UsbIdentity;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The adapters on disk, one file each, to which lines are only ever added. Reading never fails: what is damaged is kept
 * under another name and said.
 */
public final class Adapters {
    private static final String ENDING = ".jsonl";

    private final Path folder;

    /** @param folder where the files lie; made when something is kept */
    public Adapters(Path folder) {
        this.folder = Objects.requireNonNull(folder, "folder");
    }

    /** What is known, and what had to be left aside. */
    public record Loaded(List<KeptAdapter> adapters, List<Problem> problems) {
        public Loaded {
            adapters = List.copyOf(adapters);
            problems = List.copyOf(problems);
        }

        /** The adapter that shows itself like this. */
        public Optional<KeptAdapter> at(String place, Optional<UsbIdentity> usb) {
            return adapters.stream().filter(a -> a.known().isAt(place, usb)).findFirst();
        }
    }

    /** Reads all files, in the order of their names. */
    public Loaded load() {
        List<KeptAdapter> adapters = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (Path file : files(problems)) read(file, problems).ifPresent(adapters::add);
        return new Loaded(adapters, problems);
    }

    /**
     * Remembers where an adapter was used, how it talks and what is on its channels; its checks stay as they are. Channels
     * that are not named stay too. Writes only what is new.
     *
     * @param origin simulated adapters are kept apart from real ones: they are refused
     * @throws IOException it cannot be written; what was kept before stands
     */
    public KeptAdapter remember(KnownAdapter adapter, Origin origin) throws IOException {
        if (origin != Origin.REAL) throw new IllegalArgumentException("a simulated adapter must not be kept");
        Optional<KeptAdapter> before = load().at(adapter.place(), adapter.usb());
        List<String> lines = new ArrayList<>();
        if (before.isEmpty()) lines.add(AdapterText.adapter(adapter.usb()));
        boolean sameUse = before.filter(b -> AdapterText.used(b.known()).equals(AdapterText.used(adapter)))
                .isPresent();
        if (!sameUse) lines.add(AdapterText.used(adapter));
        for (KnownProbe probe : adapter.probes()) {
            String line = AdapterText.probe(probe);
            boolean same = before.flatMap(b -> b.probe(probe.channel()))
                    .filter(p -> AdapterText.probe(p).equals(line))
                    .isPresent();
            if (!same) lines.add(line);
        }
        Path file = before.isPresent() ? before.get().file() : fresh(name(adapter));
        append(file, lines);
        return load().at(adapter.place(), adapter.usb())
                .orElseThrow(() -> new IOException(file + " was written but cannot be read again"));
    }

    /**
     * Adds a check to those of an adapter that is remembered.
     *
     * @throws IOException it cannot be written; what was kept before stands
     */
    public void keep(KeptAdapter adapter, KeptCheck check) throws IOException {
        append(adapter.file(), List.of(AdapterText.check(check)));
    }

    /**
     * Forgets an adapter: its file is kept under another name and not read any more.
     *
     * @return the other name
     * @throws IOException it cannot be renamed; the adapter stays known
     */
    public Path forget(KeptAdapter adapter) throws IOException {
        return Files.move(adapter.file(), KeptFiles.free(adapter.file(), ".forgotten"));
    }

    private List<Path> files(List<Problem> problems) {
        return KeptFiles.in(
                folder,
                ENDING,
                FileText.THIS_IS_A_FILE_AND_THE.say(),
                why -> FileText.THE_PROBES_THAT_WERE_CHECKED.say(why),
                problems);
    }

    private Optional<KeptAdapter> read(Path file, List<Problem> problems) {
        try {
            AdapterReading reading = AdapterReading.of(file, Files.readString(file));
            if (reading.isOfANewerProgram()) {
                problems.add(new Problem(
                        file.toString(),
                        FileText.THIS_ADAPTER_WAS_WRITTEN_DOWN.say(),
                        FileText.USE_THE_NEWER_PROGRAM.say()));
                return Optional.empty();
            }
            if (reading.adapter().isEmpty()) {
                problems.add(damaged(
                        file,
                        Files.move(file, KeptFiles.free(file, KeptFiles.UNREADABLE)),
                        FileText.IT_IS_TAKEN_AS_UNKNOWN.say()));
                return Optional.empty();
            }
            if (reading.isDamaged()) problems.add(mend(file, reading));
            return reading.adapter();
        } catch (CharacterCodingException e) {
            return aside(file, problems);
        } catch (IOException e) {
            problems.add(unreadable(file, e));
            return Optional.empty();
        }
    }

    private static Optional<KeptAdapter> aside(Path file, List<Problem> problems) {
        try {
            problems.add(damaged(
                    file,
                    Files.move(file, KeptFiles.free(file, KeptFiles.UNREADABLE)),
                    FileText.IT_IS_TAKEN_AS_UNKNOWN.say()));
        } catch (IOException e) {
            problems.add(unreadable(file, e));
        }
        return Optional.empty();
    }

    /** The whole as it was goes under another name; the lines that can be read take its place. */
    private static Problem mend(Path file, AdapterReading reading) throws IOException {
        Path aside = KeptFiles.free(file, KeptFiles.UNREADABLE);
        Files.copy(file, aside);
        KeptFiles.replace(file, reading.goodText());
        return damaged(file, aside, FileText.THE_LINES_THAT_CAN_BE_READ.say());
    }

    private static Problem damaged(Path file, Path aside, String meaning) {
        return new Problem(
                file.toString(),
                FileText.WHAT_IS_KNOWN_OF_THIS_ADAPTER.say(meaning, aside.getFileName()),
                FileText.CHECK_THE_PROBE_AGAIN_MONITOR.say());
    }

    private static Problem unreadable(Path file, IOException e) {
        return new Problem(
                file.toString(),
                FileText.WHAT_IS_KNOWN_OF_THIS_ADAPTER_ADAPTERS.say(e.getMessage()),
                FileText.CHECK_THAT_YOU_MAY_READ_AND.say());
    }

    private static void append(Path file, List<String> lines) throws IOException {
        if (lines.isEmpty()) return;
        Files.createDirectories(file.toAbsolutePath().getParent());
        String end = endsWithLine(file) ? "" : "\n";
        Files.writeString(
                file,
                end + String.join("\n", lines) + "\n",
                StandardOpenOption.CREATE,
                StandardOpenOption.APPEND,
                StandardOpenOption.SYNC);
    }

    /** An editor may have left the last line open; ours must not run into it. */
    private static boolean endsWithLine(Path file) throws IOException {
        try {
            byte[] bytes = Files.readAllBytes(file);
            return bytes.length == 0 || bytes[bytes.length - 1] == '\n';
        } catch (NoSuchFileException e) {
            return true;
        }
    }

    private static String name(KnownAdapter adapter) {
        String who = adapter.usb()
                .map(u -> String.format("%04x-%04x", u.vendor(), u.product())
                        + u.serial().map(serial -> "-" + serial).orElse("-on-" + adapter.place()))
                .orElse("on-" + adapter.place());
        String plain = new String(who.getBytes(StandardCharsets.US_ASCII), StandardCharsets.US_ASCII)
                .replaceAll("[^A-Za-z0-9.-]+", "-");
        return plain.length() > 80 ? plain.substring(0, 80) : plain;
    }

    private Path fresh(String name) {
        Path file = folder.resolve(name + ENDING);
        for (int number = 2; Files.exists(file); number++) file = folder.resolve(name + "-" + number + ENDING);
        return file;
    }
}
