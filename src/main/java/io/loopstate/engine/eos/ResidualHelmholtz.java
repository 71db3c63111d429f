package io.loopstate.engine.eos;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Residual Helmholtz energy: the published terms, compiled so that each distinct function is computed once.
 *
 * <p>A separable term is n F(tau) G(delta). Terms with the same F share one exponential when the temperature is set; then
 * all terms with the same G collapse into one coefficient, and a density iteration at that temperature costs a few powers
 * of delta and one exponential per distinct envelope.
 */
public final class ResidualHelmholtz {
    /** Temperature functions: exponent of tau, and index of the envelope. */
    private final double[] tauExponent;

    private final int[] tauEnvelope;
    private final TauFactor.Envelope[] envelopes;

    /** Terms: coefficient, index of the temperature function, index of the density function. */
    private final double[] n;

    private final int[] tauIndex;
    private final int[] deltaIndex;

    final DensityFunctions density;
    final NonAnalyticTerms nonAnalytic;
    /** As published, for equations that contain this one. */
    private final List<ResidualTerm> terms;

    public ResidualHelmholtz(List<ResidualTerm> terms) {
        this.terms = List.copyOf(terms);
        List<ResidualTerm.Separable> separable = ofType(terms, ResidualTerm.Separable.class);
        nonAnalytic = new NonAnalyticTerms(ofType(terms, ResidualTerm.NonAnalytic.class));

        List<TauFactor> factors = separable.stream()
                .map(ResidualTerm.Separable::temperature)
                .distinct()
                .toList();
        List<TauFactor.Envelope> distinct =
                factors.stream().map(TauFactor::envelope).distinct().toList();
        tauExponent = factors.stream().mapToDouble(TauFactor::t).toArray();
        tauEnvelope =
                factors.stream().mapToInt(f -> distinct.indexOf(f.envelope())).toArray();
        envelopes = distinct.toArray(TauFactor.Envelope[]::new);

        List<DeltaEnvelope> order = separable.stream()
                .map(ResidualTerm.Separable::density)
                .distinct()
                .toList();
        List<DensityFunctions.Function> functions = separable.stream()
                .map(s -> new DensityFunctions.Function(s.d(), s.density()))
                .distinct()
                .sorted(Comparator.comparingInt((DensityFunctions.Function f) -> order.indexOf(f.envelope()))
                        .thenComparingInt(DensityFunctions.Function::d))
                .toList();
        density = new DensityFunctions(functions);

        n = separable.stream().mapToDouble(ResidualTerm.Separable::n).toArray();
        tauIndex = separable.stream()
                .mapToInt(s -> factors.indexOf(s.temperature()))
                .toArray();
        deltaIndex = separable.stream()
                .mapToInt(s -> functions.indexOf(new DensityFunctions.Function(s.d(), s.density())))
                .toArray();
    }

    /** The terms, each multiplied by a factor. */
    List<ResidualTerm> scaledTerms(double factor) {
        return terms.stream().map(term -> term.scaled(factor)).toList();
    }

    /** All derivatives up to the second at one temperature and density. */
    Derivatives derivatives(double tau, double delta) {
        return at(tau).derivatives(delta);
    }

    private static <T> List<T> ofType(List<ResidualTerm> terms, Class<T> type) {
        List<T> found = new ArrayList<>();
        terms.stream().filter(type::isInstance).map(type::cast).forEach(found::add);
        return found;
    }

    /** The residual energy along one isotherm. */
    ResidualIsotherm at(double tau) {
        double[] value = new double[envelopes.length];
        double[] slope = new double[envelopes.length];
        double[] curvature = new double[envelopes.length];
        for (int e = 0; e < envelopes.length; e++) {
            value[e] = envelopes[e].exponent(tau);
            slope[e] = envelopes[e].slope(tau);
            curvature[e] = envelopes[e].curvature(tau);
        }
        double logTau = Math.log(tau);
        double[] factor = new double[tauExponent.length];
        for (int j = 0; j < factor.length; j++) {
            factor[j] = Math.exp(tauExponent[j] * logTau + value[tauEnvelope[j]]);
        }
        int size = density.size();
        double[] a = new double[size];
        double[] a1 = new double[size];
        double[] a2 = new double[size];
        for (int k = 0; k < n.length; k++) {
            int j = tauIndex[k];
            int i = deltaIndex[k];
            int e = tauEnvelope[j];
            double term = n[k] * factor[j];
            double log1 = tauExponent[j] + slope[e];
            a[i] += term;
            a1[i] += term * log1;
            a2[i] += term * (log1 * (log1 - 1) + curvature[e]);
        }
        return new ResidualIsotherm(this, tau, a, a1, a2);
    }
}
