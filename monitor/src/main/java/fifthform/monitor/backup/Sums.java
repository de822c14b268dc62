package fifthform.monitor.backup;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Sums that tell whether a file is whole. */
final class Sums {
    private Sums() {}

    static MessageDigest begin() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    static String end(MessageDigest sum) {
        return HexFormat.of().formatHex(sum.digest());
    }

    static String of(byte[] bytes) {
        MessageDigest sum = begin();
        sum.update(bytes);
        return end(sum);
    }
}
