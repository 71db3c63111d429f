package io.loopstate.web.mapping;

import io.loopstate.units.QuantityKind;
import io.loopstate.units.QuantityParser;
import io.loopstate.units.UnitFault;
import io.loopstate.web.dto.Quantity;
import io.loopstate.web.problem.Fault;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A column of a table that holds an input: its name in a query, with the unit of its bare numbers behind an underscore if wanted,
 * {@code suctionPressure_psig}.
 *
 * @param name in a query
 * @param unit of bare numbers
 */
public record InputColumn(String name, Optional<String> unit) {
    private static final Pattern BARE = Pattern.compile("[-+]?[0-9.,]+([eE][-+]?[0-9]+)?");

    /** The input that a heading names; empty where it names none. */
    public static Optional<InputColumn> of(Operation<?, ?, ?, ?> operation, String heading) {
        if (member(operation, heading).isPresent()) {
            return Optional.of(new InputColumn(heading, Optional.empty()));
        }
        int underscore = heading.indexOf('_');
        String name = heading.substring(0, Math.max(0, underscore));
        return member(operation, name)
                .map(member -> new InputColumn(name, Optional.of(heading.substring(underscore + 1))));
    }

    /** Names of the inputs of a calculation. */
    public static List<String> names(Operation<?, ?, ?, ?> operation) {
        return Shape.of(operation.request()).leaves().keySet().stream()
                .map(Paths::flat)
                .toList();
    }

    /** What is wrong with the unit of the heading. */
    public Optional<Fault> fault(Operation<?, ?, ?, ?> operation, String heading) {
        Shape.Member member = member(operation, name).orElseThrow();
        QuantityKind kind = member.type() == Double.class ? QuantityKind.RATIO : member.kind();
        if (unit.isEmpty()) {
            return Optional.empty();
        }
        Fault fault = Fault.parameter(heading, "unknown-unit", "The unit in this heading is none of this input.")
                .withGot(unit.get());
        if (kind == null || member.type() != Quantity.class && member.type() != Double.class) {
            return Optional.of(fault.withAllowed("no unit"));
        }
        try {
            QuantityParser.parse(kind, 1, unit.get());
            return Optional.empty();
        } catch (UnitFault wrong) {
            return Optional.of(fault.withAllowed(wrong.allowed()).withHint(wrong.hint()));
        }
    }

    /** A cell as a parameter of a query. */
    public String parameter(String cell) {
        return unit.isPresent() && BARE.matcher(cell).matches() ? cell + ' ' + unit.get() : cell;
    }

    private static Optional<Shape.Member> member(Operation<?, ?, ?, ?> operation, String name) {
        return Shape.of(operation.request()).leaves().values().stream()
                .filter(leaf -> Paths.flat(leaf.path()).equals(name))
                .findFirst();
    }
}
