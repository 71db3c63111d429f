package io.loopstate.fuzz;

import io.loopstate.engine.fluid.Catalog;
import io.loopstate.testing.Garble;
import io.loopstate.units.QuantityKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/** Texts that are nearly what they should be: numbers, quantities, names of refrigerants, compositions. Not for several threads. */
final class RandomTexts {
    private static final List<String> ODD_NUMBERS = List.of(
            "0",
            "-0",
            "+5",
            "--1",
            "1e",
            "e5",
            ".",
            "1.",
            ".5",
            "1e-300",
            "1e300",
            "1e999",
            "-1e999",
            "5e-324",
            "NaN",
            "Infinity",
            "-inf",
            "0x10",
            "1_000",
            "1,5",
            "1.000,5",
            "1 000",
            "99999999999999999999999999",
            "１２",
            "٣",
            "½",
            "");
    private static final String PIECES =
            "0123456789.,+-eE /\\()[]{}\"'%&=?_°ºΔµ²³·×√∞\u00a0\u200b\u202e\u0000\t\nabcdefgRTpsiKCFvaknomlxzé😀";
    private static final List<String> UNITS = Stream.of(QuantityKind.values())
            .flatMap(kind -> kind.units().stream())
            .map(unit -> unit.name())
            .distinct()
            .toList();
    private static final Catalog CATALOG = Catalog.bundled();
    private static final List<String> FLUIDS = List.copyOf(CATALOG.designations());
    private static final List<String> BLENDS = List.copyOf(CATALOG.blendDesignations());
    private static final double DECADES = 20;

    private final Random random;

    RandomTexts(Random random) {
        this.random = random;
    }

    <T> T any(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    boolean chance(double share) {
        return random.nextDouble() < share;
    }

    /** A number, most of the time one that can be read. */
    String number() {
        return switch (random.nextInt(8)) {
            case 0 -> any(ODD_NUMBERS);
            case 1 -> Integer.toString(random.nextInt(500) - 100);
            case 2 -> Double.toString(Math.pow(10, DECADES * (random.nextDouble() - 0.5)));
            case 3 -> Double.toString(random.nextGaussian());
            case 4 -> Double.toString(Double.longBitsToDouble(random.nextLong()));
            default -> Double.toString(Math.round(random.nextDouble() * 4000) / 10.0);
        };
    }

    String unit() {
        return chance(0.9) ? any(UNITS) : garbled(any(UNITS));
    }

    String quantity() {
        return quantity(unit());
    }

    /** Most of the time with a unit of the kind. */
    String quantity(QuantityKind kind) {
        return quantity(chance(0.7) ? any(kind.units()).name() : unit());
    }

    private String quantity(String unit) {
        String text = number() + (chance(0.8) ? " " : "") + unit;
        return chance(0.3) ? garbled(text) : text;
    }

    String refrigerant() {
        return switch (random.nextInt(10)) {
            case 0 -> garbled(any(FLUIDS));
            case 1, 2 -> composition();
            case 3, 4 -> any(BLENDS);
            default -> any(FLUIDS);
        };
    }

    /** A composition of a client's own, which may be none. */
    String composition() {
        int components = 1 + random.nextInt(chance(0.1) ? 12 : 4);
        List<String> names = new ArrayList<>();
        List<String> shares = new ArrayList<>();
        double left = 100;
        for (int i = 0; i < components; i++) {
            names.add(chance(0.95) ? any(FLUIDS) : garbled(any(FLUIDS)));
            double share = i == components - 1 ? left : Math.round(left * random.nextDouble() * 10) / 10.0;
            left -= share;
            shares.add(chance(0.95) ? Double.toString(Math.round(share * 1e6) / 1e6) : number());
        }
        String text = String.join("/", names) + (chance(0.9) ? " (" : "(") + String.join("/", shares) + ")";
        return chance(0.2) ? garbled(text) : text;
    }

    String garbled(String text) {
        return Garble.of(text, PIECES, random);
    }

    /** Nothing that was ever meant as anything. */
    String noise() {
        StringBuilder noise = new StringBuilder();
        int length = random.nextInt(80);
        for (int i = 0; i < length; i++) {
            noise.append(chance(0.9) ? PIECES.charAt(random.nextInt(PIECES.length())) : (char) random.nextInt(0x10000));
        }
        return noise.toString();
    }
}
