package io.loopstate.web.mapping;

import io.loopstate.units.Atmosphere;
import io.loopstate.units.DecimalMark;
import io.loopstate.web.dto.ChartName;
import io.loopstate.web.dto.ChartOptions;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which chart a query asks for.
 *
 * @param name the one asked for, or the usual one
 * @param others the parameters of the calculation
 * @param faults of the choice
 */
record ChartChoice(ChartName name, Map<String, List<String>> others, Faults faults) {
    private static final Shape SHAPE = Shape.of(ChartOptions.class);

    /** Reads the parameter where the picture has several charts; else it stays among the others, which are refused. */
    static ChartChoice of(Picture<?, ?, ?> picture, Map<String, List<String>> parameters) {
        Faults faults = new Faults();
        Map<String, List<String>> others = new HashMap<>(parameters);
        ChartName name = ChartName.PRESSURE_ENTHALPY;
        for (Shape.Member member : SHAPE.leaves().values()) {
            if (picture.choice() && parameters.containsKey(member.path())) {
                QuerySource own = new QuerySource(Map.of(member.path(), others.remove(member.path())));
                own.open(SHAPE, faults);
                Object value = new ValueReader(own, faults, DecimalMark.POINT, Atmosphere.standard()).read(member);
                name = value == null ? name : (ChartName) value;
            }
        }
        return new ChartChoice(name, others, faults);
    }
}
