package io.loopstate.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.property.State;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/**
 * Values that the authors of the equations of state print, with the paper and table in the columns {@code source} and {@code
 * place_in_source} of each row.
 */
class EquationOfStateTablesTest {
    private static final int POINTS = 210;
    /** Of these, residual energies of mixtures: not in this test. */
    private static final int MIXTURES = 4;

    private static final int SATURATION_STATES = 109;
    /** Stands for the ideal-gas limit where a row prints a density of zero, mol/m3. */
    private static final double NEARLY_ZERO = 1e-9;

    @Test
    void singlePhasePoints() {
        PublishedTable table = new PublishedTable("eos_points");
        AtomicInteger mixtures = new AtomicInteger();
        table.compare(POINTS, row -> {
            Optional<Fluid> fluid = Fluids.find(row.text("fluid"));
            if (fluid.isPresent()) {
                point(row, fluid.get());
            } else {
                row.skip();
                mixtures.incrementAndGet();
            }
        });
        assertEquals(MIXTURES, mixtures.get(), "rows of mixtures");
    }

    private static void point(PublishedTable.Row row, Fluid fluid) {
        double m = fluid.molarMass();
        MolarState s = row.text("inputs").equals("T,rho") ? atDensity(row, fluid) : atPressure(row, fluid);
        row.check("alphar", s.residualEnergy());
        caloric(row, "", s, Fluids.Datum.of(fluid, row.text("reference_state")), m);
        row.check("w_m_per_s", speedOfSound(s, m));
        row.checkNote("v = ([0-9.]+) m3/kg", 1 / (s.density() * m));
    }

    private static MolarState atDensity(PublishedTable.Row row, Fluid fluid) {
        double density = row.has("rho_mol_per_L")
                ? row.given("rho_mol_per_L") * 1e3
                : row.given("rho_kg_per_m3") / fluid.molarMass();
        MolarState s = fluid.model().isotherm(row.given("T_K")).state(density == 0 ? NEARLY_ZERO : density);
        row.check("p_MPa", s.pressure() / 1e6);
        return s;
    }

    private static MolarState atPressure(PublishedTable.Row row, Fluid fluid) {
        double t = row.given("T_K");
        State state =
                Fluids.covering(fluid, row.given("p_MPa") * 1e6, t).atPressureTemperature(row.given("p_MPa") * 1e6, t);
        row.check("rho_mol_per_L", state.density() / fluid.molarMass() / 1e3);
        row.check("rho_kg_per_m3", state.density());
        return fluid.model().isotherm(t).state(state.density() / fluid.molarMass());
    }

    @Test
    void saturation() {
        PublishedTable table = new PublishedTable("eos_saturation");
        table.compare(
                SATURATION_STATES,
                row -> saturation(row, Fluids.find(row.text("fluid")).orElseThrow()));
    }

    private static void saturation(PublishedTable.Row row, Fluid fluid) {
        Saturation saturation;
        if (row.text("inputs").equals("T")) {
            double t = row.has("T_K") ? row.given("T_K") : row.given("T_C") + 273.15;
            saturation = Fluids.equilibrium(fluid).saturationAtTemperature(t);
            row.check("p_MPa", saturation.dew().pressure() / 1e6);
        } else {
            saturation = Fluids.equilibrium(fluid).saturationAtPressure(row.given("p_MPa") * 1e6);
            row.check("T_K", saturation.dew().temperature());
            row.check("T_C", saturation.dew().temperature() - 273.15);
        }
        row.checkNote("bubble pressure ([0-9.]+) MPa", saturation.bubble().pressure() / 1e6);
        row.checkNote("dew pressure ([0-9.]+) MPa", saturation.dew().pressure() / 1e6);
        Fluids.Datum datum = Fluids.Datum.of(fluid, row.text("reference_state"));
        side(row, fluid, datum, "liq_", saturation.bubble());
        side(row, fluid, datum, "vap_", saturation.dew());
        row.check("dh_vap_kJ_per_kg", saturation.latentHeat() / 1e3);
    }

    private static void side(PublishedTable.Row row, Fluid fluid, Fluids.Datum datum, String side, State state) {
        double m = fluid.molarMass();
        MolarState s = fluid.model().isotherm(state.temperature()).state(state.density() / m);
        row.check("rho_" + side + "kg_per_m3", s.density() * m);
        row.check("rho_" + side + "mol_per_L", s.density() / 1e3);
        caloric(row, side, s, datum, m);
        row.check("w_" + side + "m_per_s", speedOfSound(s, m));
    }

    /** Molar and specific values of the energies and what follows from them. */
    private static void caloric(
            PublishedTable.Row row, String side, MolarState s, Fluids.Datum datum, double molarMass) {
        double h = s.enthalpy() + datum.enthalpy();
        both(row, "h_" + side, "J_per_mol", "kJ_per_kg", h, molarMass);
        both(row, "u_" + side, "J_per_mol", "kJ_per_kg", h - s.pressure() / s.density(), molarMass);
        both(row, "s_" + side, "J_per_mol_K", "kJ_per_kg_K", s.entropy() + datum.entropy(), molarMass);
        both(row, "cv_" + side, "J_per_mol_K", "kJ_per_kg_K", s.isochoricHeatCapacity(), molarMass);
        both(row, "cp_" + side, "J_per_mol_K", "kJ_per_kg_K", s.isobaricHeatCapacity(), molarMass);
    }

    private static void both(
            PublishedTable.Row row, String name, String molar, String specific, double value, double molarMass) {
        row.check(name + molar, value);
        row.check(name + specific, value / molarMass / 1e3);
    }

    private static double speedOfSound(MolarState s, double molarMass) {
        return Math.sqrt(s.isobaricHeatCapacity() / s.isochoricHeatCapacity() * s.pressureByDensity() / molarMass);
    }
}
