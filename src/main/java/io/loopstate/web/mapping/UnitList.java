package io.loopstate.web.mapping;

import io.loopstate.units.PressureReference;
import io.loopstate.units.QuantityKind;
import io.loopstate.units.UnitCatalog;
import io.loopstate.units.UnitFault;
import io.loopstate.units.UnitToken;
import io.loopstate.web.dto.UnitItem;
import io.loopstate.web.dto.UnitKind;
import io.loopstate.web.dto.UnitsQuery;
import io.loopstate.web.dto.UnitsReply;
import io.loopstate.web.problem.ProblemException;
import java.util.List;
import java.util.Map;

/** The units of the contract. */
public final class UnitList {
    private final RequestReader reader;

    /** Reads queries with this reader. */
    public UnitList(RequestReader reader) {
        this.reader = reader;
    }

    /**
     * The kinds of quantity with their units, or the one asked for.
     *
     * @throws ProblemException with every fault of the query
     */
    public UnitsReply list(Map<String, List<String>> parameters) {
        QuerySource source = new QuerySource(parameters);
        Input<UnitsQuery> input = reader.read(UnitsQuery.class, source);
        input.refuseFaults();
        String key = input.request().kind();
        QuantityKind only = key == null ? null : kind(source, key);
        return new UnitsReply(UnitCatalog.entries().stream()
                .filter(entry -> only == null || entry.kind() == only)
                .map(UnitList::kind)
                .toList());
    }

    private static QuantityKind kind(QuerySource source, String key) {
        try {
            return QuantityKind.ofKey(key);
        } catch (UnitFault fault) {
            throw new ProblemException(
                    UnitProblems.kind(fault.code()),
                    UnitProblems.fault(source.value("kind").orElseThrow(), fault));
        }
    }

    private static UnitKind kind(UnitCatalog.Entry entry) {
        return new UnitKind(
                entry.kind().key(),
                entry.kind().words(),
                entry.kind().siUnit(),
                entry.siReply().name(),
                entry.ipReply().name(),
                entry.units().stream().map(UnitList::unit).toList());
    }

    private static UnitItem unit(UnitToken unit) {
        return new UnitItem(
                unit.name(),
                unit.words(),
                unit.symbol(),
                unit.reference() == PressureReference.NONE
                        ? null
                        : unit.reference().words(),
                unit.ucum().orElse(null),
                unit.qudt().orElse(null),
                unit.factor(),
                unit.offset() == 0 ? null : unit.offset(),
                unit.spellings(),
                unit.note().isEmpty() ? null : unit.note());
    }
}
