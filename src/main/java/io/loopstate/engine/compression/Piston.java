package io.loopstate.engine.compression;

import io.loopstate.engine.component.Compressor;
import io.loopstate.engine.component.Require;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reciprocating compression. The vapor passes the suction valve, is compressed to the discharge pressure and the drop of the
 * discharge valve, and what stays in the clearance re-expands before the next fills in; filling = 1 + C - C v4/v3, with the
 * real volumes before (3) and after (4) re-expansion. Source: R. Joel, Basic Engineering Thermodynamics, 5th edition, chapter
 * 14 (from memory), with v4/v3 for (p2/p1)^(1/n).
 *
 * @param sweptFlow m3/s
 * @param clearance clearance over swept volume, 0 or more
 * @param suctionDrop Pa across the suction valve
 * @param dischargeDrop Pa across the discharge valve
 * @param leakage share of the vapor drawn in that leaks back, 0 to below 1
 * @param isentropicEfficiency of compression inside the cylinder; this or the next
 * @param polytropicIndex n of compression and re-expansion in a cooled cylinder
 */
public record Piston(
        double sweptFlow,
        double clearance,
        double suctionDrop,
        double dischargeDrop,
        double leakage,
        OptionalDouble isentropicEfficiency,
        OptionalDouble polytropicIndex)
        implements Displacer {
    public Piston {
        Require.positive("displacement", sweptFlow);
        Require.notNegative("clearance", clearance);
        Require.notNegative("suctionValvePressureDrop", suctionDrop);
        Require.notNegative("dischargeValvePressureDrop", dischargeDrop);
        Require.properShare("leakageFraction", leakage);
        Require.efficiency("isentropicEfficiency", isentropicEfficiency);
        Require.positive("polytropicIndex", polytropicIndex);
        if (isentropicEfficiency.isPresent() == polytropicIndex.isPresent()) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS, "Give the isentropic efficiency or the polytropic index.")
                    .about("isentropicEfficiency");
        }
    }

    @Override
    public Stroke stroke(Equilibrium equilibrium, State port, double dischargePressure) {
        State inlet = afterValve(equilibrium, port);
        double top = dischargePressure + dischargeDrop;
        State ideal = Compressor.isentropicOutlet(equilibrium, port, dischargePressure);
        double isentropicWork = ideal.specificEnthalpy() - port.specificEnthalpy();
        return polytropicIndex.isPresent()
                ? cooled(equilibrium, inlet, top, isentropicWork)
                : lossy(equilibrium, inlet, top, isentropicWork);
    }

    @Override
    public double work(Equilibrium equilibrium, State port, double dischargePressure) {
        State inlet = afterValve(equilibrium, port);
        double top = dischargePressure + dischargeDrop;
        return polytropicIndex.isPresent()
                ? stroke(equilibrium, port, dischargePressure).work()
                : (Compressor.isentropicOutlet(equilibrium, inlet, top).specificEnthalpy() - inlet.specificEnthalpy())
                        / isentropicEfficiency.getAsDouble();
    }

    private State afterValve(Equilibrium equilibrium, State port) {
        if (suctionDrop == 0) {
            return port;
        }
        double pressure = port.pressure() - suctionDrop;
        if (!(pressure > 0)) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "The suction valve cannot lose more pressure than there is.",
                    "suctionValvePressureDrop",
                    suctionDrop,
                    0,
                    port.pressure());
        }
        return equilibrium.atPressureEnthalpy(pressure, port.specificEnthalpy());
    }

    private Stroke lossy(Equilibrium equilibrium, State inlet, double top, double isentropicWork) {
        State ideal = Compressor.isentropicOutlet(equilibrium, inlet, top);
        double efficiency = isentropicEfficiency.getAsDouble();
        double work = (ideal.specificEnthalpy() - inlet.specificEnthalpy()) / efficiency;
        if (clearance == 0) {
            return stroke(inlet, ideal, 1, work, isentropicWork, 0);
        }
        State end = efficiency == 1 ? ideal : equilibrium.atPressureEnthalpy(top, inlet.specificEnthalpy() + work);
        // What is left in the clearance expands without loss: it does so along the cold part of the stroke.
        State expanded = equilibrium.atPressureEntropy(inlet.pressure(), end.specificEntropy());
        return stroke(inlet, end, expanded.specificVolume() / end.specificVolume(), work, isentropicWork, 0);
    }

    private Stroke cooled(Equilibrium equilibrium, State inlet, double top, double isentropicWork) {
        double index = polytropicIndex.getAsDouble();
        double ratio = top / inlet.pressure();
        double volumes = Math.pow(ratio, 1 / index);
        State end =
                equilibrium.state(Variable.PRESSURE, top, Variable.SPECIFIC_VOLUME, inlet.specificVolume() / volumes);
        double rise = end.specificEnthalpy() - inlet.specificEnthalpy();
        double work = Math.max(IndexPath.flowWork(inlet.pressure(), inlet.specificVolume(), ratio, index), rise);
        return stroke(inlet, end, volumes, work, isentropicWork, work - rise);
    }

    private Stroke stroke(State inlet, State end, double reexpansion, double work, double isentropicWork, double heat) {
        double filling = 1 + clearance - clearance * reexpansion;
        if (!(filling > 0)) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "At this pressure ratio the vapor left in the clearance fills the whole cylinder: nothing is drawn in.",
                    "clearance",
                    clearance,
                    0,
                    1 / (reexpansion - 1));
        }
        double massFlow = sweptFlow * filling * (1 - leakage) / inlet.specificVolume();
        return new Stroke(
                massFlow,
                work,
                isentropicWork,
                heat,
                filling,
                Optional.of(new Inside(inlet, end, OptionalDouble.of(reexpansion), OptionalDouble.empty())));
    }
}
