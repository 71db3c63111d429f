package io.loopstate.testing;

import java.util.Random;

/** Texts as they come from a hurried hand or a broken line. */
public final class Garble {
    private static final int LONGEST_LOSS = 20;
    private static final int LONGEST_ECHO = 15;

    private Garble() {}

    /** A text with one to three characters changed, lost, doubled or moved; strange ones are out of the pieces. */
    public static String of(String text, String pieces, Random random) {
        StringBuilder garbled = new StringBuilder(text);
        int changes = 1 + random.nextInt(3);
        for (int i = 0; i < changes && garbled.length() > 1; i++) {
            int at = random.nextInt(garbled.length());
            char piece = pieces.charAt(random.nextInt(pieces.length()));
            switch (random.nextInt(5)) {
                case 0 -> garbled.setCharAt(at, piece);
                case 1 -> garbled.deleteCharAt(at);
                case 2 -> garbled.insert(at, piece);
                case 3 -> garbled.delete(at, Math.min(garbled.length(), at + random.nextInt(LONGEST_LOSS)));
                default -> garbled.insert(at, garbled.substring(at, Math.min(garbled.length(), at + LONGEST_ECHO)));
            }
        }
        return garbled.toString();
    }
}
