package io.loopstate.engine.fluid;

import io.loopstate.engine.eos.IdealHelmholtz;
import io.loopstate.engine.eos.ResidualTerm;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Turns the term lists of a coefficient file into terms of the equation of state. */
final class TermReader {
    private TermReader() {}

    static List<ResidualTerm> residual(List<JsonObject> groups) {
        List<ResidualTerm> terms = new ArrayList<>();
        groups.forEach(group -> addResidual(group, terms));
        return terms;
    }

    private static void addResidual(JsonObject group, List<ResidualTerm> terms) {
        double[] n = group.numbers("n");
        Columns column = new Columns(group, n.length);
        for (int k = 0; k < n.length; k++) {
            terms.add(
                    switch (group.text("form")) {
                        case "power" ->
                            ResidualTerm.power(
                                    n[k],
                                    column.integer("d", k),
                                    column.number("t", k),
                                    group.has("c") ? column.number("c", k) : 1,
                                    column.integer("l", k));
                        case "gaussian" ->
                            ResidualTerm.gaussian(
                                    n[k],
                                    column.integer("d", k),
                                    column.number("t", k),
                                    column.number("eta", k),
                                    column.number("epsilon", k),
                                    column.number("beta", k),
                                    column.number("gamma", k));
                        case "double-exponential" ->
                            ResidualTerm.doubleExponential(
                                    n[k],
                                    column.integer("d", k),
                                    column.number("t", k),
                                    column.integer("l", k),
                                    column.number("m", k));
                        case "gao-b" ->
                            ResidualTerm.associating(
                                    n[k],
                                    column.integer("d", k),
                                    column.number("t", k),
                                    column.number("eta", k),
                                    column.number("epsilon", k),
                                    column.number("beta", k),
                                    column.number("gamma", k),
                                    column.number("b", k));
                        case "gerg" ->
                            ResidualTerm.kunzWagner(
                                    n[k],
                                    column.integer("d", k),
                                    column.number("t", k),
                                    column.number("eta", k),
                                    column.number("epsilon", k),
                                    column.number("beta", k),
                                    column.number("gamma", k));
                        case "non-analytic" ->
                            new ResidualTerm.NonAnalytic(
                                    n[k],
                                    column.number("a", k),
                                    column.number("b", k),
                                    column.number("beta", k),
                                    column.number("A", k),
                                    column.number("B", k),
                                    column.number("C", k),
                                    column.number("D", k));
                        default -> throw new IllegalArgumentException("unknown residual form " + group.text("form"));
                    });
        }
    }

    static IdealHelmholtz ideal(List<JsonObject> groups) {
        double a1 = 0;
        double a2 = 0;
        double logTau = 0;
        List<double[]> powers = new ArrayList<>();
        List<double[]> einstein = new ArrayList<>();
        for (JsonObject group : groups) {
            switch (group.text("form")) {
                case "lead" -> {
                    a1 += group.number("a1");
                    a2 += group.number("a2");
                }
                case "log-tau" -> logTau += group.number("a");
                case "power-tau" -> {
                    double[] n = group.numbers("n");
                    double[] t = group.numbers("t");
                    for (int k = 0; k < n.length; k++) {
                        powers.add(new double[] {n[k], t[k]});
                    }
                }
                case "planck-einstein" -> {
                    double[] n = group.numbers("n");
                    double[] theta = group.numbers("theta");
                    double[] c = group.has("c") ? group.numbers("c") : filled(n.length, -1);
                    for (int k = 0; k < n.length; k++) {
                        einstein.add(new double[] {n[k], c[k], theta[k]});
                    }
                }
                default -> throw new IllegalArgumentException("unknown ideal form " + group.text("form"));
            }
        }
        return IdealHelmholtz.of(a1, a2, logTau, powers.toArray(double[][]::new), einstein.toArray(double[][]::new));
    }

    private static double[] filled(int length, double value) {
        double[] array = new double[length];
        Arrays.fill(array, value);
        return array;
    }

    /** Parallel arrays of one group, all of the length of n. */
    private record Columns(JsonObject group, int length) {
        double number(String name, int k) {
            double[] column = group.numbers(name);
            if (column.length != length) {
                throw new IllegalArgumentException("array " + name + " is not as long as n");
            }
            return column[k];
        }

        int integer(String name, int k) {
            double value = number(name, k);
            if (value != Math.rint(value)) {
                throw new IllegalArgumentException(name + " = " + value + " is not an integer");
            }
            return (int) value;
        }
    }
}
