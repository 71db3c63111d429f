package io.loopstate.web.mapping;

import io.loopstate.units.QuantityKind;
import io.loopstate.units.UnitCatalog;
import io.loopstate.units.UnitToken;
import io.loopstate.web.dto.Options;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What the contract says of requests and quantities, from the same declarations that requests are read by. */
public final class Contract {
    private static final Map<String, Class<?>> REQUESTS = Operations.all().stream()
            .map(Operation::request)
            .collect(Collectors.toUnmodifiableMap(Class::getSimpleName, Function.identity()));
    /** Requests and the records within them by the names of their schemas. */
    private static final Map<String, Class<?>> SCHEMAS = schemas();

    /**
     * A kind of quantity.
     *
     * @param schema name of its schema
     * @param words name in words
     * @param units its units, in the order of the catalogue
     * @param siReply unit of replies in SI
     * @param ipReply unit of replies in IP
     */
    public record Kind(String schema, String words, List<String> units, String siReply, String ipReply) {}

    private Contract() {}

    /** Names of the members of a request, or of a record within one, in their order; empty for any other schema. */
    public static List<String> members(String schema) {
        return SCHEMAS.containsKey(schema)
                ? List.copyOf(Shape.of(SCHEMAS.get(schema)).names().keySet())
                : List.of();
    }

    private static Map<String, Class<?>> schemas() {
        Map<String, Class<?>> found = new HashMap<>();
        REQUESTS.values().forEach(request -> addSchemas(request, found));
        return Map.copyOf(found);
    }

    private static void addSchemas(Class<?> record, Map<String, Class<?>> found) {
        Schema schema = record.getAnnotation(Schema.class);
        found.put(schema == null || schema.name().isEmpty() ? record.getSimpleName() : schema.name(), record);
        for (Shape.Member member : Shape.of(record).members()) {
            if (member.nested() != null) {
                addSchemas(member.type(), found);
            }
        }
    }

    /** Names of the parameters of a request's query; empty for any other schema. */
    public static List<String> parameters(String schema) {
        return REQUESTS.containsKey(schema)
                ? Shape.of(REQUESTS.get(schema)).leaves().keySet().stream()
                        .map(Paths::flat)
                        .toList()
                : List.of();
    }

    /** Names of the members that may stand in the query of a POST. */
    public static List<String> options() {
        return List.copyOf(Shape.of(Options.class).names().keySet());
    }

    /** The name of a nested member in a query. */
    public static String flat(String owner, String member) {
        return Paths.flat(Paths.child(owner, member));
    }

    /** Every kind of quantity. */
    public static List<Kind> kinds() {
        return UnitCatalog.entries().stream()
                .map(entry -> new Kind(
                        schema(entry.kind()),
                        entry.kind().words(),
                        names(entry.units()),
                        entry.siReply().name(),
                        entry.ipReply().name()))
                .toList();
    }

    /** Every unit of every kind. */
    public static List<String> units() {
        return names(UnitCatalog.all());
    }

    private static List<String> names(List<UnitToken> units) {
        return units.stream().map(UnitToken::name).toList();
    }

    /** {@code massFlow} is {@code MassFlow} among the schemas. */
    static String schema(QuantityKind kind) {
        return kind.key().substring(0, 1).toUpperCase(Locale.ROOT) + kind.key().substring(1);
    }
}
