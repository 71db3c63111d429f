package io.loopstate.testing;

import com.fasterxml.jackson.databind.JsonNode;
import io.smallrye.common.annotation.NonBlocking;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Reads requests as the service does and answers with what was made before, as bytes or as a reply that is still to be written: what
 * the platform costs without a calculation, and without writing.
 */
@Path("/testing/ready/{name}")
@NonBlocking
public class ReadyMadeResource {
    private static final Map<String, byte[]> REPLIES = new ConcurrentHashMap<>();
    private static final Map<String, Object> UNWRITTEN = new ConcurrentHashMap<>();

    /** Keeps a reply under a name. */
    public static void keep(String name, byte[] reply) {
        REPLIES.put(name, reply.clone());
    }

    /** Keeps a reply that is not written yet. */
    public static void keepUnwritten(String name, Object reply) {
        UNWRITTEN.put(name, reply);
    }

    /** The reply, after reading the body, written each time. */
    @POST
    @Path("/unwritten")
    @Consumes(MediaType.APPLICATION_JSON)
    @Produces(MediaType.APPLICATION_JSON)
    public Object unwrittenAfterBody(@PathParam("name") String name, JsonNode body, @Context UriInfo uri) {
        return body.isEmpty() || !uri.getQueryParameters().isEmpty() ? Map.of() : UNWRITTEN.get(name);
    }

    /** The reply, after reading the body. */
    @POST
    @Consumes(MediaType.APPLICATION_JSON)
    @Produces(MediaType.APPLICATION_JSON)
    public byte[] afterBody(@PathParam("name") String name, JsonNode body, @Context UriInfo uri) {
        return body.isEmpty() || !uri.getQueryParameters().isEmpty() ? new byte[0] : REPLIES.get(name);
    }

    /** The reply, after reading the query. */
    @GET
    @Produces(MediaType.TEXT_PLAIN)
    public byte[] afterQuery(@PathParam("name") String name, @Context UriInfo uri) {
        return uri.getQueryParameters().isEmpty() ? new byte[0] : REPLIES.get(name);
    }
}
