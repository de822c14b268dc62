package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.notebook.DemoBatches;
import fifthform.monitor.notebook.DemoBatches.Plan;
import fifthform.monitor.store.SessionFiles;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Everything in one archive and back; nothing that is here is ever lost by it. */
class BackupCommandTest {
    @TempDir
    Path folder;

    private Path here;
    private Path there;
    private Path archive;
    private Path session;
    private String name;
    private String practised;

    @BeforeEach
    void keep() throws Exception {
        here = folder.resolve("here");
        there = folder.resolve("there");
        archive = folder.resolve("all.zip");
        DemoBatches demo = new DemoBatches(here);
        session = demo.record(Plan.dark(32));
        name = SessionFiles.name(session);
        practised = SessionFiles.name(demo.record(Plan.dark(32).practised()));
        Files.writeString(session.resolveSibling(practised + ".notes.jsonl"), "{}\n");
        Files.writeString(session.resolveSibling(name + ".notes.jsonl"), "{\"one\":1}\n");
        Files.writeString(session.resolveSibling(session.getFileName() + ".lock"), "");
        Files.writeString(Files.createDirectories(here.resolve("recipes")).resolve("demo.recipe"), "demo\n");
    }

    private static Said said(Path data, String... arguments) {
        String[] all = new String[arguments.length + 1];
        all[0] = arguments[0];
        all[1] = "--data=" + data;
        System.arraycopy(arguments, 1, all, 2, arguments.length - 1);
        return Said.by(all);
    }

