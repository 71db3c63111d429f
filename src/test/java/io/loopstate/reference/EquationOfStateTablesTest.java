package io.loopstate.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import io.loopstate.engine.eos.Isotherm;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.property.State;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Values that the authors of the equations of state print, with the paper and table in the columns {@code source} and {@code
 * place_in_source} of each row.
 */
class EquationOfStateTablesTest {
    /** Mixtures of components, which these tests do not reach. */
    private static final int MIXTURE_ROWS = 4;
    /** Values compared and met, counted so that no row can drop out unseen. */
    private static final int POINTS_MET = 1035;

    private static final int SATURATION_MET = 909;
    /** Stands for the ideal-gas limit where a row prints a density of zero, mol/m3. */
    private static final double NEARLY_ZERO = 1e-9;

    @Test
    void singlePhasePoints() {
        PublishedValues values = new PublishedValues("eos_points");
        int mixtures = 0;
        for (NamedCsvRecord row : PublishedValues.rows("checks/eos_points.csv")) {
            Optional<Fluid> fluid = Fluids.find(row.getField("fluid"));
            if (fluid.isPresent()) {
                point(values, row, fluid.get());
            } else {
                mixtures++;
            }
        }
        assertEquals(MIXTURE_ROWS, mixtures);
        values.verify(POINTS_MET);
    }

    private static void point(PublishedValues values, NamedCsvRecord row, Fluid fluid) {
        double t = number(row, "T_K");
        Isotherm isotherm = fluid.model().isotherm(t);
        boolean byDensity = row.getField("inputs").equals("T,rho");
        MolarState s = isotherm.state(
                byDensity
                        ? givenDensity(row, fluid)
                        : Fluids.widened(fluid)
                                        .atPressureTemperature(number(row, "p_MPa") * 1e6, t)
                                        .density()
                                / fluid.molarMass());
        Fluids.Datum datum = Fluids.Datum.of(fluid, row.getField("reference_state"));
        double kilograms = fluid.molarMass() * 1e3;
        double h = s.enthalpy() + datum.enthalpy();
        double entropy = s.entropy() + datum.entropy();
        double cp = s.isobaricHeatCapacity();
        double cv = s.isochoricHeatCapacity();
        if (byDensity) {
            values.check(row, "p_MPa", s.pressure() / 1e6);
        } else {
            values.check(row, "rho_mol_per_L", s.density() / 1e3);
            values.check(row, "rho_kg_per_m3", s.density() * fluid.molarMass());
        }
        values.check(row, "alphar", s.residualEnergy());
        values.check(row, "h_J_per_mol", h);
        values.check(row, "u_J_per_mol", h - s.pressure() / s.density());
        values.check(row, "s_J_per_mol_K", entropy);
        values.check(row, "cv_J_per_mol_K", cv);
        values.check(row, "cp_J_per_mol_K", cp);
        values.check(row, "h_kJ_per_kg", h / kilograms);
        values.check(row, "u_kJ_per_kg", (h - s.pressure() / s.density()) / kilograms);
        values.check(row, "s_kJ_per_kg_K", entropy / kilograms);
        values.check(row, "cv_kJ_per_kg_K", cv / kilograms);
        values.check(row, "cp_kJ_per_kg_K", cp / kilograms);
        values.check(row, "w_m_per_s", Math.sqrt(cp / cv * s.pressureByDensity() / fluid.molarMass()));
    }

    private static double givenDensity(NamedCsvRecord row, Fluid fluid) {
        double density = row.getField("rho_mol_per_L").isEmpty()
                ? number(row, "rho_kg_per_m3") / fluid.molarMass()
                : number(row, "rho_mol_per_L") * 1e3;
        return density == 0 ? NEARLY_ZERO : density;
    }

    @Test
    void saturation() {
        PublishedValues values = new PublishedValues("eos_saturation");
        for (NamedCsvRecord row : PublishedValues.rows("checks/eos_saturation.csv")) {
            saturation(values, row, Fluids.find(row.getField("fluid")).orElseThrow());
        }
        values.verify(SATURATION_MET);
    }

    private static void saturation(PublishedValues values, NamedCsvRecord row, Fluid fluid) {
        boolean byTemperature = row.getField("inputs").equals("T");
        String kelvin = row.getField("T_K");
        double t = kelvin.isEmpty() && byTemperature
                ? number(row, "T_C") + 273.15
                : byTemperature ? number(row, "T_K") : 0;
        Saturation saturation = byTemperature
                ? Fluids.equilibrium(fluid).saturationAtTemperature(t)
                : Fluids.equilibrium(fluid).saturationAtPressure(number(row, "p_MPa") * 1e6);
        if (byTemperature) {
            values.check(row, "p_MPa", saturation.dew().pressure() / 1e6);
        } else {
            values.check(row, "T_K", saturation.dew().temperature());
            values.check(row, "T_C", saturation.dew().temperature() - 273.15);
        }
        Fluids.Datum datum = Fluids.Datum.of(fluid, row.getField("reference_state"));
        side(values, row, fluid, datum, "liq", saturation.bubble());
        side(values, row, fluid, datum, "vap", saturation.dew());
        values.check(row, "dh_vap_kJ_per_kg", saturation.latentHeat() / 1e3);
    }

    private static void side(
            PublishedValues values, NamedCsvRecord row, Fluid fluid, Fluids.Datum datum, String side, State state) {
        double m = fluid.molarMass();
        MolarState s = fluid.model().isotherm(state.temperature()).state(state.density() / m);
        double h = s.enthalpy() + datum.enthalpy();
        double entropy = s.entropy() + datum.entropy();
        values.check(row, "rho_" + side + "_kg_per_m3", state.density());
        values.check(row, "rho_" + side + "_mol_per_L", s.density() / 1e3);
        values.check(row, "h_" + side + "_kJ_per_kg", h / m / 1e3);
        values.check(row, "h_" + side + "_J_per_mol", h);
        values.check(row, "s_" + side + "_kJ_per_kg_K", entropy / m / 1e3);
        values.check(row, "s_" + side + "_J_per_mol_K", entropy);
        values.check(row, "cv_" + side + "_kJ_per_kg_K", state.isochoricHeatCapacity() / 1e3);
        values.check(row, "cv_" + side + "_J_per_mol_K", state.isochoricHeatCapacity() * m);
        values.check(row, "cp_" + side + "_kJ_per_kg_K", state.isobaricHeatCapacity() / 1e3);
        values.check(row, "cp_" + side + "_J_per_mol_K", state.isobaricHeatCapacity() * m);
        if (row.getHeader().contains("w_" + side + "_m_per_s")) {
            values.check(row, "w_" + side + "_m_per_s", state.speedOfSound());
        }
    }

    private static double number(NamedCsvRecord row, String column) {
        return Double.parseDouble(row.getField(column));
    }
}
