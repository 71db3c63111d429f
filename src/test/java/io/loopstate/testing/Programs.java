package io.loopstate.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;

/** Programs that a test needs beside Java. */
public final class Programs {
    private static final boolean BUILD_SERVER = System.getenv("CI") != null;

    private Programs() {}

    /** Leaves a test out where one of them is missing, but on a build server, where it then fails. */
    public static void require(String... programs) {
        for (String program : programs) {
            boolean there = Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
                    .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
            require(there, program + " is not installed");
        }
    }

    /** The same where something else is not there. */
    public static void require(boolean there, String otherwise) {
        assumeTrue(there || BUILD_SERVER, otherwise);
    }

    /** The same where a command fails, since something that it needs is missing. */
    public static void requireSuccess(String... command) throws IOException, InterruptedException {
        int exit = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
        require(exit == 0, String.join(" ", command) + " fails");
    }

    /** What a program writes on its standard output; it has to end well within five minutes. */
    public static String run(String... command) throws IOException, InterruptedException {
        Path errors = Files.createTempFile("loopstate", ".txt");
        Process process =
                new ProcessBuilder(command).redirectError(errors.toFile()).start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();
        assertThat(process.exitValue()).as(output + Files.readString(errors)).isZero();
        Files.delete(errors);
        return output;
    }
}