    private static Map<String, String> files(Path data) throws Exception {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(data)) {
            for (Path file : all.filter(Files::isRegularFile).toList())
                files.put(
                        data.relativize(file).toString().replace('\\', '/'),
                        Files.readString(file, StandardCharsets.UTF_8));
        }
        return files;
    }

    /** As the notebook writes it. */
    private String day() {
        return name.substring(0, 10);
    }

    @Test
    void whatWasHereIsThereAfterwards() throws Exception {
        Said made = said(here, "backup", archive.toString());
        assertEquals(0, made.exit(), made.err());
        assertTrue(made.out().contains("Practice batches left out: 1"), made.out());
        Said restored = said(there, "restore", archive.toString());
        assertEquals(0, restored.exit(), restored.err());
        Map<String, String> wanted = files(here);
        wanted.keySet().removeIf(file -> file.endsWith(".lock") || file.contains(practised));
        assertEquals(wanted, files(there));
        Said again = said(there, "restore", archive.toString());
        assertTrue(again.out().startsWith("Restored: 0 files."), again.out());
        assertEquals(wanted, files(there));
    }

    @Test
    void practiceComesAlongWhereItIsAskedFor() throws Exception {
        assertEquals(0, said(here, "backup", "--practice", archive.toString()).exit());
        said(there, "restore", archive.toString());
        assertTrue(files(there).containsKey("sessions/" + practised + ".notes.jsonl"));
    }

    @Test
    void aLineThatIsBeingWrittenIsLeftOutAndComesWithTheNextBackup() throws Exception {
        String whole = Files.readString(session);
        Files.writeString(session, whole + "{\"k\":\"r\",\"half");
        said(here, "backup", archive.toString());
        said(there, "restore", archive.toString());
        Path restored = there.resolve("sessions").resolve(session.getFileName());
        assertEquals(whole, Files.readString(restored));
        // Lines were added here since: the later state stays; lines were added there: it grows.
        Files.writeString(restored, whole + "{\"later\":1}\n");
        assertTrue(said(there, "restore", archive.toString()).out().contains("0 have grown"));
        assertEquals(whole + "{\"later\":1}\n", Files.readString(restored));
        Files.writeString(restored, whole.substring(0, whole.indexOf('\n') + 1));
        assertTrue(said(there, "restore", archive.toString()).out().contains("1 have grown"));
        assertEquals(whole, Files.readString(restored));
    }

    @Test
    void whatDiffersIsPutApart() throws Exception {
        said(here, "backup", archive.toString());
        Files.writeString(Files.createDirectories(there.resolve("recipes")).resolve("demo.recipe"), "mine\n");
        Said restored = said(there, "restore", archive.toString());
        assertEquals(0, restored.exit(), restored.err());
        assertEquals("mine\n", files(there).get("recipes/demo.recipe"));
        assertEquals("demo\n", files(there).get("restored/recipes/demo.recipe"));
        assertTrue(restored.out().contains("Yours were left as they are"), restored.out());
    }

    @Test
    void aBackupIsNeverOverwritten() throws Exception {
        Files.writeString(archive, "mine");
        said(here, "backup", archive.toString()).refuses(4, "all.zip", "left as it is", "another name");
        assertEquals("mine", Files.readString(archive));
    }

    /** Writes the archive again with other entries. */
    private void change(Map<String, byte[]> changes) throws Exception {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        try (ZipFile zip = new ZipFile(archive.toFile())) {
            for (ZipEntry entry : zip.stream().map(e -> (ZipEntry) e).toList())
                entries.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
        }
        entries.putAll(changes);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue());
            }
        }
        Files.write(archive, bytes.toByteArray());
    }

    private String contents() throws Exception {
        try (ZipFile zip = new ZipFile(archive.toFile())) {
            return new String(
                    zip.getInputStream(zip.getEntry("contents.jsonl")).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private void nothingIsRestored(String why) throws Exception {
        said(there, "restore", archive.toString()).refuses(4, "all.zip", why, "Try another copy");
        assertTrue(!Files.exists(there) || files(there).isEmpty(), "nothing was written");
    }

    @Test
    void aDamagedArchiveChangesNothing() throws Exception {
        said(here, "backup", archive.toString());
        change(Map.of("recipes/demo.recipe", "other".getBytes(StandardCharsets.UTF_8)));
        nothingIsRestored("demo.recipe in it is damaged");
        change(Map.of("recipes/demo.recipe", new byte[100_000]));
        nothingIsRestored("longer than it should be");
        byte[] half = Files.readAllBytes(archive);
        Files.write(archive, java.util.Arrays.copyOf(half, half.length / 2));
        nothingIsRestored("no backup, or a damaged one");
        Files.writeString(archive, "PK no");
        nothingIsRestored("no backup, or a damaged one");
    }

    @Test
    void aNameThatLeadsOutOfTheFoldersIsRefused() throws Exception {
        for (String odd :
                new String[] {"recipes/../../out.txt", "recipes//etc/out", "elsewhere/out", "out", "bin/.."}) {
            Files.deleteIfExists(archive);
            said(here, "backup", archive.toString());
            String changed = contents().replace("recipes/demo.recipe", odd);
            change(Map.of(
                    "contents.jsonl",
                    changed.getBytes(StandardCharsets.UTF_8),
                    odd,
                    "demo\n".getBytes(StandardCharsets.UTF_8)));
            nothingIsRestored("place is none of ours");
        }
        assertFalse(Files.exists(folder.resolve("out.txt")));
    }

    /** What another program put in is named; what is listed comes. */
    @Test
    void whatIsNotListedIsNamedAndLeftOut() throws Exception {
        said(here, "backup", archive.toString());
        change(Map.of("sessions/stranger.notes.jsonl", "{}\n".getBytes(StandardCharsets.UTF_8)));
        Said restored = said(there, "restore", archive.toString());
        assertEquals(0, restored.exit(), restored.err());
        assertTrue(
                restored.out()
                        .contains(
                                "Left out, since they are not in its list of contents: sessions/stranger.notes.jsonl."),
                restored.out());
        assertFalse(files(there).containsKey("sessions/stranger.notes.jsonl"));
        assertTrue(files(there).containsKey("sessions/" + session.getFileName()));
    }

    /** On some disks the second would be the first one's end. */
    @Test
    void namesThatDifferOnlyInCapitalsArePutApart() throws Exception {
        Files.writeString(here.resolve("recipes").resolve("DEMO.recipe"), "other\n");
        Files.writeString(here.resolve("recipes").resolve("Demo.recipe"), "third\n");
        said(here, "backup", archive.toString());
        Said restored = said(there, "restore", archive.toString());
        assertEquals(0, restored.exit(), restored.err());
        assertTrue(restored.out().contains("only in small and capital letters: recipes/"), restored.out());
        assertTrue(restored.out().contains("Rename them"), restored.out());
        Map<String, String> files = files(there);
        assertEquals(
                1,
                files.keySet().stream().filter(f -> f.startsWith("recipes/")).count(),
                files.keySet().toString());
        assertEquals(
                2,
                files.keySet().stream()
                        .filter(f -> f.startsWith("restored/twin-"))
                        .count(),
                files.keySet().toString());
        assertTrue(files.values().containsAll(java.util.List.of("demo\n", "other\n", "third\n")), files.toString());
    }

    @Test
    void aBackupOfANewerProgramIsRefused() throws Exception {
        said(here, "backup", archive.toString());
        change(Map.of(
                "contents.jsonl",
                contents().replace("\"format\":1", "\"format\":2").getBytes(StandardCharsets.UTF_8)));
        nothingIsRestored("a newer program wrote it");
    }

    @Test
    void sentBatchesAreSeenAndTeachNothing() throws Exception {
        Said taken = said(there, "import", session.toString());
        assertEquals(0, taken.exit(), taken.err());
        Path sent = there.resolve("sent").resolve(session.getFileName());
        assertArrayEquals(Files.readAllBytes(session), Files.readAllBytes(sent));
        assertTrue(Files.exists(there.resolve("sent").resolve(name + ".notes.jsonl")));
        assertFalse(said(there, "notebook", "--screen", "lines").out().contains(day()));
        assertTrue(said(there, "notebook", "--sent", "--screen", "lines").out().contains(day()));
        assertEquals(0, said(there, "export", "--as", "csv", name).exit());
        assertTrue(said(there, "import", session.toString()).out().startsWith("Here already"));
        Files.writeString(sent, "{\"another\":1}\n");
        assertEquals(1, said(there, "import", session.toString()).exit());
        assertEquals("{\"another\":1}\n", Files.readString(sent));
    }

    /** One's own of the same name is found first by its name. */
    @Test
    void aSentBatchThatIsCalledAsOneOfOnesOwnIsNamedByItsPath() throws Exception {
        Path sent = there.resolve("sent").resolve(session.getFileName());
        assertTrue(said(there, "import", session.toString()).out().endsWith("replay " + name + System.lineSeparator()));
        Files.delete(sent);
        said(there, "import", "--mine", session.toString());
        Said taken = said(there, "import", session.toString());
        assertTrue(taken.out().endsWith("replay " + sent + System.lineSeparator()), taken.out());
    }

    @Test
    void aSentBatchComesBackFromTheBinAmongTheSentOnes() throws Exception {
        said(there, "import", session.toString());
        said(there, "notebook", "bin", name).refuses(4, name, "Nothing was done", "whole path");
        Path sent = there.resolve("sent").resolve(session.getFileName());
        assertTrue(Files.exists(sent));
        String data = "--data=" + there;
        assertEquals(0, Said.by("notebook", "--sent", "bin", data, name).exit());
        assertFalse(Files.exists(sent));
        assertEquals(0, Said.by("notebook", "--sent", "restore", data, name).exit());
        assertTrue(Files.exists(sent));
        assertFalse(Files.exists(there.resolve("sessions").resolve(session.getFileName())));
    }

    @Test
    void aFolderThatIsNotThereIsNamed() {
        Path missing = folder.resolve("none");
        said(here, "backup", missing.resolve("all.zip").toString())
                .refuses(4, "there is no folder " + missing, "Nothing was written", "Check the folder");
    }

    @Test
    void theBinOfSentBatchesComesAlongWithTheOtherBin() throws Exception {
        said(there, "import", session.toString());
        said(there, "notebook", "--sent", "bin", name);
        assertTrue(
                files(there).keySet().stream().anyMatch(f -> f.startsWith("sent-bin/")),
                files(there).toString());
        Path third = folder.resolve("third");
        said(there, "backup", archive.toString());
        said(third, "restore", archive.toString());
        assertFalse(files(third).keySet().stream().anyMatch(f -> f.startsWith("sent-bin/")));
        Path with = folder.resolve("with-bin.zip");
        said(there, "backup", "--with-bin", with.toString());
        said(third, "restore", with.toString());
        assertEquals(0, said(third, "notebook", "--sent", "restore", name).exit());
        assertTrue(files(third).containsKey("sent/" + session.getFileName()));
    }

    @Test
    void ownBatchesOfAnotherComputerCountWithOwn() throws Exception {
        assertEquals(0, said(there, "import", "--mine", session.toString()).exit());
        assertTrue(said(there, "notebook", "--screen", "lines").out().contains(day()));
        said(there, "import", folder.resolve("none.tempering.jsonl").toString())
                .refuses(4, "none.tempering.jsonl", "no such file", "");
    }
}
