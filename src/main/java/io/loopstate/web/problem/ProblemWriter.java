package io.loopstate.web.problem;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import jakarta.inject.Inject;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.ext.Provider;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.annotation.Annotation;
import java.lang.reflect.Type;
import org.jboss.resteasy.reactive.server.spi.ResteasyReactiveResourceInfo;
import org.jboss.resteasy.reactive.server.spi.ServerMessageBodyWriter;
import org.jboss.resteasy.reactive.server.spi.ServerRequestContext;

/** Writes problems, whatever format the client accepts. */
@Provider
@Produces(Problem.MEDIA_TYPE)
public class ProblemWriter implements ServerMessageBodyWriter<Problem> {
    private final ObjectWriter writer;

    /** Called by the container. */
    @Inject
    public ProblemWriter(ObjectMapper mapper) {
        writer = mapper.writerFor(Problem.class);
    }

    @Override
    public boolean isWriteable(
            Class<?> type, Type genericType, ResteasyReactiveResourceInfo target, MediaType mediaType) {
        return type == Problem.class;
    }

    @Override
    public boolean isWriteable(Class<?> type, Type genericType, Annotation[] annotations, MediaType mediaType) {
        return type == Problem.class;
    }

    @Override
    public void writeResponse(Problem problem, Type genericType, ServerRequestContext context) throws IOException {
        try (OutputStream out = context.getOrCreateOutputStream()) {
            writer.writeValue(out, problem);
        }
    }

    @Override
    public void writeTo(
            Problem problem,
            Class<?> type,
            Type genericType,
            Annotation[] annotations,
            MediaType mediaType,
            MultivaluedMap<String, Object> headers,
            OutputStream out)
            throws IOException {
        writer.writeValue(out, problem);
    }
}
