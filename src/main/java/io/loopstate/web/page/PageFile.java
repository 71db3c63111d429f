package io.loopstate.web.page;

import io.loopstate.web.template.Templates;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;

/** A file that belongs to the front page. */
public enum PageFile {
    /** How it looks. */
    STYLE("front.css", "text/css;charset=utf-8"),
    /** What it does beyond a form. */
    SCRIPT("front.js", "text/javascript;charset=utf-8"),
    /** The mark in a browser's tab. */
    MARK("mark.svg", "image/svg+xml;charset=utf-8");

    private static final int TAG_BYTES = 9;

    private final String file;
    private final String mediaType;
    private final String text;
    private final String tag;

    PageFile(String file, String mediaType) {
        this.file = file;
        this.mediaType = mediaType;
        text = Templates.text("/pages/" + file);
        tag = tag(text);
    }

    /** The file of a name; empty where there is none. */
    public static Optional<PageFile> named(String name) {
        return Arrays.stream(values()).filter(page -> page.file.equals(name)).findFirst();
    }

    /** What it is. */
    public String mediaType() {
        return mediaType;
    }

    /** What stands in it. */
    public String text() {
        return text;
    }

    /** A strong entity tag, without its quotes. */
    public String tag() {
        return tag;
    }

    /** Path and query that change with the contents, so that a cache never has an old file for a new page. */
    String address() {
        return "/front/" + file + "?_=" + tag;
    }

    private static String tag(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return Base64.getUrlEncoder().withoutPadding().encodeToString(Arrays.copyOf(digest, TAG_BYTES));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
