package io.loopstate.engine.compression;

import io.loopstate.engine.compression.Displacer.Stroke;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.Objects;

/**
 * A compressor by its displacement: what moves the vapor, and the motor that drives it. The heat of a motor in the suction vapor
 * makes the vapor thinner and so acts back on flow and work; that loop is solved to 1e-13.
 *
 * @param displacer what moves the vapor
 * @param drive motor and transmission
 */
public record Machine(Displacer displacer, Drive drive) implements CompressorUnit {
    private static final double TOLERANCE = 1e-13;
    private static final int MAX_ITERATIONS = 60;
    /** Share of the absolute temperature; what is more tells of a machine that hardly runs. */
    private static final double MOST_RISE = 0.5;

    public Machine {
        Objects.requireNonNull(displacer);
        Objects.requireNonNull(drive);
    }

    @Override
    public Running run(Equilibrium equilibrium, State suction, double dischargePressure) {
        return detail(equilibrium, suction, dischargePressure).running();
    }

    /**
     * Powers and losses, W; loss of motor, drive and shell each where it arises.
     *
     * @param suction state at the suction port
     * @param port state before the cylinder, warmed by a motor in the suction vapor
     * @param stroke what happens inside
     * @param indicatedPower on the vapor
     * @param shaftPower at the compressor's shaft
     * @param electricalPower at the terminals
     * @param motorLoss wherever it goes
     * @param driveLoss to the surroundings
     * @param shellLoss given off by the shell and by a cooled cylinder
     * @param running the summary
     */
    record Detail(
            State suction,
            State port,
            Stroke stroke,
            double indicatedPower,
            double shaftPower,
            double electricalPower,
            double motorLoss,
            double driveLoss,
            double shellLoss,
            Running running) {}

    Detail detail(Equilibrium equilibrium, State suction, double dischargePressure) {
        boolean warming = drive.cooling() == MotorCooling.SUCTION_GAS && drive.motorEfficiency() < 1;
        State port = warming ? warmed(equilibrium, suction, dischargePressure) : suction;
        Stroke stroke = displacer.stroke(equilibrium, port, dischargePressure);
        double indicated = stroke.massFlow() * stroke.work();
        double shaft = indicated / drive.mechanicalEfficiency();
        double motorOutput = shaft / drive.driveEfficiency();
        double electrical = motorOutput / drive.motorEfficiency();
        double motorLoss = electrical - motorOutput;
        boolean motorOutside = drive.cooling() == MotorCooling.SURROUNDINGS;
        double housed = motorOutside ? shaft : electrical;
        double shellLoss = drive.heatLossFraction() * housed + stroke.massFlow() * stroke.heat();
        double driveLoss = motorOutput - shaft;
        double heatLoss = shellLoss + driveLoss + (motorOutside ? motorLoss : 0);
        State discharge = equilibrium.atPressureEnthalpy(
                dischargePressure, suction.specificEnthalpy() + (electrical - heatLoss) / stroke.massFlow());
        return new Detail(
                suction,
                port,
                stroke,
                indicated,
                shaft,
                electrical,
                motorLoss,
                driveLoss,
                shellLoss,
                new Running(stroke.massFlow(), shaft, electrical, discharge, heatLoss));
    }

    /** The suction vapor after the motor's heat, which depends on the work that it makes necessary: a secant iteration. */
    private State warmed(Equilibrium equilibrium, State suction, double dischargePressure) {
        double share = drive.motorLossShare() / drive.mechanicalEfficiency();
        double before = 0;
        double miss = share * displacer.work(equilibrium, suction, dischargePressure);
        double heat = miss * feedback(suction, miss);
        for (int k = 0; k < MAX_ITERATIONS; k++) {
            State port = equilibrium.atPressureEnthalpy(suction.pressure(), suction.specificEnthalpy() + heat);
            double next = share * displacer.work(equilibrium, port, dischargePressure) - heat;
            if (Math.abs(next) <= TOLERANCE * heat || next == miss) {
                return port;
            }
            double better = heat - next * (heat - before) / (next - miss);
            double step = Math.abs(better - heat);
            // A secant step misses by about the product of the last two steps.
            if (step <= TOLERANCE * heat || step * Math.abs(heat - before) <= TOLERANCE * heat * heat) {
                return equilibrium.atPressureEnthalpy(suction.pressure(), suction.specificEnthalpy() + better);
            }
            before = heat;
            miss = next;
            heat = better;
        }
        throw EngineException.of(ErrorCode.NOT_CONVERGED, "motor heat in the suction vapor");
    }

    /** How much more heat there is than the work of cold vapor makes, if work rises as the absolute temperature does: to start with. */
    private static double feedback(State suction, double heat) {
        double rise = heat / (suction.isobaricHeatCapacity() * suction.temperature());
        return rise < MOST_RISE ? 1 / (1 - rise) : 1;
    }
}
