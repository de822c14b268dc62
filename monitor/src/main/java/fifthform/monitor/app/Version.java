package fifthform.monitor.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** Which program this is, as the build wrote it down. */
final class Version implements IVersionProvider {
    static String number() {
        return read().getProperty("version");
    }

    /** What it was built from; empty where the build did not say. */
    static String commit() {
        return read().getProperty("commit", "");
    }

    @Override
    public String[] getVersion() {
        return new String[] {"Fifth Form " + number()};
    }

    private static Properties read() {
        Properties properties = new Properties();
        try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
            properties.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return properties;
    }
}
