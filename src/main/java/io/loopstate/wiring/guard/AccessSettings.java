package io.loopstate.wiring.guard;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Who may ask. Without any of these everybody may. Keys are random text of 16 characters or more that their owner keeps; here
 * stands only the SHA-256 of each, which does not give it away ({@code printf %s "$KEY" | sha256sum}).
 */
@ConfigMapping(prefix = "loopstate.access")
public interface AccessSettings {

    /** Keys by the name of their owner, {@code loopstate.access.keys.northquay.sha256=...}. */
    Map<String, Key> keys();

    /** A file with one key a line: name, SHA-256, and requests per minute if wanted. Read once, at the start. */
    Optional<Path> keysFile();

    /** Whether requests without a key are answered all the same; by default where there are no keys. */
    Optional<Boolean> anonymous();

    /** Whether bearer tokens are accepted, which the package has to be built for. */
    @WithDefault("false")
    boolean bearer();

    /** Requests per minute of a subject of tokens, and of a key that has no number of its own; as many may come at once. */
    @WithDefault("600")
    int requestsPerMinute();

    /** A key. */
    interface Key {

        /** SHA-256 of the key's UTF-8 bytes, 64 hexadecimal digits. */
        String sha256();

        /** Requests per minute of this key. */
        OptionalInt requestsPerMinute();
    }
}
