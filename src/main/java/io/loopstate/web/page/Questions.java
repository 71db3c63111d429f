package io.loopstate.web.page;

import static io.loopstate.web.page.Field.needed;
import static io.loopstate.web.page.Field.wanted;

import io.loopstate.web.page.Question.Figure;
import io.loopstate.web.page.Question.Group;
import io.loopstate.web.page.Question.Part;
import java.util.List;
import java.util.Optional;

/** The calculations that the page can ask for. */
final class Questions {
    private static final String STATES = "States around the loop";
    private static final String LEVELS = "Where it evaporates and condenses";
    private static final String LOW = "low";
    private static final String HIGH = "high";
    private static final String PLACE = "place";
    private static final Field ALTITUDE =
            wanted("altitude", "Altitude", "Gauges count from the air there. Empty: sea level.", Units.LENGTH);
    private static final Part LEVEL_TABLE = Part.rows(
            LEVELS,
            List.of("/evaporating", "/condensing"),
            "pressure",
            "bubbleTemperature",
            "midpointTemperature",
            "dewTemperature",
            "temperatureGlide");
    private static final String[] STATE = {
        "name",
        "phase",
        "temperature",
        "pressure",
        "superheat",
        "subcooling",
        "vaporQuality",
        "specificEnthalpy",
        "specificEntropy",
        "density"
    };

    static final Question READINGS = new Question(
            "readings",
            "Readings on a unit",
            "Two gauges and a few thermometers: superheat, subcooling, what the compressor did, where the heat goes.",
            "cycle-points/readings",
            Optional.of("the loop in pressure over enthalpy"),
            List.of(
                    new Group(
                            "Low side",
                            LOW,
                            false,
                            List.of(
                                    needed(
                                            "suctionPressure",
                                            "Suction pressure",
                                            "Gauge at the compressor.",
                                            Units.LOW_PRESSURE),
                                    needed(
                                            "suctionLineTemperature",
                                            "Suction line",
                                            "At the compressor.",
                                            Units.TEMPERATURE),
                                    wanted(
                                            "evaporatorOutletTemperature",
                                            "Evaporator outlet",
                                            "At the bulb of the valve.",
                                            Units.TEMPERATURE))),
                    new Group(
                            "High side",
                            HIGH,
                            false,
                            List.of(
                                    needed(
                                            "dischargePressure",
                                            "Discharge pressure",
                                            "Gauge at the compressor.",
                                            Units.PRESSURE),
                                    wanted(
                                            "dischargeLineTemperature",
                                            "Discharge line",
                                            "Opens the compressor's efficiency.",
                                            Units.TEMPERATURE),
                                    wanted(
                                            "liquidLineTemperature",
                                            "Liquid line",
                                            "Before the valve. Opens subcooling.",
                                            Units.TEMPERATURE),
                                    wanted(
                                            "liquidLinePressure",
                                            "Liquid line pressure",
                                            "Empty: the discharge pressure.",
                                            Units.PRESSURE))),
                    new Group(
                            "Surroundings",
                            PLACE,
                            false,
                            List.of(
                                    wanted(
                                            "outdoorAirTemperature",
                                            "Outdoor air",
                                            "Around the condensing unit.",
                                            Units.TEMPERATURE),
                                    ALTITUDE)),
                    new Group(
                            "Air, meter and nameplate",
                            PLACE,
                            true,
                            List.of(
                                    wanted(
                                            "condenserAirEnteringTemperature",
                                            "Air onto the condenser",
                                            "Dry bulb.",
                                            Units.TEMPERATURE),
                                    wanted(
                                            "condenserAirLeavingTemperature",
                                            "Air off the condenser",
                                            "Dry bulb.",
                                            Units.TEMPERATURE),
                                    wanted(
                                            "condenserAirVolumeFlow",
                                            "Condenser airflow",
                                            "Opens the heat rejected.",
                                            Units.FLOW),
                                    wanted("electricityVoltage", "Voltage", "At the compressor.", Units.VOLTAGE),
                                    wanted("electricityCurrent", "Current", "Per line.", Units.CURRENT),
                                    wanted("electricityPhases", "Phases", "1 or 3.", Units.NONE),
                                    wanted("electricityPowerFactor", "Power factor", "Such as 0.9.", Units.NONE),
                                    wanted(
                                            "electricityPower",
                                            "Electrical power",
                                            "Instead of volts and amperes.",
                                            Units.ELECTRIC_POWER),
                                    wanted("displacement", "Displacement", "Swept volume over time.", Units.FLOW),
                                    wanted(
                                            "volumetricEfficiency",
                                            "Volumetric efficiency",
                                            "Such as 75 % or 0.75.",
                                            Units.NONE)))),
            List.of(
                    Figure.of("Superheat", "superheat", "/superheat"),
                    Figure.of("Subcooling", "subcooling", "/subcooling"),
                    Figure.of("Heat rejected", "/routes/0/heatRejected", "/routes/0/heatRejected"),
                    Figure.of("Capacity", "/routes/0/refrigeratingCapacity", "/routes/0/refrigeratingCapacity"),
                    Figure.of("Heat rejected, per mass", "heatRejectionPerMass", "/performance/heatRejectionPerMass"),
                    Figure.of("Evaporating, dew point", "evaporatingDewTemperature", "/evaporating/dewTemperature"),
                    Figure.of(
                            "Condensing, bubble point", "condensingBubbleTemperature", "/condensing/bubbleTemperature"),
                    Figure.of("Pressure ratio", "pressureRatio", "/pressureRatio"),
                    Figure.of("Condensing over outdoor air", "condensingOverAmbient", "/condensingOverAmbient"),
                    Figure.of("Isentropic efficiency", "isentropicEfficiency", "/compression/isentropicEfficiency"),
                    Figure.of("COP", "coefficientOfPerformance", "/performance/coefficientOfPerformance"),
                    Figure.of("EER", "energyEfficiencyRatio", "/performance/energyEfficiencyRatio")),
            List.of(
                    Part.rows(STATES, List.of("/points"), STATE),
                    LEVEL_TABLE,
                    Part.list("Compressor, for each mass of refrigerant", "/compression"),
                    Part.list("Cycle, for each mass of refrigerant", "/performance"),
                    Part.rows(
                            "Flow and heat, by each way that the readings open",
                            List.of("/routes"),
                            "name",
                            "bound",
                            "massFlow",
                            "refrigeratingCapacity",
                            "compressorPower",
                            "heatRejected",
                            "assumptions"),
                    Part.rows(
                            "Heat rejected, one way against another",
                            List.of("/balances"),
                            "first",
                            "second",
                            "firstHeat",
                            "secondHeat",
                            "difference")));

