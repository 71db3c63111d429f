package io.loopstate.engine.coexistence;

import io.loopstate.engine.eos.HelmholtzModel;
import io.loopstate.engine.eos.MixtureModel;
import io.loopstate.engine.eos.MixturePhase;
import java.util.List;

/** The overall composition of a mixture with its model. */
public final class Feed {
    private final MixtureModel model;
    private final double[] moleFractions;
    private final HelmholtzModel merged;
    private final Component[] components;
    private final double molarMass;

    /**
     * What a starting value needs of a component.
     *
     * @param criticalTemperature K
     * @param criticalPressure Pa
     * @param acentricFactor of Pitzer
     * @param molarMass kg/mol
     */
    public record Component(
            double criticalTemperature, double criticalPressure, double acentricFactor, double molarMass) {
        private static final double WILSON = 5.373;

        /** Vapor pressure (Pa) by Wilson (1969), ln(p/pc) = 5.373 (1 + omega) (1 - Tc/T): a starting value. */
        double vaporPressure(double temperature) {
            return criticalPressure * Math.exp(WILSON * (1 + acentricFactor) * (1 - criticalTemperature / temperature));
        }
    }

    /**
     * @param moleFractions positive, with the sum 1
     * @param components in the order of the model
     */
    public Feed(MixtureModel model, double[] moleFractions, List<Component> components) {
        this.model = model;
        this.moleFractions = moleFractions.clone();
        this.components = components.toArray(Component[]::new);
        merged = model.at(moleFractions);
        double sum = 0;
        for (int i = 0; i < moleFractions.length; i++) {
            sum += moleFractions[i] * this.components[i].molarMass();
        }
        molarMass = sum;
    }

    public int size() {
        return moleFractions.length;
    }

    /** Mole fraction of a component in the whole. */
    public double moleFraction(int i) {
        return moleFractions[i];
    }

    /** The equation of the overall composition. */
    public HelmholtzModel merged() {
        return merged;
    }

    /** kg/mol. */
    public double molarMass() {
        return molarMass;
    }

    Component component(int i) {
        return components[i];
    }

    /** A phase of the overall composition; density in mol/m3. */
    MixturePhase phase(double temperature, double density) {
        double[] amounts = new double[moleFractions.length];
        for (int i = 0; i < amounts.length; i++) {
            amounts[i] = moleFractions[i] * density;
        }
        return model.phase(temperature, amounts);
    }

    /** A phase of any composition; amounts in mol/m3. */
    MixturePhase phase(double temperature, double[] amounts) {
        return model.phase(temperature, amounts);
    }
}
