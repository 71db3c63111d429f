package io.loopstate.web.mapping;

/**
 * What is on file of refrigerants beside their equations.
 *
 * @param safetyGroups by ASHRAE 34 and ISO 817
 * @param warmingPotentials by the assessments of the climate panel
 * @param ozonePotentials by the Montreal Protocol
 * @param concentrationLimits in rooms and of flames
 */
public record CatalogueFacts(
        SafetyGroups safetyGroups,
        WarmingPotentials warmingPotentials,
        OzonePotentials ozonePotentials,
        ConcentrationLimits concentrationLimits) {

    /** The facts on the class path. */
    public static CatalogueFacts bundled() {
        return new CatalogueFacts(
                SafetyGroups.bundled(),
                WarmingPotentials.bundled(),
                OzonePotentials.bundled(),
                ConcentrationLimits.bundled());
    }
}
