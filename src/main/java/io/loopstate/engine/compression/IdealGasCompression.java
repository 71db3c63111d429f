package io.loopstate.engine.compression;

import io.loopstate.engine.compression.CompressionProcess.IdealGas;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.Optional;

/**
 * The formulas of an ideal gas with constant heat capacities, as they stand in textbooks, with p v / Z for R T and cp / cv of
 * the suction. For comparison only. Source: M. J. Moran, H. N. Shapiro, Fundamentals of Engineering Thermodynamics, chapter 6
 * (from memory).
 */
final class IdealGasCompression {
    private IdealGasCompression() {}

    static Optional<IdealGas> of(ProcessEnds ends, ProcessMeasure measure) {
        State inlet = ends.inlet();
        if (inlet.phase() == Phase.TWO_PHASE || Double.isNaN(inlet.isobaricHeatCapacity())) {
            return Optional.empty();
        }
        double t1 = inlet.temperature();
        double gasConstant = inlet.pressure() * inlet.specificVolume() / (inlet.compressibilityFactor() * t1);
        double k = inlet.isobaricHeatCapacity() / inlet.isochoricHeatCapacity();
        double heatCapacity = gasConstant * k / (k - 1);
        double ratio = ends.pressureRatio();
        double rise = t1 * Math.expm1((k - 1) / k * Math.log(ratio));
        double isentropicWork = heatCapacity * rise;
        double value = measure.value();
        double index = k;
        double temperature;
        double work;
        switch (measure.kind()) {
            case ISENTROPIC_EFFICIENCY -> {
                temperature = t1 + rise / value * (1 - ends.heatLoss() / ends.work());
                work = isentropicWork / value;
            }
            case POLYTROPIC_EFFICIENCY -> {
                double exponent = (k - 1) / k * (1 - ends.heatLoss() / ends.work()) / value;
                index = 1 / (1 - exponent);
                temperature = t1 * Math.pow(ratio, exponent);
                work = heatCapacity * (temperature - t1) / (1 - ends.heatLoss() / ends.work());
            }
            case POLYTROPIC_INDEX -> {
                index = value;
                temperature = t1 * Math.pow(ratio, (index - 1) / index);
                work = Math.max(
                        IndexPath.flowWork(1, gasConstant * t1, ratio, index), heatCapacity * (temperature - t1));
            }
            default -> {
                temperature = value;
                index = Math.log(ratio) / (Math.log(ratio) - Math.log(value / t1));
                work = heatCapacity * (value - t1) / (1 - ends.heatLoss() / ends.work());
            }
        }
        return Optional.of(new IdealGas(
                gasConstant, k, index, temperature, work, isentropicWork, gasConstant * t1 * Math.log(ratio)));
    }
}
