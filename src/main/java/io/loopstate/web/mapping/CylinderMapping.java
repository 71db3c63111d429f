package io.loopstate.web.mapping;

import io.loopstate.engine.compression.ClosedCylinder;
import io.loopstate.engine.cycle.Transport;
import io.loopstate.units.QuantityKind;
import io.loopstate.units.UnitSystem;
import io.loopstate.units.UnitToken;
import io.loopstate.web.dto.CylinderFigures;
import io.loopstate.web.dto.CylinderIdealGas;
import io.loopstate.web.dto.CylinderPoint;
import io.loopstate.web.dto.CylinderReply;
import io.loopstate.web.dto.CylinderRequest;
import io.loopstate.web.dto.FluidPhase;
import java.util.List;
import java.util.Map;

/** A closed cylinder. */
public final class CylinderMapping {
    private static final int POINTS = 11;

    /** The calculation. */
    public static final Operation<CylinderRequest, ClosedCylinder.Spec, ClosedCylinder.Result, CylinderReply>
            OPERATION = new Operation<>(
                    CylinderRequest.class,
                    CylinderMapping::spec,
                    ClosedCylinder::calculate,
                    CylinderMapping::reply,
                    Map.of("final", List.of("end.volume", "end.pressure")));

    private CylinderMapping() {}

    /** The input of the engine. */
    static ClosedCylinder.Spec spec(Input<CylinderRequest> input) {
        input.exactlyOne("initial.pressure");
        input.exactlyOne("initial.temperature");
        input.exactlyOne("initial.volume");
        input.exactlyOne("end.volume", "end.pressure");
        CylinderRequest request = input.request();
        ClosedCylinder.Path path = request.path() == null
                ? null
                : ClosedCylinder.Path.valueOf(request.path().name());
        if (path == ClosedCylinder.Path.POLYTROPIC) {
            input.exactlyOne("polytropicIndex");
        } else if (path != null) {
            input.refuseMembers("only with a polytropic path", "polytropicIndex");
        }
        input.refuseFaults();
        return new ClosedCylinder.Spec(
                input.equilibrium(),
                input.si("initial.pressure").orElseThrow(),
                input.si("initial.temperature").orElseThrow(),
                input.si("initial.volume").orElseThrow(),
                input.si("end.volume"),
                input.si("end.pressure"),
                path,
                Si.optional(request.polytropicIndex()),
                request.points() == null ? POINTS : request.points(),
                input.atmosphere().pressure(),
                Guidances.of(input),
                input.explain());
    }

    private static CylinderReply reply(Input<CylinderRequest> input, ClosedCylinder.Result result, Trust trust) {
        Output out = input.output();
        return new CylinderReply(
                States.of(out, result.start(), Transport.none()),
                States.of(out, result.end(), Transport.none()),
                figures(input, result),
                idealGas(out, result.ideal()),
                result.points().stream().map(point -> point(out, point)).toList(),
                trust.working(input, result.steps()),
                trust.basis(input),
                trust.warnings(input, result.findings()),
                trust.cautions(input));
    }

    /** Pressures as a gauge reads them, whatever the reply shows else. */
    private static Output gauge(Output out) {
        UnitToken unit = UnitToken.of(out.system() == UnitSystem.SI ? "kPa_g" : "psig");
        return new Output(out.units().with(QuantityKind.PRESSURE, unit), out.atmosphere());
    }

    private static CylinderFigures figures(Input<CylinderRequest> input, ClosedCylinder.Result result) {
        Output out = input.output();
        ClosedCylinder.Figures figures = result.figures();
        double air = input.atmosphere().pressure();
        double start = result.start().pressure() - air;
        return new CylinderFigures(
                out.of(QuantityKind.MASS, figures.mass()),
                out.of(QuantityKind.VOLUME, figures.startVolume()),
                out.of(QuantityKind.VOLUME, figures.endVolume()),
                figures.pressureRatio(),
                Math.abs(start) < 1e-6 * air ? null : (result.end().pressure() - air) / start,
                figures.volumeRatio(),
                out.of(QuantityKind.ENERGY, figures.work()),
                out.of(QuantityKind.ENERGY, figures.heat()),
                out.of(QuantityKind.ENERGY, figures.energyChange()),
                out.of(QuantityKind.ENERGY, figures.workOfAtmosphere()),
                out.of(QuantityKind.ENERGY, figures.workOnRod()),
                figures.index());
    }

    private static CylinderIdealGas idealGas(Output out, ClosedCylinder.Ideal ideal) {
        return new CylinderIdealGas(
                ProcessMapping.IDEAL_GAS,
                ideal.index(),
                out.absolute().of(QuantityKind.PRESSURE, ideal.pressure()),
                gauge(out).of(QuantityKind.PRESSURE, ideal.pressure()),
                out.of(QuantityKind.TEMPERATURE, ideal.temperature()),
                out.of(QuantityKind.ENERGY, ideal.work()));
    }

    private static CylinderPoint point(Output out, ClosedCylinder.PathPoint point) {
        return new CylinderPoint(
                out.of(QuantityKind.VOLUME, point.volume()),
                out.absolute().of(QuantityKind.PRESSURE, point.state().pressure()),
                gauge(out).of(QuantityKind.PRESSURE, point.state().pressure()),
                out.of(QuantityKind.TEMPERATURE, point.state().temperature()),
                out.of(QuantityKind.SPECIFIC_VOLUME, point.state().specificVolume()),
                FluidPhase.valueOf(point.state().phase().name()));
    }
}
