package io.loopstate.wiring;

import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.NumberOutput;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/** A quantity as JSON, which a generator takes into its buffer in one step. All of it is ASCII that needs no escape. */
final class QuantityText implements SerializableString {
    private static final byte[] VALUE = "{\"value\":".getBytes(StandardCharsets.US_ASCII);

    private final String number;
    private final byte[] unit;

    /** A finite number with {@link #unit what stands behind it}. */
    QuantityText(double value, byte[] unit) {
        this.number = NumberOutput.toString(value, true);
        this.unit = unit;
    }

    /** What stands behind the number of a quantity in a unit. */
    static byte[] unit(String name) {
        return (",\"unit\":\"" + name + "\"}").getBytes(StandardCharsets.US_ASCII);
    }

    @Override
    @SuppressWarnings("deprecation") // The one way from text to bytes of an array at hand; digits are ASCII.
    public int appendUnquotedUTF8(byte[] buffer, int offset) {
        int length = charLength();
        if (offset + length > buffer.length) {
            return -1;
        }
        System.arraycopy(VALUE, 0, buffer, offset, VALUE.length);
        number.getBytes(0, number.length(), buffer, offset + VALUE.length);
        System.arraycopy(unit, 0, buffer, offset + length - unit.length, unit.length);
        return length;
    }

    @Override
    public byte[] asUnquotedUTF8() {
        byte[] whole = new byte[charLength()];
        appendUnquotedUTF8(whole, 0);
        return whole;
    }

    @Override
    public int charLength() {
        return VALUE.length + number.length() + unit.length;
    }

    @Override
    public String getValue() {
        return new String(asUnquotedUTF8(), StandardCharsets.US_ASCII);
    }

    @Override
    public char[] asQuotedChars() {
        return getValue().toCharArray();
    }

    @Override
    public byte[] asQuotedUTF8() {
        return asUnquotedUTF8();
    }

    @Override
    public int appendQuotedUTF8(byte[] buffer, int offset) {
        return appendUnquotedUTF8(buffer, offset);
    }

    @Override
    public int appendQuoted(char[] buffer, int offset) {
        return appendUnquoted(buffer, offset);
    }

    @Override
    public int appendUnquoted(char[] buffer, int offset) {
        char[] whole = asQuotedChars();
        if (offset + whole.length > buffer.length) {
            return -1;
        }
        System.arraycopy(whole, 0, buffer, offset, whole.length);
        return whole.length;
    }

    @Override
    public int writeQuotedUTF8(OutputStream out) throws IOException {
        return writeUnquotedUTF8(out);
    }

    @Override
    public int writeUnquotedUTF8(OutputStream out) throws IOException {
        out.write(asUnquotedUTF8());
        return charLength();
    }

    @Override
    public int putQuotedUTF8(ByteBuffer buffer) {
        return putUnquotedUTF8(buffer);
    }

    @Override
    public int putUnquotedUTF8(ByteBuffer out) {
        if (charLength() > out.remaining()) {
            return -1;
        }
        out.put(asUnquotedUTF8());
        return charLength();
    }
}
