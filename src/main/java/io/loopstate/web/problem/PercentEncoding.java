package io.loopstate.web.problem;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Checks the escapes of a URL before anything decodes it: a lone percent sign, or bytes that are not UTF-8 (a degree
 * sign sent as Latin-1), would otherwise become a wrong value in silence.
 *
 * <p>A request target arrives with one character per byte.
 */
public final class PercentEncoding {
    private static final String NOT_IN_URL = " \"<>\\^`{|}";

    private PercentEncoding() {}

    /** The problem with a request target (path and query, as sent), if there is one. */
    public static Optional<Problem> check(String target) {
        if (plain(target)) {
            return Optional.empty();
        }
        int mark = target.indexOf('?');
        List<Fault> faults = new ArrayList<>();
        fault(mark < 0 ? target : target.substring(0, mark), null).ifPresent(faults::add);
        if (mark >= 0) {
            for (String pair : target.substring(mark + 1).split("&")) {
                String name = pair.split("=", 2)[0];
                fault(pair, name.isEmpty() ? null : name).ifPresent(faults::add);
            }
        }
        return faults.isEmpty() ? Optional.empty() : Optional.of(Problem.of(ProblemKind.INVALID_REQUEST, faults));
    }

    /** The request target with bytes escaped that should have been: a command line sends a degree sign as it is. */
    public static String escapeRaw(String target) {
        if (allAllowed(target)) {
            return target;
        }
        StringBuilder escaped = new StringBuilder(target.length() + 16);
        target.chars().forEach(c -> {
            if (allowed(c)) {
                escaped.append((char) c);
            } else {
                escaped.append(String.format(Locale.ROOT, "%%%02X", c));
            }
        });
        return escaped.toString();
    }

    /** Whether all of it is ASCII, escapes too, as in nearly every request. */
    private static boolean plain(String target) {
        for (int i = 0; i < target.length(); i++) {
            int octet = target.charAt(i);
            if (octet == '%') {
                octet = escaped(target, i);
                i += 2;
            }
            if (octet < 0 || octet >= 0x7F) {
                return false;
            }
        }
        return true;
    }

    private static boolean allAllowed(String target) {
        for (int i = 0; i < target.length(); i++) {
            if (!allowed(target.charAt(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean allowed(int c) {
        return c > ' ' && c < 0x7F && NOT_IN_URL.indexOf(c) < 0;
    }

    private static Optional<Fault> fault(String text, String parameter) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(text.length());
        for (int i = 0; i < text.length(); i++) {
            int octet = text.charAt(i);
            if (octet == '%') {
                octet = escaped(text, i);
                if (octet < 0) {
                    return Optional.of(invalid(
                            text,
                            parameter,
                            "A percent sign in a URL has to be followed by two hexadecimal digits.",
                            "Write % as %25, or pct for percent."));
                }
                i += 2;
            }
            bytes.write(octet);
        }
        return utf8(bytes.toByteArray())
                ? Optional.empty()
                : Optional.of(invalid(
                        text,
                        parameter,
                        "The bytes of this part of the URL are not UTF-8.",
                        "Write ° as %C2%B0, or use the unit degF or degC."));
    }

    /** The octet of an escape; negative where it is none. */
    private static int escaped(String text, int percent) {
        boolean complete = percent + 2 < text.length();
        int high = complete ? Character.digit(text.charAt(percent + 1), 16) : -1;
        int low = complete ? Character.digit(text.charAt(percent + 2), 16) : -1;
        return high < 0 || low < 0 ? -1 : high << 4 | low;
    }

    private static Fault invalid(String text, String parameter, String detail, String hint) {
        Fault fault = parameter == null
                ? Fault.request("invalid-escape", detail)
                : Fault.parameter(parameter, "invalid-escape", detail);
        return fault.withGot(text).withHint(hint);
    }

    private static boolean utf8(byte[] bytes) {
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
            return true;
        } catch (CharacterCodingException e) {
            return false;
        }
    }
}
