package io.loopstate.testing;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** Programs that a test needs beside Java. */
public final class Programs {
    private Programs() {}

    /** Leaves a test out where one of them is missing, but on a build server, where it then fails. */
    public static void require(String... programs) {
        for (String program : programs) {
            boolean there = Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
                    .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
            assumeTrue(there || System.getenv("CI") != null, program + " is not installed");
        }
    }
}
