package io.loopstate.wiring.telemetry;

import java.util.HexFormat;
import java.util.concurrent.ThreadLocalRandom;
import java.util.regex.Pattern;

/** Ids of requests: the client's own, where it is fit for a log, else a random one. */
final class RequestId {
    static final String HEADER = "X-Request-Id";

    private static final Pattern SANE = Pattern.compile("[A-Za-z0-9._:-]{1,64}");
    private static final HexFormat HEX = HexFormat.of();

    private RequestId() {}

    static boolean isSane(String sent) {
        return sent != null && SANE.matcher(sent).matches();
    }

    /** 128 bits; nobody has to be unable to guess them. */
    static String random() {
        ThreadLocalRandom random = ThreadLocalRandom.current();
        return HEX.toHexDigits(random.nextLong()) + HEX.toHexDigits(random.nextLong());
    }
}
