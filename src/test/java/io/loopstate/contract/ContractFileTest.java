package io.loopstate.contract;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The contract under version control is the one that is served, byte for byte. */
@QuarkusTest
class ContractFileTest {

    @Test
    void contractInTheRepositoryIsTheOneServed() throws IOException {
        String committed = Files.readString(Path.of("openapi", "openapi.yaml"));
        String served = Files.readString(Path.of("target", "openapi-test", "openapi.yaml"));
        assertThat(committed)
                .as("openapi/openapi.yaml is out of date: `mvn -B -DskipTests package` writes it anew")
                .isEqualTo(served);
    }
}
