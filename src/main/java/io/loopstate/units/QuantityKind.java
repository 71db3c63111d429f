package io.loopstate.units;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A kind of quantity: what a number measures. Units convert within a kind and never across kinds, even where the
 * dimension is the same (a temperature and a temperature difference, a pressure and an energy per volume).
 */
public enum QuantityKind {
    /** Thermodynamic temperature, a point on a scale; SI: K. */
    TEMPERATURE("temperature", "temperature", "K", "degC", "degF"),
    /** Superheat, subcooling, glide, approach: the distance of two temperatures; SI: K. */
    TEMPERATURE_DIFFERENCE("temperatureDifference", "temperature difference", "K", "K", "delta_degF"),
    /** Absolute pressure inside; given as absolute, gauge or vacuum reading; SI: Pa. */
    PRESSURE("pressure", "pressure", "Pa", "kPa_a", "psia"),
    /** Pressure drop or rise; SI: Pa. */
    PRESSURE_DIFFERENCE("pressureDifference", "pressure difference", "Pa", "kPa_diff", "psi_diff"),
    /** SI: kg/m3. */
    DENSITY("density", "density", "kg/m3", "kg_per_m3", "lb_per_ft3"),
    /** SI: m3/kg. */
    SPECIFIC_VOLUME("specificVolume", "specific volume", "m3/kg", "m3_per_kg", "ft3_per_lb"),
    /** Specific enthalpy, specific internal energy, latent heat, specific work; SI: J/kg. */
    SPECIFIC_ENERGY("specificEnergy", "specific energy", "J/kg", "kJ_per_kg", "Btu_per_lb"),
    /** Specific entropy and specific heat capacity; SI: J/(kg K). */
    SPECIFIC_ENTROPY(
            "specificEntropy",
            "specific entropy or specific heat capacity",
            "J/(kg.K)",
            "kJ_per_kg_K",
            "Btu_per_lb_degF"),
    /** Speed of sound, air velocity; SI: m/s. */
    SPEED("speed", "speed", "m/s", "m_per_s", "ft_per_s"),
    /** SI: kg/s. */
    MASS_FLOW("massFlow", "mass flow", "kg/s", "kg_per_s", "lb_per_h"),
    /** SI: m3/s. */
    VOLUME_FLOW("volumeFlow", "volume flow", "m3/s", "m3_per_h", "cfm"),
    /** Heat rate, refrigerating capacity, shaft power and electric power; SI: W. */
    POWER("power", "power or heat rate", "W", "kW", "Btu_per_h"),
    /** Altitude, lift, bore, stroke; SI: m. */
    LENGTH("length", "length", "m", "m", "ft"),
    /** SI: m2. */
    AREA("area", "area", "m2", "m2", "ft2"),
    /** Volume, also displacement per revolution; SI: m3. */
    VOLUME("volume", "volume", "m3", "m3", "ft3"),
    /** Refrigerant charge; SI: kg. */
    MASS("mass", "mass", "kg", "kg", "lb"),
    /** SI: J. */
    ENERGY("energy", "energy", "J", "kJ", "Btu"),
    /** Rotational or supply frequency, counted in revolutions or periods; SI: 1/s. */
    FREQUENCY("frequency", "rotational frequency", "1/s", "rpm", "rpm"),
    /** Refrigerating effect per swept volume; SI: J/m3. */
    VOLUMETRIC_CAPACITY("volumetricCapacity", "volumetric capacity", "J/m3", "kJ_per_m3", "Btu_per_ft3"),
    /** SI: Pa s. */
    DYNAMIC_VISCOSITY("dynamicViscosity", "dynamic viscosity", "Pa.s", "uPa_s", "lb_per_ft_h"),
    /** SI: W/(m K). */
    THERMAL_CONDUCTIVITY("thermalConductivity", "thermal conductivity", "W/(m.K)", "W_per_m_K", "Btu_per_h_ft_degF"),
    /** SI: N/m. */
    SURFACE_TENSION("surfaceTension", "surface tension", "N/m", "mN_per_m", "dyn_per_cm"),
    /** Joule-Thomson coefficient; SI: K/Pa. */
    JOULE_THOMSON("jouleThomson", "Joule-Thomson coefficient", "K/Pa", "K_per_kPa", "degF_per_psi"),
    /** Isobaric thermal expansion; SI: 1/K. */
    THERMAL_EXPANSION("thermalExpansion", "thermal expansion", "1/K", "per_K", "per_degF"),
    /** Isothermal or isentropic compressibility; SI: 1/Pa. */
    COMPRESSIBILITY("compressibility", "compressibility", "1/Pa", "per_kPa", "per_psi"),
    /** SI: kg/mol. */
    MOLAR_MASS("molarMass", "molar mass", "kg/mol", "g_per_mol", "lb_per_lbmol"),
    /** SI: A. */
    ELECTRIC_CURRENT("electricCurrent", "electric current", "A", "A", "A"),
    /** SI: V. */
    VOLTAGE("voltage", "voltage", "V", "V", "V"),
    /** Mass of water vapor per mass of dry air; SI: kg/kg. */
    HUMIDITY_RATIO("humidityRatio", "humidity ratio", "kg/kg", "g_per_kg", "gr_per_lb"),
    /** Conductance of a heat exchanger, UA; SI: W/K. */
    THERMAL_CONDUCTANCE("thermalConductance", "thermal conductance", "W/K", "kW_per_K", "Btu_per_h_degF"),
    /** SI: W/(m2 K). */
    HEAT_TRANSFER_COEFFICIENT(
            "heatTransferCoefficient", "heat transfer coefficient", "W/(m2.K)", "W_per_m2_K", "Btu_per_h_ft2_degF"),
    /** Sensible heat per volume flow and temperature difference, the 1.08 (air) and 500 (water) of the trade; SI: J/(m3 K). */
    SENSIBLE_HEAT_FACTOR("sensibleHeatFactor", "sensible heat factor", "J/(m3.K)", "kJ_per_m3_K", "Btu_per_h_cfm_degF"),
    /** Total heat per volume flow and enthalpy difference, the 4.5 of the trade; SI: kg/m3. */
    TOTAL_HEAT_FACTOR("totalHeatFactor", "total heat factor", "kg/m3", "kg_per_m3", "lb_per_h_cfm"),
    /** Latent heat per volume flow and difference of humidity ratio, the 0.68 of the trade; SI: J/m3. */
    LATENT_HEAT_FACTOR("latentHeatFactor", "latent heat factor", "J/m3", "kJ_per_m3", "Btu_per_h_cfm_gr_per_lb"),
    /** Thermal resistance of a layer of dirt, the fouling factor; SI: m2 K/W. */
    FOULING_RESISTANCE("foulingResistance", "fouling resistance", "m2.K/W", "m2_K_per_W", "h_ft2_degF_per_Btu"),
    /** Dimensionless: efficiency, vapor quality, relative humidity; a plain number, percent is understood. */
    RATIO("ratio", "dimensionless ratio", "1", "ratio", "ratio");

