package io.loopstate.units;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.regex.Pattern;

/** The units of a reply: a set, and other units for single kinds. Immutable. */
public final class UnitSelection {
    private static final int MAX_LENGTH = 1000;
    private static final Pattern BETWEEN = Pattern.compile("[,;]");
    private static final UnitSelection SI = new UnitSelection(UnitSystem.SI, new EnumMap<>(QuantityKind.class));
    private static final UnitSelection IP = new UnitSelection(UnitSystem.IP, new EnumMap<>(QuantityKind.class));

    private final UnitSystem system;
    private final EnumMap<QuantityKind, UnitToken> overrides;
    /** Of every kind, in its order: a reply asks a hundred times. */
    private final UnitToken[] units;

    private UnitSelection(UnitSystem system, EnumMap<QuantityKind, UnitToken> overrides) {
        this.system = system;
        this.overrides = overrides;
        this.units = Arrays.stream(QuantityKind.values())
                .map(kind -> overrides.getOrDefault(kind, kind.replyUnit(system)))
                .toArray(UnitToken[]::new);
    }

    /** A set without overrides. */
    public static UnitSelection of(UnitSystem system) {
        return system == UnitSystem.IP ? IP : SI;
    }

    /**
     * Reads a set, overrides, or a set followed by overrides: {@code IP}, {@code IP,pressure=psig,power=ton},
     * {@code temperature=degF}. Without a set it is SI; empty is SI.
     *
     * @throws UnitFault what is wrong with it
     */
    public static UnitSelection parse(String text) {
        String all = text == null ? "" : text.strip();
        if (all.length() > MAX_LENGTH) {
            throw malformed(all, "The selection of units has " + all.length() + " characters.");
        }
        UnitSelection selection = SI;
        if (all.isEmpty()) {
            return selection;
        }
        boolean first = true;
        for (String part : parts(all)) {
            int equals = part.indexOf('=');
            if (equals >= 0) {
                selection = selection.with(
                        part.substring(0, equals).strip(),
                        part.substring(equals + 1).strip());
            } else if (first) {
                selection = of(UnitSystem.parse(part));
            } else {
                throw malformed(part, "\"" + UnitFault.clip(part) + "\" does not name a kind and a unit.");
            }
            first = false;
        }
        return selection;
    }

    /** Mostly one. */
    private static String[] parts(String all) {
        return all.indexOf(',') < 0 && all.indexOf(';') < 0 ? new String[] {all} : BETWEEN.split(all, -1);
    }

    private static UnitFault malformed(String got, String message) {
        return UnitFault.of(
                UnitFaultCode.SELECTION_MALFORMED,
                message,
                got,
                "SI or IP, then kind=unit pairs with commas between",
                "Write for example IP,pressure=psig.");
    }

    /** This selection with another unit for one kind. */
    public UnitSelection with(QuantityKind kind, UnitToken unit) {
        if (!unit.measures(kind)) {
            // Throws the fault that names what is expected.
            UnitLookup.find(kind, unit.name(), () -> kind.key() + "=" + unit);
        }
        EnumMap<QuantityKind, UnitToken> extended = new EnumMap<>(overrides);
        extended.put(kind, unit);
        return new UnitSelection(system, extended);
    }

    /**
     * This selection with another unit for one kind, both as clients write them.
     *
     * @throws UnitFault an unknown kind, or a unit that is not one of its units
     */
    public UnitSelection with(String kindKey, String unitText) {
        QuantityKind kind = QuantityKind.ofKey(kindKey);
        String got = kindKey + "=" + unitText;
        if (unitText.isBlank() || unitText.length() > QuantityParser.MAX_LENGTH) {
            throw UnitFault.of(
                    UnitFaultCode.UNIT_MISSING,
                    "The unit of a " + kind.words() + " is missing or too long.",
                    got,
                    UnitLookup.list(kind),
                    "Write for example " + kind.key() + "=" + kind.replyUnit(system) + ".");
        }
        return with(kind, UnitLookup.find(kind, Spelling.normalize(unitText), () -> got));
    }

    /** The set. */
    public UnitSystem system() {
        return system;
    }

    /** The kinds whose unit differs from the set. */
    public Map<QuantityKind, UnitToken> overrides() {
        return Collections.unmodifiableMap(overrides);
    }

    /** The unit in which replies give this kind. */
    public UnitToken unitFor(QuantityKind kind) {
        return units[kind.ordinal()];
    }

    /** An engine's SI value in the unit of this selection. */
    public Reading fromSi(QuantityKind kind, double si, Atmosphere atmosphere) {
        return Reading.ofSi(kind, si, unitFor(kind), atmosphere);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof UnitSelection that && system == that.system && overrides.equals(that.overrides);
    }

    @Override
    public int hashCode() {
        return 31 * system.hashCode() + overrides.hashCode();
    }

    /** The form that {@link #parse} reads. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(system.name());
        overrides.forEach(
                (kind, unit) -> text.append(',').append(kind.key()).append('=').append(unit));
        return text.toString();
    }
}
