package io.loopstate.reference;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.FluidReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A coefficient file as text beside the fluid that the engine makes of it, so that the two can be compared.
 *
 * @param json the file, read here without the engine
 * @param fluid the engine's reading of it
 */
record CoefficientFile(JsonNode json, Fluid fluid) {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    /** Blends that the engine computes from their components; as one substance only tests know them. */
    private static final List<String> TEST_ONLY = List.of("r-404a.json", "r-407c.json", "r-410a.json", "r-507a.json");

    /** Every fluid of the catalog and the pseudo-pure blends of the tests. */
    static Stream<CoefficientFile> all() {
        List<String> files = new ArrayList<>();
        read("index.json")
                .get("fluids")
                .forEach(entry -> files.add(entry.get("file").asText()));
        files.addAll(TEST_ONLY);
        return files.stream().map(CoefficientFile::of);
    }

    private static CoefficientFile of(String file) {
        try (InputStream stream = open(file)) {
            return new CoefficientFile(read(file), FluidReader.read(stream));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JsonNode read(String file) {
        try (InputStream stream = open(file)) {
            return MAPPER.readTree(stream);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream open(String file) {
        return CoefficientFile.class.getResourceAsStream("/fluids/" + file);
    }

    /** Shown as the name of a test case. */
    @Override
    public String toString() {
        return fluid.designation();
    }
}
