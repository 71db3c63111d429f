package io.loopstate.wiring;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.json.UTF8JsonGenerator;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import io.loopstate.units.UnitCatalog;
import io.loopstate.units.UnitToken;
import io.loopstate.web.dto.Quantity;
import java.io.IOException;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Writes quantities as they are declared, but as one piece of text where bytes are written: most of a reply is quantities.
 */
final class QuantityWriter extends StdSerializer<Quantity> {
    private static final long serialVersionUID = 1L;

    /** What stands behind the number. */
    private static final Map<String, byte[]> UNITS = UnitCatalog.all().stream()
            .map(UnitToken::name)
            .collect(Collectors.toUnmodifiableMap(name -> name, name -> QuantityText.unit(name)));

    QuantityWriter() {
        super(Quantity.class);
    }

    @Override
    public void serialize(Quantity quantity, JsonGenerator out, SerializerProvider provider) throws IOException {
        byte[] unit = UNITS.get(quantity.unit());
        if (unit != null && out instanceof UTF8JsonGenerator) {
            out.writeRawValue(new QuantityText(JsonSettings.finite(quantity.value(), out), unit));
            return;
        }
        out.writeStartObject();
        out.writeFieldName("value");
        JsonSettings.writeFinite(quantity.value(), out);
        out.writeStringField("unit", quantity.unit());
        out.writeEndObject();
    }
}
