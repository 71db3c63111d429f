package io.loopstate.wiring;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import io.loopstate.units.UnitCatalog;
import io.loopstate.units.UnitToken;
import io.loopstate.web.dto.Quantity;
import java.io.IOException;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Writes quantities as they are declared, but without reflection and with names encoded once: most of a reply is quantities.
 */
final class QuantityWriter extends StdSerializer<Quantity> {
    private static final long serialVersionUID = 1L;
    private static final SerializableString VALUE = new SerializedString("value");
    private static final SerializableString UNIT = new SerializedString("unit");
    private static final Map<String, SerializableString> UNITS = UnitCatalog.all().stream()
            .collect(Collectors.toUnmodifiableMap(UnitToken::name, unit -> new SerializedString(unit.name())));

    QuantityWriter() {
        super(Quantity.class);
    }

    @Override
    public void serialize(Quantity quantity, JsonGenerator out, SerializerProvider provider) throws IOException {
        out.writeStartObject();
        out.writeFieldName(VALUE);
        JsonSettings.writeFinite(quantity.value(), out);
        SerializableString unit = UNITS.get(quantity.unit());
        out.writeFieldName(UNIT);
        if (unit == null) {
            out.writeString(quantity.unit());
        } else {
            out.writeString(unit);
        }
        out.writeEndObject();
    }
}
