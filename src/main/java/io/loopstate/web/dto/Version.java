package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * Which build answers. Holds no time, so that the same build gives the same bytes.
 *
 * @param engineVersion version of the engine and of this service, which are released as one
 * @param commit the source revision, absent where the build had none
 * @param javaRelease feature release of the Java runtime
 * @param quarkusVersion version of the platform
 */
@Schema(name = "ServiceVersion", description = "Which build answers.")
public record Version(
        @Schema(required = true, description = "Version of the engine and of this service.", examples = "1.0.0")
        String engineVersion,

        @Schema(description = "Source revision, absent where the build had none.")
        String commit,

        @Schema(required = true, description = "Feature release of the Java runtime.", examples = "17")
        int javaRelease,

        @Schema(required = true, description = "Version of the platform.")
        String quarkusVersion) {}
