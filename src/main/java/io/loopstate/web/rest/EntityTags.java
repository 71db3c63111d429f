package io.loopstate.web.rest;

import io.loopstate.web.dto.Version;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Strong entity tags: same build, same request, same form, same bytes. */
final class EntityTags {
    private static final int BYTES = 16;

    /** Parameters without influence on the reply. */
    private static final Set<String> IGNORED = Set.of("_", "key");

    /** Has seen the build; copied for each tag. */
    private final MessageDigest begun;

    /** Of the replies of a build. */
    EntityTags(Version version) {
        begun = sha256();
        begun.update((version.engineVersion() + '\n' + version.commit() + '\n').getBytes(StandardCharsets.UTF_8));
    }

    /** The tag of a reply that was not computed yet. */
    String of(String path, String form, Map<String, List<String>> parameters) {
        StringBuilder canonical = new StringBuilder().append(path).append('\n').append(form);
        String[] names = parameters.keySet().toArray(String[]::new);
        Arrays.sort(names);
        for (String name : names) {
            if (!IGNORED.contains(name)) {
                for (String value : parameters.get(name)) {
                    canonical.append('\n').append(name).append('=').append(value);
                }
            }
        }
        byte[] digest = copy().digest(canonical.toString().getBytes(StandardCharsets.UTF_8));
        return '"' + Base64.getUrlEncoder().withoutPadding().encodeToString(Arrays.copyOf(digest, BYTES)) + '"';
    }

    /** Whether an If-None-Match header holds a tag; weak ones compare equal, as for GET they should. */
    static boolean matches(String header, String tag) {
        return header != null && header.contains(tag);
    }

    private MessageDigest copy() {
        try {
            return (MessageDigest) begun.clone();
        } catch (CloneNotSupportedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
