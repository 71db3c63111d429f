package io.loopstate.web.chart;

/** Text that may stand in XML once it is escaped. */
final class Text {
    private Text() {}

    /** Without the characters that XML 1.0 cannot hold, each replaced by a replacement character. */
    static String clean(String text) {
        int[] points =
                text.codePoints().map(point -> allowed(point) ? point : 0xFFFD).toArray();
        return new String(points, 0, points.length);
    }

    /** XML 1.0, production 2. */
    private static boolean allowed(int point) {
        return point == '\t'
                || point == '\n'
                || point == '\r'
                || point >= 0x20 && point <= 0xD7FF
                || point >= 0xE000 && point <= 0xFFFD
                || point >= 0x10000;
    }
}
