package io.loopstate.testing;

import io.smallrye.common.annotation.NonBlocking;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.Map;

/** Routes that exist in tests only: the rules of the server hold for any resource. */
@Path("/testing")
@Produces(MediaType.APPLICATION_JSON)
public class ProbeResource {

    /** Gives back what was read, from the event loop. */
    @POST
    @Path("/echo")
    @Consumes(MediaType.APPLICATION_JSON)
    @NonBlocking
    public Probe echo(Probe probe) {
        return probe;
    }

    /** Gives back what was read, from a worker thread. */
    @POST
    @Path("/echo-on-worker")
    @Consumes(MediaType.APPLICATION_JSON)
    public Probe echoOnWorker(Probe probe) {
        return probe;
    }

    /** Gives back a parameter. */
    @GET
    @Path("/query")
    public Map<String, String> query(@QueryParam("text") String text) {
        return Map.of("text", text);
    }

    /** Gives back a parameter that has to be a number. */
    @GET
    @Path("/number")
    public Map<String, Integer> number(@QueryParam("value") int value) {
        return Map.of("value", value);
    }

    /** Fails. */
    @GET
    @Path("/defect")
    public String defect() {
        throw new IllegalStateException("a secret of the service");
    }

    /** Answers with a number that is none. */
    @GET
    @Path("/not-finite")
    public Map<String, Double> notFinite() {
        return Map.of("value", Double.NaN);
    }

    /** Answers with a number whose shortest form older Java releases do not find. */
    @GET
    @Path("/shortest")
    public Map<String, Double> shortest() {
        return Map.of("value", 2.0E-3, "long", 2.2250738585072014E-308, "other", 1.0E23);
    }
}
