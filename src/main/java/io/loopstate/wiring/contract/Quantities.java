package io.loopstate.wiring.contract;

import io.loopstate.web.mapping.Contract;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.Components;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.media.Schema.SchemaType;

/** One schema for each kind of quantity, as an object for bodies and as text for queries. */
final class Quantities {
    private static final String SCHEMAS = "#/components/schemas/";
    private static final String TEXT = "Text";

    private Quantities() {}

    /** The kinds that some schema refers to. */
    static void addTo(Components components) {
        Set<String> used = components.getSchemas().values().stream()
                .filter(schema -> schema.getProperties() != null)
                .flatMap(schema -> schema.getProperties().values().stream())
                .map(Schema::getRef)
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
        Contract.kinds().stream()
                .filter(kind -> used.contains(SCHEMAS + kind.schema()))
                .forEach(kind -> components.addSchema(kind.schema(), quantity(description(kind), kind.units())));
        components.addSchema(
                "AnyQuantity",
                quantity("A number of any kind with its unit; a plain number has the unit ratio.", Contract.units()));
    }

    /** Whether a schema is that of a kind of quantity. */
    static boolean isKind(String schema) {
        return Contract.kinds().stream().anyMatch(kind -> kind.schema().equals(schema));
    }

    /** The text form of a kind's schema, added when first asked for. */
    static Schema text(Components components, String schema) {
        if (!components.getSchemas().containsKey(schema + TEXT)) {
            Contract.kinds().stream()
                    .filter(kind -> kind.schema().equals(schema))
                    .forEach(kind -> components.addSchema(schema + TEXT, text(kind)));
        }
        return OASFactory.createSchema().ref(SCHEMAS + schema + TEXT);
    }

    private static String description(Contract.Kind kind) {
        String replies = kind.siReply().equals(kind.ipReply())
                ? "Replies: " + kind.siReply() + "."
                : "Replies: " + kind.siReply() + " in SI, " + kind.ipReply() + " in IP.";
        return words(kind) + ", a number with its unit. " + replies + " A request may write it as text instead, \""
                + example(kind) + "\".";
    }

    private static Schema text(Contract.Kind kind) {
        return OASFactory.createSchema()
                .addType(SchemaType.STRING)
                .description(
                        words(kind) + " as text: number, space, unit. Units: " + String.join(", ", kind.units()) + ".")
                .addExample(example(kind));
    }

    private static Schema quantity(String description, List<String> units) {
        return OASFactory.createSchema()
                .addType(SchemaType.OBJECT)
                .description(description)
                .required(List.of("value", "unit"))
                .addProperty(
                        "value",
                        OASFactory.createSchema().addType(SchemaType.NUMBER).format("double"))
                .addProperty(
                        "unit",
                        OASFactory.createSchema().addType(SchemaType.STRING).enumeration(List.copyOf(units)))
                .additionalPropertiesBoolean(false);
    }

    private static String words(Contract.Kind kind) {
        return kind.words().substring(0, 1).toUpperCase(Locale.ROOT)
                + kind.words().substring(1);
    }

    private static String example(Contract.Kind kind) {
        return "41.5 " + kind.ipReply();
    }
}
