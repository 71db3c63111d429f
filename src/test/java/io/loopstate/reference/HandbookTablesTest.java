package io.loopstate.reference;

import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.ReferenceState;
import io.loopstate.engine.property.State;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Tables of handbooks, textbooks, open reference data and the trade; each row names its source. */
class HandbookTablesTest {
    private static final int SATURATION_STATES = 61;
    private static final int SUPERHEATED_STATES = 32;
    private static final int INCH_POUND_STATES = 11;
    private static final int CHART_POINTS = 9;
    private static final int FLUIDS = 17;

    /** Exact by the international pound, foot and standard gravity; NIST SP 811 (2008), appendix B. */
    private static final double PSI = 6894.757293168361;

    private static final double POUND_PER_CUBIC_FOOT = 16.018463373960142;
    /** International Table Btu. */
    private static final double BTU_PER_POUND = 2326;

    private static final double BTU_PER_POUND_RANKINE = 4186.8;
    /** Standard atmosphere as the chart has it. */
    private static final double SEA_LEVEL_PSIA = 14.696;

    @Test
    void saturationTables() {
        new PublishedTable("saturation_tables_si").compare(SATURATION_STATES, row -> {
            Equilibrium fluid = equilibrium(row);
            Saturation s;
            if (row.has("T_C")) {
                s = fluid.saturationAtTemperature(row.given("T_C") + 273.15);
                row.check("p_kPa", s.dew().pressure() / 1e3);
            } else {
                s = fluid.saturationAtPressure(row.given("p_kPa") * 1e3);
            }
            row.check("rho_liq_kg_per_m3", s.bubble().density());
            row.check("rho_vap_kg_per_m3", s.dew().density());
            row.check("v_liq_m3_per_kg", s.bubble().specificVolume());
            row.check("v_vap_m3_per_kg", s.dew().specificVolume());
            row.check("h_liq_kJ_per_kg", s.bubble().specificEnthalpy() / 1e3);
            row.check("h_vap_kJ_per_kg", s.dew().specificEnthalpy() / 1e3);
            row.check("s_liq_kJ_per_kg_K", s.bubble().specificEntropy() / 1e3);
            row.check("s_vap_kJ_per_kg_K", s.dew().specificEntropy() / 1e3);
        });
    }

    @Test
    void superheatedVapor() {
        new PublishedTable("superheated_vapour").compare(SUPERHEATED_STATES, row -> {
            State s = superheated(row);
            row.check("v_m3_per_kg", s.specificVolume());
            row.check("rho_kg_per_m3", s.density());
            row.check("u_kJ_per_kg", s.specificInternalEnergy() / 1e3);
            row.check("h_kJ_per_kg", s.specificEnthalpy() / 1e3);
            row.check("s_kJ_per_kg_K", s.specificEntropy() / 1e3);
        });
    }

    /** On the dew line too, where a table begins with the temperature whose dew pressure it is for. */
    private static State superheated(PublishedTable.Row row) {
        Equilibrium fluid = equilibrium(row);
        double p = row.given("p_kPa") * 1e3;
        if (saturated(row)) {
            State dew = fluid.saturationAtPressure(p).dew();
            row.check("T_C", dew.temperature() - 273.15);
            return dew;
        }
        double t = row.given("T_C") + 273.15;
        if (t < fluid.refrigerant().criticalPoint().temperature()) {
            State dew = fluid.saturationAtTemperature(t).dew();
            if (row.rounds("p_kPa", dew.pressure() / 1e3)) {
                return dew;
            }
        }
        return fluid.atPressureTemperature(p, t);
    }

    @Test
    void superheatedVaporInchPound() {
        new PublishedTable("superheated_vapour_ip").compare(INCH_POUND_STATES, row -> {
            double p = row.given("p_psia") * PSI;
            State s;
            if (saturated(row)) {
                s = equilibrium(row).saturationAtPressure(p).dew();
                row.check("T_F", s.temperature() * 1.8 - 459.67);
            } else {
                s = equilibrium(row).atPressureTemperature(p, kelvin(row.given("T_F")));
            }
            row.check("v_ft3_per_lb", POUND_PER_CUBIC_FOOT * s.specificVolume());
            row.check("u_Btu_per_lb", s.specificInternalEnergy() / BTU_PER_POUND);
            row.check("h_Btu_per_lb", s.specificEnthalpy() / BTU_PER_POUND);
            row.check("s_Btu_per_lb_R", s.specificEntropy() / BTU_PER_POUND_RANKINE);
        });
    }

    /** The note of each row gives the tolerance, in percent of the absolute pressure. */
    @Test
    void pressureTemperatureChart() {
        Pattern tolerance = Pattern.compile("use ([0-9.]+) % of absolute pressure");
        new PublishedTable("pt_chart_ip").compare(CHART_POINTS, row -> {
            Matcher matcher = tolerance.matcher(row.text("note"));
            matcher.find();
            Saturation s = equilibrium(row).saturationAtTemperature(kelvin(row.given("T_F")));
            row.checkWithin(
                    "p_psig",
                    row.given("p_psig") + SEA_LEVEL_PSIA,
                    s.bubble().pressure() / PSI,
                    Double.parseDouble(matcher.group(1)) / 100);
        });
    }

    @Test
    void fixedPoints() {
        new PublishedTable("fixed_points").compare(FLUIDS, row -> {
            Fluid fluid = fluid(row);
            row.check("molar_mass_g_per_mol", fluid.molarMass() * 1e3);
            row.check("T_crit_K", fluid.criticalPoint().temperature());
            row.check("p_crit_MPa", fluid.criticalPoint().pressure() / 1e6);
            row.check("rho_crit_kg_per_m3", fluid.criticalPoint().density());
            row.check("T_nbp_K", fluid.normalBoilingPoint().orElse(Double.NaN));
        });
    }

    private static boolean saturated(PublishedTable.Row row) {
        return row.text("note").startsWith("saturated vapo");
    }

    private static Fluid fluid(PublishedTable.Row row) {
        return Fluids.find(row.text("refrigerant")).orElseThrow();
    }

    /** Charts have no enthalpies and so no reference state. */
    private static Equilibrium equilibrium(PublishedTable.Row row) {
        String reference = row.hasColumn("reference_state") ? row.text("reference_state") : "";
        if (reference.isEmpty()) {
            return Fluids.equilibrium(fluid(row));
        }
        return Fluids.equilibrium(fluid(row), reference.startsWith("IIR") ? ReferenceState.IIR : ReferenceState.ASHRAE);
    }

    private static double kelvin(double fahrenheit) {
        return (fahrenheit + 459.67) / 1.8;
    }
}
