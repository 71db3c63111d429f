package io.loopstate.reference;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/**
 * The Helmholtz energy of a coefficient file, term by term as the papers print the forms: slow, without derivatives, and
 * sharing no line with the engine.
 */
final class PlainHelmholtz {
    private interface Term {
        double at(double tau, double delta);
    }

    private final List<Term> ideal = new ArrayList<>();
    private final List<Term> residual = new ArrayList<>();

    /** The energy of a fluid. */
    static PlainHelmholtz of(CoefficientFile file) {
        return new PlainHelmholtz(file.json().get("ideal"), file.json().get("residual"));
    }

    /**
     * @param ideal groups of terms as in the coefficient files
     * @param residual likewise
     */
    PlainHelmholtz(Iterable<JsonNode> ideal, Iterable<JsonNode> residual) {
        ideal.forEach(this::addIdeal);
        residual.forEach(this::addResidual);
    }

    /**
     * A sum with the sum of the terms' absolute values, to which rounding is proportional.
     *
     * @param value the sum itself
     * @param magnitude of absolute values
     */
    record Sum(double value, double magnitude) {}

    /** alphar. */
    Sum residual(double tau, double delta) {
        return sum(residual, tau, delta);
    }

    /** alpha0 - ln(delta). */
    Sum ideal(double tau) {
        return sum(ideal, tau, Double.NaN);
    }

    private static Sum sum(List<Term> terms, double tau, double delta) {
        double value = 0;
        double magnitude = 0;
        for (Term term : terms) {
            double t = term.at(tau, delta);
            value += t;
            magnitude += Math.abs(t);
        }
        return new Sum(value, magnitude);
    }

    private void addIdeal(JsonNode group) {
        String form = group.get("form").asText();
        switch (form) {
            case "lead" -> {
                double a1 = group.get("a1").asDouble();
                double a2 = group.get("a2").asDouble();
                ideal.add((tau, delta) -> a1);
                ideal.add((tau, delta) -> a2 * tau);
            }
            case "log-tau" -> {
                double a = group.get("a").asDouble();
                ideal.add((tau, delta) -> a * Math.log(tau));
            }
            case "power-tau", "planck-einstein" -> {
                for (int k = 0; k < group.get("n").size(); k++) {
                    ideal.add(form.equals("power-tau") ? power(group, k) : einstein(group, k));
                }
            }
            default -> throw new IllegalArgumentException(form);
        }
    }

    private static Term power(JsonNode group, int k) {
        double n = at(group, "n", k);
        double t = at(group, "t", k);
        return (tau, delta) -> n * Math.pow(tau, t);
    }

    private static Term einstein(JsonNode group, int k) {
        double n = at(group, "n", k);
        double theta = at(group, "theta", k);
        double c = group.has("c") ? at(group, "c", k) : -1;
        return (tau, delta) -> n * Math.log(1 + c * Math.exp(-theta * tau));
    }

    private void addResidual(JsonNode group) {
        for (int k = 0; k < group.get("n").size(); k++) {
            residual.add(
                    group.get("form").asText().equals("non-analytic") ? nonAnalytic(group, k) : separable(group, k));
        }
    }

    /** n delta^d tau^t and the exponential of its form. */
    private static Term separable(JsonNode group, int k) {
        double n = at(group, "n", k);
        double d = at(group, "d", k);
        double t = at(group, "t", k);
        Term exponent = exponent(group, k);
        return (tau, delta) -> n * Math.pow(delta, d) * Math.pow(tau, t) * Math.exp(exponent.at(tau, delta));
    }

    private static Term exponent(JsonNode group, int k) {
        return switch (group.get("form").asText()) {
            case "power" -> {
                double l = at(group, "l", k);
                double c = group.has("c") ? at(group, "c", k) : 1;
                yield l == 0 ? (tau, delta) -> 0 : (tau, delta) -> -c * Math.pow(delta, l);
            }
            case "double-exponential" -> {
                double l = at(group, "l", k);
                double m = at(group, "m", k);
                yield (tau, delta) -> -Math.pow(delta, l) - Math.pow(tau, m);
            }
            case "gaussian" -> bell(group, k, (beta, tau, delta, gamma) -> -beta * Math.pow(tau - gamma, 2));
            case "gerg" -> bell(group, k, (beta, tau, delta, gamma) -> -beta * (delta - gamma));
            case "gao-b" -> {
                double b = at(group, "b", k);
                yield bell(group, k, (beta, tau, delta, gamma) -> 1 / (beta * Math.pow(tau - gamma, 2) + b));
            }
            default -> throw new IllegalArgumentException(group.get("form").asText());
        };
    }

    private interface SecondPart {
        double at(double beta, double tau, double delta, double gamma);
    }

    private static Term bell(JsonNode group, int k, SecondPart second) {
        double eta = at(group, "eta", k);
        double epsilon = at(group, "epsilon", k);
        double beta = at(group, "beta", k);
        double gamma = at(group, "gamma", k);
        return (tau, delta) -> -eta * Math.pow(delta - epsilon, 2) + second.at(beta, tau, delta, gamma);
    }

    /** Span and Wagner (1996), eq. (6.1) and what follows it. */
    private static Term nonAnalytic(JsonNode group, int k) {
        double n = at(group, "n", k);
        double a = at(group, "a", k);
        double b = at(group, "b", k);
        double beta = at(group, "beta", k);
        double capitalA = at(group, "A", k);
        double capitalB = at(group, "B", k);
        double c = at(group, "C", k);
        double d = at(group, "D", k);
        return (tau, delta) -> {
            double square = Math.pow(delta - 1, 2);
            double theta = (1 - tau) + capitalA * Math.pow(square, 1 / (2 * beta));
            double distance = theta * theta + capitalB * Math.pow(square, a);
            double psi = Math.exp(-c * square - d * Math.pow(tau - 1, 2));
            return n * Math.pow(distance, b) * delta * psi;
        };
    }

    private static double at(JsonNode group, String name, int k) {
        return group.get(name).get(k).asDouble();
    }
}
