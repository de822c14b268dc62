package fifthform.simulator.training;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/**
 * Sessions kept in a file, so that another training need not simulate them again. The numbers lie there as Java's
 * {@link DataOutputStream} writes them, after the request that they answer.
 */
final class SessionFile {
    private static final String MARK = "Fifth Form sessions 1";
    private static final int MOST_STEPS = 1_000_000;

    private SessionFile() {}

    /** @param request what was asked for: a file for another request is not taken */
    static void write(Path file, String request, List<Session> sessions) throws IOException {
        Path target = file.toAbsolutePath();
        Files.createDirectories(target.getParent());
        Path beside = target.resolveSibling(target.getFileName() + ".part");
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(beside), 1 << 20)) {
            write(new DataOutputStream(out), request, sessions);
        }
        Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
    }

    private static void write(DataOutputStream out, String request, List<Session> sessions) throws IOException {
        out.writeUTF(MARK);
        out.writeUTF(request);
        out.writeInt(sessions.size());
        for (Session session : sessions) write(out, session);
        out.flush();
    }

    private static void write(DataOutputStream out, Session session) throws IOException {
        out.writeLong(session.kitchen);
        out.writeInt(session.steps);
        write(out, session.inputs);
        write(out, session.turn);
        write(out, session.turnLater);
        out.write(session.place);
        write(out, session.bulk);
        write(out, session.weight);
        for (int dip : session.dip) out.writeInt(dip);
    }

    private static void write(DataOutputStream out, float[] values) throws IOException {
        for (float value : values) out.writeFloat(value);
    }

    /**
     * @throws IOException if the file cannot be read, is none of ours, or answers another request; the message says which
     *     and what to do
     */
    static List<Session> read(Path file, String request) throws IOException {
        try (DataInputStream in = new DataInputStream(new BufferedInputStream(Files.newInputStream(file), 1 << 20))) {
            if (!in.readUTF().equals(MARK)) throw new IOException("it does not begin as a file of sessions does");
            String was = in.readUTF();
            if (!was.equals(request)) {
                throw new IOException("it holds sessions for '" + was + "' where '" + request + "' was asked for");
            }
            List<Session> sessions = new ArrayList<>();
            for (int left = in.readInt(); left > 0; left--) sessions.add(session(in));
            return sessions;
        } catch (IOException e) {
            throw new IOException(
                    "The sessions in " + file + " cannot be used: " + e.getMessage()
                            + ". Delete the file or name another, and they are simulated again.",
                    e);
        }
    }

    private static Session session(DataInputStream in) throws IOException {
        long kitchen = in.readLong();
        int steps = in.readInt();
        if (steps < 1 || steps > MOST_STEPS) throw new IOException("a session of " + steps + " steps is impossible");
        float[] inputs = floats(in, steps * Session.INPUTS);
        float[] turn = floats(in, steps);
        float[] turnLater = floats(in, steps);
        byte[] place = new byte[steps];
        in.readFully(place);
        float[] bulk = floats(in, steps);
        float[] weight = floats(in, steps);
        int[] dip = new int[steps];
        for (int t = 0; t < steps; t++) dip[t] = in.readInt();
        return new Session(kitchen, inputs, turn, turnLater, place, bulk, weight, dip);
    }

    private static float[] floats(DataInputStream in, int count) throws IOException {
        float[] values = new float[count];
        for (int i = 0; i < count; i++) values[i] = in.readFloat();
        return values;
    }

    /** The data's version: the beginning of a SHA-256 over every number, so that nobody has to remember to count it up. */
    static String version(List<Session> sessions) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            OutputStream nowhere = new DigestOutputStream(OutputStream.nullOutputStream(), digest);
            write(new DataOutputStream(new BufferedOutputStream(nowhere, 1 << 16)), "", sessions);
            return HexFormat.of().formatHex(digest.digest(), 0, 8);
        } catch (NoSuchAlgorithmException | IOException e) {
            throw new IllegalStateException("every Java has SHA-256, and nothing is written", e);
        }
    }
}
