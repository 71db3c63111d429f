package io.loopstate.engine.eos;

import java.util.ArrayList;
import java.util.List;

/**
 * Multi-fluid mixture model explicit in the Helmholtz energy, Kunz and Wagner (2012), eqs. 7.1 to 7.10: {@code alphar(tau,
 * delta, x) = sum x_i alphar_i + sum_(i<j) x_i x_j F_ij alphar_ij}, tau and delta reduced by functions of the composition.
 *
 * <p>Immutable. {@link #at} gives the equation of one composition, which is as fast as that of a pure fluid; {@link #phase}
 * gives what phase equilibrium needs, with derivatives in the amounts.
 */
public final class MixtureModel {
    /** CODATA 2018, J/(mol K); the components' own differ in the sixth digit or later. */
    public static final double GAS_CONSTANT = 8.314462618;

    final HelmholtzModel[] components;
    final ReducingFunction temperature;
    final ReducingFunction volume;
    final Departure[] departures;

    /** A departure function with its weight. */
    record Departure(int first, int second, double weight, ResidualHelmholtz function) {}

    /**
     * @param components equations of the pure components
     * @param pairs one for every two of them
     */
    public MixtureModel(List<HelmholtzModel> components, List<BinaryPair> pairs) {
        int n = components.size();
        if (pairs.size() != n * (n - 1) / 2) {
            throw new IllegalArgumentException(n + " components with " + pairs.size() + " pairs");
        }
        this.components = components.toArray(HelmholtzModel[]::new);
        int[] first = pairs.stream().mapToInt(BinaryPair::first).toArray();
        int[] second = pairs.stream().mapToInt(BinaryPair::second).toArray();
        temperature = new ReducingFunction(
                components.stream()
                        .mapToDouble(HelmholtzModel::reducingTemperature)
                        .toArray(),
                first,
                second,
                pairs.stream().mapToDouble(this::temperatureFactor).toArray(),
                pairs.stream().mapToDouble(p -> p.betaT() * p.betaT()).toArray());
        volume = new ReducingFunction(
                components.stream().mapToDouble(c -> 1 / c.reducingDensity()).toArray(),
                first,
                second,
                pairs.stream().mapToDouble(this::volumeFactor).toArray(),
                pairs.stream().mapToDouble(p -> p.betaV() * p.betaV()).toArray());
        departures = pairs.stream()
                .filter(p -> p.weight() != 0 && !p.departure().isEmpty())
                .map(p -> new Departure(p.first(), p.second(), p.weight(), new ResidualHelmholtz(p.departure())))
                .toArray(Departure[]::new);
    }

    /** Kunz and Wagner (2012), eq. 7.9. */
    private double temperatureFactor(BinaryPair p) {
        double product = components[p.first()].reducingTemperature() * components[p.second()].reducingTemperature();
        return 2 * p.betaT() * p.gammaT() * Math.sqrt(product);
    }

    /** Kunz and Wagner (2012), eq. 7.10. */
    private double volumeFactor(BinaryPair p) {
        double sum = Math.cbrt(1 / components[p.first()].reducingDensity())
                + Math.cbrt(1 / components[p.second()].reducingDensity());
        return 2 * p.betaV() * p.gammaV() * sum * sum * sum / 8;
    }

    /** Number of components. */
    public int size() {
        return components.length;
    }

    /** The equation of one composition with every term merged into one list. */
    public HelmholtzModel at(double[] moleFractions) {
        double tr = temperature.value(moleFractions);
        double rhor = 1 / volume.value(moleFractions);
        List<IdealHelmholtz.Share> shares = new ArrayList<>();
        List<ResidualTerm> terms = new ArrayList<>();
        for (int i = 0; i < components.length; i++) {
            HelmholtzModel c = components[i];
            double x = moleFractions[i];
            shares.add(
                    new IdealHelmholtz.Share(c.ideal(), x, c.reducingTemperature() / tr, rhor / c.reducingDensity()));
            terms.addAll(c.residual().scaledTerms(x));
        }
        for (Departure d : departures) {
            terms.addAll(d.function().scaledTerms(d.weight() * moleFractions[d.first()] * moleFractions[d.second()]));
        }
        return new HelmholtzModel(GAS_CONSTANT, tr, rhor, IdealHelmholtz.mixture(shares), new ResidualHelmholtz(terms));
    }

    /**
     * One phase.
     *
     * @param temperature K
     * @param densities amount of each component per volume, mol/m3, all positive
     */
    public MixturePhase phase(double temperature, double[] densities) {
        return new MixturePhase(this, temperature, densities.clone());
    }
}
