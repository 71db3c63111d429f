package io.loopstate.web.problem;

/** Shortens what a client sent, so that a reply never grows with the request. */
final class Shorten {
    private static final int LIMIT = 120;

    private Shorten() {}

    static String text(String sent) {
        if (sent == null || sent.length() <= LIMIT) {
            return sent;
        }
        int end = Character.isHighSurrogate(sent.charAt(LIMIT - 1)) ? LIMIT - 1 : LIMIT;
        return sent.substring(0, end) + "…";
    }
}
