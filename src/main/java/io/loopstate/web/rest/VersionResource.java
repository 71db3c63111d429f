package io.loopstate.web.rest;

import io.loopstate.web.dto.Version;
import io.smallrye.common.annotation.NonBlocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Which build answers. */
@Path("/v1/version")
@Tag(name = "trust")
@NonBlocking
public class VersionResource {
    private final Version version;

    /** Called by the container. */
    @Inject
    public VersionResource(Version version) {
        this.version = version;
    }

    /** The versions of engine, source, Java and platform. */
    @GET
    @Produces(MediaType.APPLICATION_JSON)
    @Operation(
            operationId = "getVersion",
            summary = "Which build answers",
            description = "Version of the engine, source revision, Java and platform.")
    public Version version() {
        return version;
    }
}
