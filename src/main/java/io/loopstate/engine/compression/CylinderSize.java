package io.loopstate.engine.compression;

import io.loopstate.engine.component.Require;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;

/**
 * Size of the cylinders of a reciprocating compressor.
 *
 * @param bore m
 * @param stroke m
 * @param cylinders 1 or more
 * @param doubleActing whether both faces of a piston compress
 * @param rodDiameter m, of the rod that takes its area from the second face; 0 or more, below the bore
 */
public record CylinderSize(double bore, double stroke, int cylinders, boolean doubleActing, double rodDiameter) {
    public CylinderSize {
        Require.positive("bore", bore);
        Require.positive("stroke", stroke);
        Require.positive("cylinders", cylinders);
        Require.notNegative("rodDiameter", rodDiameter);
        if (rodDiameter >= bore) {
            throw EngineException.of(
                    ErrorCode.IMPOSSIBLE_VALUE,
                    "A piston rod is thinner than its cylinder.",
                    "rodDiameter",
                    rodDiameter,
                    0,
                    bore);
        }
    }

    /** m3 swept in one revolution: pi/4 D^2 L for each face that compresses, less the rod. */
    public double volumePerRevolution() {
        double faces = doubleActing ? 2 * bore * bore - rodDiameter * rodDiameter : bore * bore;
        return Math.PI / 4 * faces * stroke * cylinders;
    }

    /** The cylinders that sweep a volume (m3) in a revolution with a ratio of stroke to bore; rods are not counted. */
    public static CylinderSize of(double volume, int cylinders, double strokeToBore, boolean doubleActing) {
        Require.positive("strokeToBoreRatio", strokeToBore);
        int faces = doubleActing ? 2 : 1;
        double bore = Math.cbrt(4 * volume / (Math.PI * strokeToBore * cylinders * faces));
        return new CylinderSize(bore, strokeToBore * bore, cylinders, doubleActing, 0);
    }
}
