package io.loopstate.web.mapping;

import io.loopstate.engine.compression.DisplacementRating;
import io.loopstate.engine.compression.EnergyBalance;
import io.loopstate.engine.cycle.Constants;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.DisplacementReply;
import io.loopstate.web.dto.DisplacementRequest;
import io.loopstate.web.dto.EnergyBalanceFigures;
import io.loopstate.web.dto.HeadFigures;
import io.loopstate.web.dto.InsideFigures;
import io.loopstate.web.dto.MachineFigures;

/** A compressor of known displacement. */
public final class DisplacementMapping {
    /** The calculation. */
    public static final Operation<
                    DisplacementRequest, DisplacementRating.Spec, DisplacementRating.Result, DisplacementReply>
            OPERATION = new Operation<>(
                    DisplacementRequest.class,
                    DisplacementMapping::spec,
                    DisplacementRating::calculate,
                    DisplacementMapping::reply,
                    Machines.inputs(DisplacementRequest.class));

    private DisplacementMapping() {}

    private static DisplacementRating.Spec spec(Input<DisplacementRequest> input) {
        DisplacementRequest request = input.request();
        Ports.check(input);
        Machines.check(input, request.machine());
        Machines.checkCircuit(input);
        Machines.checkSupply(input);
        input.refuseFaults();
        return new DisplacementRating.Spec(
                input.equilibrium(),
                Ports.suction(input),
                Ports.discharge(input),
                Machines.machine(request.machine()),
                Machines.cylinders(request.machine()),
                Machines.speed(request.machine()),
                Machines.circuit(input, request.liquid(), request.evaporatorOutletTemperature()),
                Machines.supply(request.supply()),
                Si.optional(request.machine().minimumVolumeFlow()),
                Machines.assumptions(request.machine()),
                input.atmosphere().pressure(),
                Guidances.of(input),
                input.explain());
    }

    private static DisplacementReply reply(
            Input<DisplacementRequest> input, DisplacementRating.Result result, Trust trust) {
        Output out = input.output();
        return new DisplacementReply(
                result.points().stream().map(point -> States.of(out, point)).toList(),
                machine(out, result.figures()),
                result.inside().map(inside -> inside(out, inside)).orElse(null),
                result.head().map(head -> head(out, head)).orElse(null),
                result.liquid()
                        .map(liquid -> ProcessMapping.liquid(out, liquid))
                        .orElse(null),
                result.balance().map(balance -> balance(out, balance)).orElse(null),
                trust.working(input, result.steps()),
                trust.basis(input),
                trust.warnings(input, result.findings(), UnitSlips.COMPRESSION_PORTS),
                trust.cautions(input));
    }

    private static MachineFigures machine(Output out, DisplacementRating.Figures figures) {
        return new MachineFigures(
                figures.pressureRatio(),
                out.of(QuantityKind.VOLUME, figures.displacementPerRevolution()),
                out.of(QuantityKind.VOLUME_FLOW, figures.displacement()),
                figures.volumetricEfficiency(),
                out.of(QuantityKind.MASS_FLOW, figures.massFlow()),
                out.of(QuantityKind.VOLUME_FLOW, figures.suctionVolumeFlow()),
                out.of(QuantityKind.POWER, figures.isentropicPower()),
                out.of(QuantityKind.POWER, figures.indicatedPower()),
                out.of(QuantityKind.POWER, figures.frictionLoss()),
                out.of(QuantityKind.POWER, figures.shaftPower()),
                out.of(QuantityKind.POWER, figures.driveLoss()),
                out.of(QuantityKind.POWER, figures.motorLoss()),
                out.of(QuantityKind.POWER, figures.electricalPower()),
                out.of(QuantityKind.POWER, figures.shellLoss()),
                out.of(QuantityKind.POWER, figures.heatLoss()),
                out.of(QuantityKind.ELECTRIC_CURRENT, figures.current()),
                figures.shaftEfficiency(),
                figures.overallEfficiency(),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, figures.motorWarming()),
                out.of(QuantityKind.TEMPERATURE, figures.dischargeTemperature()));
    }

    private static InsideFigures inside(Output out, DisplacementRating.InsideFigures inside) {
        return new InsideFigures(
                out.of(QuantityKind.PRESSURE, inside.startPressure()),
                out.of(QuantityKind.PRESSURE, inside.endPressure()),
                out.of(QuantityKind.TEMPERATURE, inside.endTemperature()),
                out.plain(inside.clearanceEfficiency()),
                out.plain(inside.reexpansion()),
                out.of(QuantityKind.POWER, inside.mismatchPower()),
                out.of(QuantityKind.POWER, inside.coolingHeat()));
    }

    private static HeadFigures head(Output out, DisplacementRating.Head head) {
        return new HeadFigures(
                out.of(QuantityKind.SPECIFIC_ENERGY, head.needed()),
                out.of(QuantityKind.SPECIFIC_ENERGY, head.available()),
                head.neededCoefficient(),
                out.of(QuantityKind.SPEED, head.tipSpeed()),
                out.plain(head.machNumber()),
                head.onCurve().map(DisplacementRating.OnCurve::flowCoefficient).orElse(null),
                head.onCurve()
                        .map(DisplacementRating.OnCurve::isentropicEfficiency)
                        .orElse(null),
                head.onCurve()
                        .map(curve -> out.of(QuantityKind.VOLUME_FLOW, curve.surgeVolumeFlow()))
                        .orElse(null),
                head.onCurve()
                        .map(curve -> out.of(QuantityKind.VOLUME_FLOW, curve.chokeVolumeFlow()))
                        .orElse(null));
    }

    static EnergyBalanceFigures balance(Output out, EnergyBalance balance) {
        return new EnergyBalanceFigures(
                out.of(QuantityKind.POWER, balance.refrigeratingCapacity()),
                out.of(QuantityKind.POWER, balance.suctionLineHeatGain()),
                out.of(QuantityKind.POWER, balance.electricalPower()),
                out.of(QuantityKind.POWER, balance.heatLoss()),
                out.of(QuantityKind.POWER, balance.heatRejected()),
                balance.residual(),
                balance.coefficientOfPerformance(),
                balance.coefficientOfPerformance() * Constants.BTU_PER_HOUR_PER_WATT);
    }
}
