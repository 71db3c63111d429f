package io.loopstate.engine.compression;

import static io.loopstate.engine.cycle.Working.energy;
import static io.loopstate.engine.cycle.Working.enthalpy;
import static io.loopstate.engine.cycle.Working.entropy;
import static io.loopstate.engine.cycle.Working.massFlow;
import static io.loopstate.engine.cycle.Working.power;
import static io.loopstate.engine.cycle.Working.pressure;
import static io.loopstate.engine.cycle.Working.ratio;
import static io.loopstate.engine.cycle.Working.specificVolume;
import static io.loopstate.engine.cycle.Working.volumeFlow;

import io.loopstate.engine.compression.Nameplate.Figures;
import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.cycle.Step.Term;
import io.loopstate.engine.cycle.Working;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.OptionalDouble;

/** The working back from a nameplate. Numbers at the symbols: 1 suction, 2s isentropic outlet. */
final class NameplateWorking {
    private NameplateWorking() {}

    static List<Step> of(
            Equilibrium equilibrium, State suction, State isentropic, OptionalDouble effect, Figures figures) {
        Working working = new Working(equilibrium);
        Term h1 = working.enthalpyOf("enthalpy at the suction", "1", pressure("p1", suction.pressure()), suction);
        Term m = massFlow("m", figures.massFlow());
        effect.ifPresent(value -> {
            Term q = working.property("refrigerating effect", "q = h_evaporator - h_liquid", energy("q", value));
            figures.refrigeratingCapacity()
                    .ifPresent(capacity ->
                            working.formula("mass flow", "m = Q / q", Basis.FIRST_LAW, m, power("Q", capacity), q));
        });
        working.formula(
                "suction volume flow",
                "V1 = m v1",
                Basis.DEFINITION,
                volumeFlow("V1", figures.suctionVolumeFlow()),
                m,
                specificVolume("v1", suction.specificVolume()));
        if (figures.displacement().isPresent()) {
            working.formula(
                    "volumetric efficiency",
                    "eta_v = V1 / Vd",
                    Basis.DEFINITION,
                    ratio("eta_v", figures.volumetricEfficiency().getAsDouble()),
                    volumeFlow("V1", figures.suctionVolumeFlow()),
                    volumeFlow("Vd", figures.displacement().getAsDouble()));
        }
        Term h2s = working.property(
                "enthalpy after compression at constant entropy",
                "h2s = h(p2, s1)",
                enthalpy("h2s", isentropic.specificEnthalpy()),
                pressure("p2", isentropic.pressure()),
                entropy("s1", suction.specificEntropy()));
        Term ps = working.formula(
                "isentropic power",
                "Ps = m (h2s - h1)",
                Basis.FIRST_LAW,
                power("Ps", figures.isentropicPower()),
                m,
                h2s,
                h1);
        figures.shaftEfficiency()
                .ifPresent(value -> working.formula(
                        "isentropic efficiency at the shaft",
                        "eta = Ps / P",
                        Basis.DEFINITION,
                        ratio("eta", value),
                        ps,
                        power("P", figures.shaftPower().orElseThrow())));
        figures.overallEfficiency()
                .ifPresent(value -> working.formula(
                        "isentropic efficiency at the terminals",
                        "eta_el = Ps / P_el",
                        Basis.DEFINITION,
                        ratio("eta_el", value),
                        ps,
                        power("P_el", figures.electricalPower().orElseThrow())));
        return working.toList();
    }
}
