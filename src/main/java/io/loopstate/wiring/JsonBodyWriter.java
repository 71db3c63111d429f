package io.loopstate.wiring;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import io.loopstate.web.problem.Problem;
import jakarta.inject.Inject;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.ext.Provider;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.lang.annotation.Annotation;
import java.lang.reflect.Type;
import org.jboss.resteasy.reactive.server.spi.ResteasyReactiveResourceInfo;
import org.jboss.resteasy.reactive.server.spi.ServerMessageBodyWriter;
import org.jboss.resteasy.reactive.server.spi.ServerRequestContext;

/**
 * Writes JSON bodies, problems whatever form the client accepts, in one piece. The platform's writer sends what is longer than its
 * buffer in chunks, for each of which a worker thread waits.
 */
@Provider
@Produces({MediaType.APPLICATION_JSON, Problem.MEDIA_TYPE})
public class JsonBodyWriter implements ServerMessageBodyWriter<Object> {
    private final ObjectWriter writer;

    /** Called by the container. */
    @Inject
    public JsonBodyWriter(ObjectMapper mapper) {
        this.writer = mapper.writer();
    }

    @Override
    public boolean isWriteable(
            Class<?> type, Type genericType, ResteasyReactiveResourceInfo target, MediaType mediaType) {
        return isWriteable(type, genericType, (Annotation[]) null, mediaType);
    }

    @Override
    public boolean isWriteable(Class<?> type, Type genericType, Annotation[] annotations, MediaType mediaType) {
        return type != String.class && type != byte[].class && !InputStream.class.isAssignableFrom(type);
    }

    @Override
    public void writeResponse(Object reply, Type genericType, ServerRequestContext context) throws IOException {
        context.serverResponse().end(writer.writeValueAsBytes(reply));
    }

    @Override
    public void writeTo(
            Object reply,
            Class<?> type,
            Type genericType,
            Annotation[] annotations,
            MediaType mediaType,
            MultivaluedMap<String, Object> headers,
            OutputStream out)
            throws IOException {
        out.write(writer.writeValueAsBytes(reply));
    }
}
