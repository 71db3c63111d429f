package io.loopstate.wiring;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import io.loopstate.web.problem.ReadingFaults;
import io.quarkus.jackson.ObjectMapperCustomizer;
import jakarta.inject.Singleton;
import java.io.IOException;

/**
 * How JSON is read and written: strictly in, and out so that equal numbers are equal bytes on every Java release.
 *
 * <p>Doubles are written as the shortest decimal that reads back to the same double; {@code Double.toString} does not
 * promise that before Java 19. A number that is not finite is a defect, never a reply.
 */
@Singleton
public class JsonSettings implements ObjectMapperCustomizer {
    private static final int DEEPEST_NESTING = 32;
    private static final int LONGEST_NUMBER = 100;

    @Override
    @SuppressWarnings("deprecation") // The replacement is a builder, and the platform hands over a built mapper.
    public void customize(ObjectMapper mapper) {
        mapper.getFactory()
                .setStreamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(DEEPEST_NESTING)
                        .maxNumberLength(LONGEST_NUMBER)
                        .build())
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION.mappedFeature())
                .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION.mappedFeature())
                .enable(JsonParser.Feature.USE_FAST_DOUBLE_PARSER)
                .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER.mappedFeature())
                .disable(JsonGenerator.Feature.QUOTE_NON_NUMERIC_NUMBERS);
        mapper.enable(
                        DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES,
                        DeserializationFeature.FAIL_ON_TRAILING_TOKENS,
                        DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES,
                        DeserializationFeature.FAIL_ON_NUMBERS_FOR_ENUMS)
                .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
                .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
                .setSerializationInclusion(JsonInclude.Include.NON_NULL)
                .addHandler(ReadingFaults.handler())
                .registerModule(StrictScalar.module())
                .registerModule(new SimpleModule("numbers")
                        .addSerializer(new QuantityWriter())
                        .addSerializer(Double.class, new FiniteDouble())
                        .addSerializer(Double.TYPE, new FiniteDouble()));
    }

    static void writeFinite(double value, JsonGenerator out) throws IOException {
        out.writeNumber(finite(value, out));
    }

    static double finite(double value, JsonGenerator out) throws IOException {
        if (!Double.isFinite(value)) {
            throw JsonMappingException.from(out, "a number of the reply is not finite");
        }
        return value;
    }

    private static final class FiniteDouble extends StdSerializer<Double> {
        private static final long serialVersionUID = 1L;

        FiniteDouble() {
            super(Double.class);
        }

        @Override
        public void serialize(Double value, JsonGenerator out, SerializerProvider provider) throws IOException {
            writeFinite(value, out);
        }
    }
}
