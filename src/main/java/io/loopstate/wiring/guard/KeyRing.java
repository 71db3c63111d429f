package io.loopstate.wiring.guard;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** The keys that are known here, each by its hash and with its own rate. */
final class KeyRing {
    private static final Pattern SHA_256 = Pattern.compile("[0-9a-fA-F]{64}");

    private record Entry(byte[] hash, Rate rate) {}

    private final List<Entry> entries = new ArrayList<>();

    KeyRing(AccessSettings settings) {
        settings.keys()
                .forEach((name, key) ->
                        add(name, key.sha256(), key.requestsPerMinute().orElse(settings.requestsPerMinute())));
        settings.keysFile().ifPresent(file -> read(file, settings.requestsPerMinute()));
    }

    boolean isEmpty() {
        return entries.isEmpty();
    }

    /**
     * The rate of a key; empty for one that is not known. Every entry is compared to its last byte, so that the time tells
     * nothing of how near a guess came.
     */
    Optional<Rate> find(String key) {
        byte[] hash = sha256(key);
        Rate found = null;
        for (Entry entry : entries) {
            if (MessageDigest.isEqual(entry.hash(), hash)) {
                found = entry.rate();
            }
        }
        return Optional.ofNullable(found);
    }

    private void add(String name, String hash, int requestsPerMinute) {
        if (!SHA_256.matcher(hash).matches() || requestsPerMinute < 1) {
            throw new IllegalArgumentException("the key of " + name
                    + " needs a SHA-256 of 64 hexadecimal digits, and if it has a rate one of 1 or more a minute");
        }
        entries.add(new Entry(HexFormat.of().parseHex(hash), new Rate(requestsPerMinute)));
    }

    private void read(Path file, int usual) {
        try {
            for (String line : Files.readAllLines(file)) {
                String[] words = line.strip().split("\\s+");
                if (line.isBlank() || line.startsWith("#")) {
                    continue;
                }
                if (words.length < 2 || words.length > 3) {
                    throw new IllegalArgumentException(
                            "a line of " + file + " is not: name, SHA-256, and requests per minute if wanted");
                }
                add(words[0], words[1], words.length == 3 ? Integer.parseInt(words[2]) : usual);
            }
        } catch (IOException e) {
            throw new IllegalArgumentException("the file of keys cannot be read: " + file, e);
        }
    }

    private static byte[] sha256(String key) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(key.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
