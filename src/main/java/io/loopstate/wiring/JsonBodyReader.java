package io.loopstate.wiring;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.JsonFaults;
import io.loopstate.web.problem.Pointer;
import io.loopstate.web.problem.ProblemException;
import io.loopstate.web.problem.ProblemKind;
import io.loopstate.web.problem.ReadingFaults;
import io.loopstate.wiring.guard.Workers;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.ext.Provider;
import java.io.IOException;
import java.io.InputStream;
import java.lang.annotation.Annotation;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jboss.resteasy.reactive.server.core.CurrentRequestManager;
import org.jboss.resteasy.reactive.server.spi.ResteasyReactiveResourceInfo;
import org.jboss.resteasy.reactive.server.spi.ServerMessageBodyReader;
import org.jboss.resteasy.reactive.server.spi.ServerRequestContext;

/**
 * Reads JSON bodies. Unlike the platform's reader it goes on after an unknown name or a wrong type, so that a client
 * learns of every fault at once.
 */
@Provider
@Consumes(MediaType.APPLICATION_JSON)
public class JsonBodyReader implements ServerMessageBodyReader<Object> {
    private final ObjectMapper mapper;
    private final Map<Type, ObjectReader> readers = new ConcurrentHashMap<>();

    /** Called by the container. */
    @Inject
    public JsonBodyReader(ObjectMapper mapper) {
        this.mapper = mapper;
    }

    @Override
    public boolean isReadable(
            Class<?> type, Type genericType, ResteasyReactiveResourceInfo target, MediaType mediaType) {
        return isReadable(type, genericType, (Annotation[]) null, mediaType);
    }

    @Override
    public boolean isReadable(Class<?> type, Type genericType, Annotation[] annotations, MediaType mediaType) {
        return type != String.class && type != byte[].class && !InputStream.class.isAssignableFrom(type);
    }

    @Override
    public Object readFrom(Class<Object> type, Type genericType, MediaType mediaType, ServerRequestContext context)
            throws IOException {
        return JsonNode.class.equals(type)
                        && CurrentRequestManager.get().getProperty(Workers.TREE) instanceof JsonNode tree
                ? tree
                : read(genericType == null ? type : genericType, context.getInputStream());
    }

    @Override
    public Object readFrom(
            Class<Object> type,
            Type genericType,
            Annotation[] annotations,
            MediaType mediaType,
            MultivaluedMap<String, String> headers,
            InputStream body)
            throws IOException {
        return read(genericType == null ? type : genericType, body);
    }

    private Object read(Type type, InputStream body) throws IOException {
        ReadingFaults faults = new ReadingFaults();
        ObjectReader reader = readers.computeIfAbsent(type, this::reader);
        try {
            Object value = reader.withAttribute(ReadingFaults.ATTRIBUTE, faults).readValue(body);
            if (!faults.faults().isEmpty()) {
                throw new ProblemException(ProblemKind.INVALID_REQUEST, faults.faults());
            }
            if (value == null) {
                throw missing();
            }
            return value;
        } catch (JsonProcessingException e) {
            if (e.getOriginalMessage().startsWith("No content")) {
                throw missing();
            }
            List<Fault> all = new ArrayList<>(faults.faults());
            all.add(JsonFaults.of(e));
            throw new ProblemException(ProblemKind.INVALID_REQUEST, all);
        }
    }

    private ObjectReader reader(Type type) {
        return mapper.readerFor(mapper.constructType(type));
    }

    private static ProblemException missing() {
        Fault fault = Fault.at(Pointer.ROOT, "missing-body", "A JSON body is required.")
                .withAllowed("a JSON object, as the contract at /q/openapi shows it");
        return ProblemException.invalid(fault);
    }
}
