package io.loopstate.wiring;

import io.loopstate.web.dto.Version;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** What the build wrote down about itself. */
final class BuildInfo {
    private static final String RESOURCE = "/build.properties";

    private BuildInfo() {}

    @Produces
    @Singleton
    static Version version() {
        Properties build = read();
        return new Version(
                build.getProperty("version"),
                known(build.getProperty("commit")),
                Runtime.version().feature(),
                build.getProperty("quarkus"));
    }

    /** A placeholder that is still there stands for a build outside version control. */
    private static String known(String value) {
        return value.startsWith("${") ? null : value;
    }

    private static Properties read() {
        Properties properties = new Properties();
        try (InputStream in = BuildInfo.class.getResourceAsStream(RESOURCE)) {
            properties.load(in);
            return properties;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
