package io.loopstate.reference;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.ReferenceState;
import io.loopstate.engine.property.State;
import org.junit.jupiter.api.Test;

/** Tables of handbooks, textbooks, open reference data and the trade; each row names its source. */
class HandbookTablesTest {
    /** Values compared and met, counted so that no row can drop out unseen; the inch-pound table is of an older equation. */
    private static final int SATURATION_MET = 236;

    private static final int SUPERHEATED_MET = 36;
    private static final int INCH_POUND_MET = 0;
    private static final int CHART_MET = 9;
    private static final int FIXED_MET = 73;

    private static final double PSI = 6894.757293168;
    private static final double POUND_PER_CUBIC_FOOT = 16.01846337396;
    private static final double BTU_PER_POUND = 2326;
    private static final double BTU_PER_POUND_RANKINE = 4186.8;
    private static final double ROUNDED_KELVIN = 0.05;
    private static final double SEA_LEVEL_PSIA = 14.696;

    @Test
    void saturationTables() {
        PublishedValues values = new PublishedValues("saturation_tables_si");
        for (NamedCsvRecord row : PublishedValues.rows("checks/saturation_tables_si.csv")) {
            Fluid fluid = Fluids.find(row.getField("refrigerant")).orElseThrow();
            boolean byPressure = row.getField("T_C").isEmpty();
            Saturation s = byPressure
                    ? equilibrium(row, fluid).saturationAtPressure(number(row, "p_kPa") * 1e3)
                    : equilibrium(row, fluid).saturationAtTemperature(number(row, "T_C") + 273.15);
            values.check(row, "p_kPa", s.dew().pressure() / 1e3);
            values.check(row, "rho_liq_kg_per_m3", s.bubble().density());
            values.check(row, "rho_vap_kg_per_m3", s.dew().density());
            values.check(row, "v_liq_m3_per_kg", 1 / s.bubble().density());
            values.check(row, "v_vap_m3_per_kg", 1 / s.dew().density());
            values.check(row, "h_liq_kJ_per_kg", s.bubble().specificEnthalpy() / 1e3);
            values.check(row, "h_vap_kJ_per_kg", s.dew().specificEnthalpy() / 1e3);
            values.check(row, "s_liq_kJ_per_kg_K", s.bubble().specificEntropy() / 1e3);
            values.check(row, "s_vap_kJ_per_kg_K", s.dew().specificEntropy() / 1e3);
        }
        values.verify(SATURATION_MET);
    }

    @Test
    void superheatedVapor() {
        PublishedValues values = new PublishedValues("superheated_vapour");
        for (NamedCsvRecord row : PublishedValues.rows("checks/superheated_vapour.csv")) {
            Fluid fluid = Fluids.find(row.getField("refrigerant")).orElseThrow();
            double p = number(row, "p_kPa") * 1e3;
            State s = vapor(row, fluid, p, number(row, "T_C") + 273.15);
            values.check(row, "v_m3_per_kg", 1 / s.density());
            values.check(row, "rho_kg_per_m3", s.density());
            values.check(row, "u_kJ_per_kg", s.specificInternalEnergy() / 1e3);
            values.check(row, "h_kJ_per_kg", s.specificEnthalpy() / 1e3);
            values.check(row, "s_kJ_per_kg_K", s.specificEntropy() / 1e3);
        }
        values.verify(SUPERHEATED_MET);
    }

    @Test
    void superheatedVaporInchPound() {
        PublishedValues values = new PublishedValues("superheated_vapour_ip");
        for (NamedCsvRecord row : PublishedValues.rows("checks/superheated_vapour_ip.csv")) {
            Fluid fluid = Fluids.find(row.getField("refrigerant")).orElseThrow();
            double p = number(row, "p_psia") * PSI;
            State s = vapor(row, fluid, p, (number(row, "T_F") + 459.67) / 1.8);
            values.check(row, "v_ft3_per_lb", POUND_PER_CUBIC_FOOT / s.density());
            values.check(row, "u_Btu_per_lb", s.specificInternalEnergy() / BTU_PER_POUND);
            values.check(row, "h_Btu_per_lb", s.specificEnthalpy() / BTU_PER_POUND);
            values.check(row, "s_Btu_per_lb_R", s.specificEntropy() / BTU_PER_POUND_RANKINE);
        }
        values.verify(INCH_POUND_MET);
    }

    /** The chart's own note: 1 % of the absolute pressure. */
    @Test
    void pressureTemperatureChart() {
        PublishedValues values = new PublishedValues("pt_chart_ip");
        for (NamedCsvRecord row : PublishedValues.rows("checks/pt_chart_ip.csv")) {
            Fluid fluid = Fluids.find(row.getField("refrigerant")).orElseThrow();
            double p = Fluids.equilibrium(fluid)
                            .saturationAtTemperature((number(row, "T_F") + 459.67) / 1.8)
                            .bubble()
                            .pressure()
                    / PSI;
            values.checkWithin(row, "p_psig", number(row, "p_psig") + SEA_LEVEL_PSIA, p, 0.01);
        }
        values.verify(CHART_MET);
    }

    @Test
    void fixedPoints() {
        PublishedValues values = new PublishedValues("fixed_points");
        for (NamedCsvRecord row : PublishedValues.rows("checks/fixed_points.csv")) {
            Fluid fluid = Fluids.find(row.getField("refrigerant")).orElseThrow();
            values.check(row, "molar_mass_g_per_mol", fluid.molarMass() * 1e3);
            values.check(row, "T_crit_K", fluid.criticalPoint().temperature());
            values.check(row, "p_crit_MPa", fluid.criticalPoint().pressure() / 1e6);
            values.check(row, "rho_crit_kg_per_m3", fluid.criticalPoint().density());
            values.check(row, "T_nbp_K", fluid.normalBoilingPoint().orElse(Double.NaN));
        }
        values.verify(FIXED_MET);
    }

    /** Saturated where the row says so, or where rounding of the printed pressure puts the state below the dew line. */
    private static State vapor(NamedCsvRecord row, Fluid fluid, double p, double t) {
        Equilibrium equilibrium = equilibrium(row, fluid);
        State dew = fluid.criticalPoint().pressure() > p
                ? equilibrium.saturationAtPressure(p).dew()
                : null;
        boolean onDewLine = dew != null && Math.abs(t - dew.temperature()) < ROUNDED_KELVIN && t <= dew.temperature();
        return saturated(row) || onDewLine ? dew : equilibrium.atPressureTemperature(p, t);
    }

    private static boolean saturated(NamedCsvRecord row) {
        return row.getField("note").startsWith("saturated vapo");
    }

    private static Equilibrium equilibrium(NamedCsvRecord row, Fluid fluid) {
        String reference = row.getField("reference_state");
        if (reference.isEmpty()) {
            return Fluids.equilibrium(fluid);
        }
        return Fluids.equilibrium(fluid, reference.startsWith("IIR") ? ReferenceState.IIR : ReferenceState.ASHRAE);
    }

    private static double number(NamedCsvRecord row, String column) {
        return Double.parseDouble(row.getField(column));
    }
}
