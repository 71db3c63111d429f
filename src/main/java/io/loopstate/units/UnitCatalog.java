package io.loopstate.units;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All units, by kind and by name. Built once from the resource when the first unit is asked for. */
public final class UnitCatalog {
    private static final Map<String, UnitToken> TOKENS = new LinkedHashMap<>();
    private static final Map<QuantityKind, List<UnitToken>> KINDS = new EnumMap<>(QuantityKind.class);
    private static final UnitNames NAMES;

    /**
     * What there is to say of one kind.
     *
     * @param kind the kind
     * @param siReply unit of replies in {@link UnitSystem#SI}
     * @param ipReply unit of replies in {@link UnitSystem#IP}
     * @param units all its units, in the order of the list
     */
    public record Entry(QuantityKind kind, UnitToken siReply, UnitToken ipReply, List<UnitToken> units) {}

    static {
        for (QuantityKind kind : QuantityKind.values()) {
            KINDS.put(kind, new ArrayList<>());
        }
        UnitTable table = UnitTable.load();
        NAMES = new UnitNames(table.refusals());
        for (UnitTable.Row row : table.rows()) {
            add(row);
        }
        for (Map.Entry<QuantityKind, List<UnitToken>> units : KINDS.entrySet()) {
            units.setValue(List.copyOf(units.getValue()));
        }
    }

    private UnitCatalog() {}

    private static void add(UnitTable.Row row) {
        boolean pressure = row.kinds().contains(QuantityKind.PRESSURE);
        List<UnitToken> family = new ArrayList<>();
        for (String name : row.tokens()) {
            PressureReference reference = pressure ? PressureReference.ofToken(name) : PressureReference.NONE;
            List<QuantityKind> kinds =
                    reference == PressureReference.DIFFERENCE ? List.of(QuantityKind.PRESSURE_DIFFERENCE) : row.kinds();
            UnitToken token = new UnitToken(name, kinds, reference, row);
            if (TOKENS.put(name, token) != null) {
                throw new IllegalStateException("unit listed twice: " + name);
            }
            for (QuantityKind kind : kinds) {
                KINDS.get(kind).add(token);
            }
            family.add(token);
        }
        NAMES.add(family, row);
    }

    static UnitNames names() {
        return NAMES;
    }

    static UnitToken token(String name) {
        UnitToken token = name == null ? null : TOKENS.get(name);
        if (token == null) {
            String got = name == null ? "" : name;
            throw UnitFault.of(
                    UnitFaultCode.UNKNOWN_UNIT,
                    "There is no unit named \"" + UnitFault.clip(got) + "\".",
                    got,
                    "",
                    Nearest.question(Nearest.to(UnitFault.clip(got), TOKENS.keySet())));
        }
        return token;
    }

    /** The unit with exactly this canonical name, if there is one. */
    public static Optional<UnitToken> named(String name) {
        return Optional.ofNullable(TOKENS.get(name));
    }

    /** Every unit, in the order of the list. */
    public static List<UnitToken> all() {
        return List.copyOf(TOKENS.values());
    }

    /** The units of a kind, in the order of the list. */
    public static List<UnitToken> of(QuantityKind kind) {
        return KINDS.get(kind);
    }

    /** The whole catalog, a line for each kind in the order of {@link QuantityKind}. */
    public static List<Entry> entries() {
        return Arrays.stream(QuantityKind.values())
                .map(kind ->
                        new Entry(kind, kind.replyUnit(UnitSystem.SI), kind.replyUnit(UnitSystem.IP), KINDS.get(kind)))
                .toList();
    }
}
