package io.loopstate.units;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** From the text of a unit to the unit of the kind that is expected, or to the fault that explains why not. */
final class UnitLookup {
    private UnitLookup() {}

    /**
     * Finds a unit of a kind.
     *
     * @param unitText normalized, not empty
     * @param got the whole quantity as given, for the fault only
     */
    static UnitToken find(QuantityKind kind, String unitText, Supplier<String> got) {
        Optional<String> refusal = UnitCatalog.names().refusal(unitText);
        if (refusal.isPresent()) {
            throw UnitFault.of(
                    UnitFaultCode.AMBIGUOUS_UNIT,
                    "The unit \"" + UnitFault.clip(unitText) + "\" is not taken.",
                    got.get(),
                    list(kind),
                    capitalized(refusal.get()) + ".");
        }
        UnitNames.Match match =
                UnitCatalog.names().find(unitText).orElseThrow(() -> unknown(kind, unitText, got.get()));
        if (match.bare() && kind == QuantityKind.PRESSURE) {
            throw referenceMissing(match.units(), unitText, got.get());
        }
        for (UnitToken unit : match.units()) {
            if (unit.measures(kind)) {
                return unit;
            }
        }
        throw anotherKind(kind, match.units(), unitText, got.get());
    }

    /** The names of a kind's units. */
    static String list(QuantityKind kind) {
        return String.join(", ", names(kind.units()));
    }

    private static List<String> names(List<UnitToken> units) {
        return units.stream().map(UnitToken::name).toList();
    }

    private static UnitFault referenceMissing(List<UnitToken> family, String unitText, String got) {
        List<String> choices = new ArrayList<>();
        for (UnitToken unit : family) {
            switch (unit.reference()) {
                case GAUGE -> choices.add(unit.name() + " for a gauge reading");
                case ABSOLUTE -> choices.add(unit.name() + " for an absolute pressure");
                case VACUUM -> choices.add(unit.name() + " for a vacuum below the atmosphere");
                case DIFFERENCE, NONE -> {}
            }
        }
        boolean gauge = family.stream().anyMatch(unit -> unit.reference() == PressureReference.GAUGE);
        if (!gauge) {
            choices.add("another unit such as psig or bar_g for a gauge reading");
        }
        List<String> allowed = family.stream()
                .filter(unit -> unit.measures(QuantityKind.PRESSURE))
                .map(UnitToken::name)
                .toList();
        return UnitFault.of(
                UnitFaultCode.GAUGE_OR_ABSOLUTE_MISSING,
                "\"" + UnitFault.clip(unitText) + "\" does not say whether the pressure is gauge or absolute.",
                got,
                String.join(", ", allowed),
                "Write " + Nearest.either(choices) + ".");
    }

    private static UnitFault anotherKind(QuantityKind kind, List<UnitToken> units, String unitText, String got) {
        UnitToken unit = units.get(0);
        List<String> siblings = isPointAndDifference(kind, unit.kind()) ? siblings(kind, unit) : List.of();
        String hint = siblings.isEmpty() ? "" : "For a " + kind.words() + " write " + Nearest.either(siblings) + ".";
        if (kind == QuantityKind.POWER && unit.name().equals("tonne")) {
            hint = "A tonne is 1000 kg; for a ton of refrigeration, 12000 Btu/h, write ton.";
        } else if (kind == QuantityKind.MASS && unit.name().equals("ton")) {
            hint = "ton is the ton of refrigeration, a heat rate; for 1000 kg write tonne.";
        }
        return UnitFault.of(
                UnitFaultCode.UNIT_OF_ANOTHER_KIND,
                "\"" + UnitFault.clip(unitText) + "\" is a unit of "
                        + unit.kind().words() + "; expected is a unit of " + kind.words() + ".",
                got,
                list(kind),
                hint);
    }

    /** For degF its difference delta_degF and the reverse, else all units of the kind with steps of the same size. */
    private static List<String> siblings(QuantityKind kind, UnitToken unit) {
        List<String> all = names(kind.units().stream().filter(unit::stepsLike).toList());
        return all.stream()
                .filter(name -> name.equals("delta_" + unit) || unit.name().equals("delta_" + name))
                .findFirst()
                .map(List::of)
                .orElse(all);
    }

    private static boolean isPointAndDifference(QuantityKind a, QuantityKind b) {
        return isPair(a, b, QuantityKind.TEMPERATURE, QuantityKind.TEMPERATURE_DIFFERENCE)
                || isPair(a, b, QuantityKind.PRESSURE, QuantityKind.PRESSURE_DIFFERENCE);
    }

    private static boolean isPair(QuantityKind a, QuantityKind b, QuantityKind point, QuantityKind difference) {
        return a == point && b == difference || a == difference && b == point;
    }

    private static UnitFault unknown(QuantityKind kind, String unitText, String got) {
        String hint = spellingHint(kind, unitText).orElseGet(() -> Nearest.question(suggestions(kind, unitText)));
        return UnitFault.of(
                UnitFaultCode.UNKNOWN_UNIT,
                "The unit \"" + UnitFault.clip(unitText) + "\" is not known.",
                got,
                list(kind),
                hint);
    }

    private static Optional<String> spellingHint(QuantityKind kind, String unitText) {
        if (unitText.indexOf('+') >= 0) {
            String repaired = unitText.replace("+", " ").strip();
            List<String> names = suggestions(kind, repaired);
            String instead = names.isEmpty() ? "" : "Write " + Nearest.either(names) + ". ";
            return Optional.of(instead + "In a query + stands for a space; a plus sign is written %2B.");
        }
        if (unitText.indexOf('\uFFFD') >= 0) {
            return Optional.of("A character was not UTF-8: in a query the degree sign is %C2%B0 (not %B0); "
                    + "degF and degC need no such sign.");
        }
        return Optional.empty();
    }

    /** Nearest canonical names: of the kind if there are any, else of all. */
    private static List<String> suggestions(QuantityKind kind, String unitText) {
        UnitNames.Match match = UnitCatalog.names().find(unitText).orElse(null);
        if (match != null) {
            return names(
                    match.units().stream().filter(unit -> unit.measures(kind)).toList());
        }
        String shortened = UnitFault.clip(unitText);
        Map<String, String> known = spellings(kind.units());
        List<String> own = Nearest.to(shortened, known.keySet());
        if (!own.isEmpty()) {
            return own.stream().map(known::get).distinct().toList();
        }
        return Nearest.to(shortened, names(UnitCatalog.all()));
    }

    private static Map<String, String> spellings(List<UnitToken> units) {
        Map<String, String> all = new LinkedHashMap<>();
        units.forEach(unit -> {
            all.put(unit.name(), unit.name());
            unit.spellings().forEach(spelling -> all.putIfAbsent(spelling, unit.name()));
        });
        return all;
    }

    private static String capitalized(String sentence) {
        return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }
}