    private static final Map<String, QuantityKind> BY_KEY = new HashMap<>();

    static {
        for (QuantityKind kind : values()) {
            BY_KEY.put(kind.key, kind);
        }
    }

    private final String key;
    private final String words;
    private final String siUnit;
    private final String siReply;
    private final String ipReply;

    QuantityKind(String key, String words, String siUnit, String siReply, String ipReply) {
        this.key = key;
        this.words = words;
        this.siUnit = siUnit;
        this.siReply = siReply;
        this.ipReply = ipReply;
    }

    /** The name that clients write, for example {@code massFlow}. */
    public String key() {
        return key;
    }

    /** The name in words, for sentences. */
    public String words() {
        return words;
    }

    /** The coherent SI unit in which the engine counts this kind, as a UCUM code. */
    public String siUnit() {
        return siUnit;
    }

    /** The units of this kind, in the order in which they are listed. */
    public List<UnitToken> units() {
        return UnitCatalog.of(this);
    }

    /** The unit in which a reply gives this kind unless another is asked for. */
    public UnitToken replyUnit(UnitSystem system) {
        return UnitToken.of(system == UnitSystem.IP ? ipReply : siReply);
    }

    /**
     * The kind with this key.
     *
     * @throws UnitFault {@link UnitFaultCode#UNKNOWN_KIND}, naming the nearest keys
     */
    public static QuantityKind ofKey(String key) {
        QuantityKind kind = key == null ? null : BY_KEY.get(key);
        if (kind == null) {
            List<String> keys = Arrays.stream(values()).map(QuantityKind::key).toList();
            String got = key == null ? "" : key;
            throw UnitFault.of(
                    UnitFaultCode.UNKNOWN_KIND,
                    "There is no kind of quantity named \"" + UnitFault.clip(got) + "\".",
                    got,
                    String.join(", ", keys),
                    Nearest.question(Nearest.to(got, keys)));
        }
        return kind;
    }
}