    static final Question SATURATION = new Question(
            "saturation",
            "Saturation",
            "The pressure that belongs to a temperature, or the temperature that belongs to a pressure.",
            "properties/saturation",
            Optional.of("the saturation line in pressure over temperature"),
            List.of(new Group(
                    "One of the two",
                    LOW,
                    false,
                    List.of(
                            wanted("pressure", "Pressure", "Give this or the temperature.", Units.LOW_PRESSURE),
                            wanted("temperature", "Temperature", "Give this or the pressure.", Units.TEMPERATURE),
                            ALTITUDE))),
            List.of(
                    Figure.of("Dew point, temperature", "dewTemperature", "/dew/temperature"),
                    Figure.of("Dew point, pressure", "dewPressure", "/dew/pressure"),
                    Figure.of("Bubble point, temperature", "bubbleTemperature", "/bubble/temperature"),
                    Figure.of("Bubble point, pressure", "bubblePressure", "/bubble/pressure"),
                    Figure.of("Glide", "temperatureGlide", "/temperatureGlide"),
                    Figure.of("Difference of pressure", "pressureGlide", "/pressureGlide"),
                    Figure.of("Latent heat", "latentHeat", "/latentHeat")),
            List.of(
                    Part.rows(
                            "Bubble and dew point",
                            List.of("/bubble", "/dew"),
                            "phase",
                            "temperature",
                            "pressure",
                            "specificEnthalpy",
                            "specificEntropy",
                            "density",
                            "specificVolume"),
                    Part.rows(
                            "The first vapor that forms",
                            List.of("/firstVapor"),
                            "refrigerant",
                            "massFraction",
                            "moleFraction"),
                    Part.rows(
                            "The first liquid that forms",
                            List.of("/firstLiquid"),
                            "refrigerant",
                            "massFraction",
                            "moleFraction")));

    static final Question DESIGN = new Question(
            "design",
            "A cycle to design",
            "The loop from two levels, superheat, subcooling and an efficiency; with a capacity also flow, power and heat rejected.",
            "cycle-points/design",
            Optional.of("the loop in pressure over enthalpy"),
            List.of(
                    new Group(
                            "Low side",
                            LOW,
                            false,
                            List.of(
                                    needed("evaporatingTemperature", "Evaporating", "Dew point.", Units.TEMPERATURE),
                                    needed(
                                            "superheat",
                                            "Superheat",
                                            "A difference, at the evaporator.",
                                            Units.DIFFERENCE))),
                    new Group(
                            "High side",
                            HIGH,
                            false,
                            List.of(
                                    needed("condensingTemperature", "Condensing", "Dew point.", Units.TEMPERATURE),
                                    needed(
                                            "subcooling",
                                            "Subcooling",
                                            "A difference, at the condenser.",
                                            Units.DIFFERENCE))),
                    new Group(
                            "Compressor and size",
                            PLACE,
                            false,
                            List.of(
                                    needed(
                                            "isentropicEfficiency",
                                            "Isentropic efficiency",
                                            "Such as 70 % or 0.7.",
                                            Units.NONE),
                                    wanted(
                                            "refrigeratingCapacity",
                                            "Capacity",
                                            "Opens flow, power and heat.",
                                            Units.POWER)))),
            List.of(
                    Figure.of("COP", "coefficientOfPerformance", "/performance/coefficientOfPerformance"),
                    Figure.of("EER", "energyEfficiencyRatio", "/performance/energyEfficiencyRatio"),
                    Figure.of("Pressure ratio", "pressureRatio", "/performance/pressureRatio"),
                    Figure.of("Discharge temperature", "dischargeTemperature", "/performance/dischargeTemperature"),
                    Figure.of("Refrigerating effect", "refrigeratingEffect", "/performance/refrigeratingEffect"),
                    Figure.of("Compressor power", "compressorPower", "/performance/compressorPower"),
                    Figure.of("Heat rejected", "heatRejected", "/performance/heatRejected"),
                    Figure.of("Mass flow", "massFlow", "/performance/massFlow")),
            List.of(
                    Part.rows(STATES, List.of("/points"), STATE),
                    LEVEL_TABLE,
                    Part.list("Performance", "/performance"),
                    Part.list("Heat rejected, for each mass of refrigerant", "/performance/heatRejectionParts")));

    /** All, in the order of the tabs. */
    static final List<Question> ALL = List.of(READINGS, SATURATION, DESIGN);

    private Questions() {}

    /** The question of a name; the first where there is none. */
    static Question named(String key) {
        return ALL.stream()
                .filter(question -> question.key().equals(key))
                .findFirst()
                .orElse(READINGS);
    }
}
