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

/** Reads requests as the service does and answers with bytes made before: what a calculation can cost at the least. */
@Path("/testing/ready/{name}")
@NonBlocking
public class ReadyMadeResource {
    private static final Map<String, byte[]> REPLIES = new ConcurrentHashMap<>();

    /** Keeps a reply under a name. */
    public static void keep(String name, byte[] reply) {
        REPLIES.put(name, reply.clone());
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
