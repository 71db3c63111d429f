package io.loopstate.engine.cycle;

import java.util.Map;
import java.util.function.DoubleBinaryOperator;

/** Evaluates the right-hand side of a step's formula: numbers, symbols, the four operations and parentheses. */
final class Arithmetic {
    private final String text;
    private final Map<String, Double> values;
    private int at;

    private Arithmetic(String text, Map<String, Double> values) {
        this.text = text.replace(" ", "");
        this.values = values;
    }

    static double evaluate(String text, Map<String, Double> values) {
        Arithmetic arithmetic = new Arithmetic(text, values);
        double value = arithmetic.sum();
        if (arithmetic.at != arithmetic.text.length()) {
            throw new IllegalArgumentException(text + " at " + arithmetic.at);
        }
        return value;
    }

    private double sum() {
        double value = product();
        while (at < text.length() && "+-".indexOf(text.charAt(at)) >= 0) {
            DoubleBinaryOperator operator = text.charAt(at++) == '+' ? Double::sum : (a, b) -> a - b;
            value = operator.applyAsDouble(value, product());
        }
        return value;
    }

    private double product() {
        double value = factor();
        while (at < text.length() && "*/".indexOf(text.charAt(at)) >= 0) {
            DoubleBinaryOperator operator = text.charAt(at++) == '*' ? (a, b) -> a * b : (a, b) -> a / b;
            value = operator.applyAsDouble(value, factor());
        }
        return value;
    }

    private double factor() {
        if (text.charAt(at) == '(') {
            at++;
            double value = sum();
            at++;
            return value;
        }
        int start = at;
        while (at < text.length() && "+-*/()".indexOf(text.charAt(at)) < 0) {
            at++;
        }
        String token = text.substring(start, at);
        return values.containsKey(token) ? values.get(token) : Double.parseDouble(token);
    }
}
