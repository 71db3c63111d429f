package io.loopstate.web.verification;

import com.fasterxml.jackson.core.JsonPointer;
import io.loopstate.units.UnitToken;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A number as printed, and where the reply has it.
 *
 * @param column name of the quantity in its table
 * @param pointer place in the reply
 * @param unit of the number; per mass where the print is per mole; empty for a plain number
 * @param molarMass g/mol, where the print is per mole
 * @param printed digit for digit
 * @param digit unit of the last printed digit
 * @param allowed largest difference known, in the unit of the print; empty where the value has to round to the print
 * @param reason why it is known to deviate; empty where it has to round to the print
 */
record PublishedValue(
        String column,
        JsonPointer pointer,
        Optional<UnitToken> unit,
        OptionalDouble molarMass,
        String printed,
        double digit,
        OptionalDouble allowed,
        String reason) {

    private static final double HALF = 0.5;

    /** The number printed. */
    double number() {
        return new BigDecimal(printed).doubleValue();
    }

    /** A number in the unit of the print. */
    double asPrinted(double perMass) {
        if (molarMass.isEmpty()) {
            return perMass;
        }
        // kg/m3 over g/mol is mol/L; kJ/kg times g/mol is J/mol
        boolean density = unit.orElseThrow().name().equals("kg_per_m3");
        return density ? perMass / molarMass.getAsDouble() : perMass * molarMass.getAsDouble();
    }

    /** The unit of the print in ASCII; {@code ratio} for a plain number. */
    String printedUnit() {
        String own = unit.map(UnitToken::name).orElse("ratio");
        return molarMass.isEmpty()
                ? own
                : own.equals("kg_per_m3") ? "mol_per_L" : own.replace("kJ_per_kg", "J_per_mol");
    }

    /** A difference in half units of the last printed digit. */
    double deviation(double calculated) {
        return Math.abs(calculated - number()) / (HALF * digit);
    }
}
