package io.loopstate.engine.compression;

import io.loopstate.engine.component.Require;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.Inputs;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/** A closed cylinder of gas, compressed or expanded, as it stands in a classroom. The fluid is real on every path. */
public final class ClosedCylinder {
    private static final double SAME = 1e-12;

    private ClosedCylinder() {}

    /** How the volume is changed. */
    public enum Path {
        /** Slowly, the walls keeping the temperature. */
        ISOTHERMAL,
        /** Quickly and without loss: no heat, constant entropy. */
        ADIABATIC,
        /** p v^n = constant. */
        POLYTROPIC,
        /** Into a vacuum: no work, no heat, constant internal energy. */
        FREE_EXPANSION
    }

    /**
     * The end and the way there.
     *
     * @throws EngineException where there is no such state; it names {@code initial}, {@code final}, or {@code path}
     */
    public static Result calculate(Spec spec) {
        State start = Inputs.trace(
                "initial", () -> spec.equilibrium().atPressureTemperature(spec.pressure(), spec.temperature()));
        State end = Inputs.trace("final", () -> end(spec, start));
        requireDirection(spec, start, end);
        double mass = spec.volume() * start.density();
        double index = spec.index().orElse(1);
        double work = mass * work(spec.path(), index, start, end);
        double energy = mass * (end.specificInternalEnergy() - start.specificInternalEnergy());
        double air = spec.path() == Path.FREE_EXPANSION
                ? 0
                : spec.atmosphericPressure() * (spec.volume() - mass * end.specificVolume());
        Figures figures = new Figures(
                mass,
                spec.volume(),
                mass * end.specificVolume(),
                end.pressure() / start.pressure(),
                end.specificVolume() / start.specificVolume(),
                work,
                energy - work,
                energy,
                air,
                work - air,
                IndexPath.between(start, end));
        return new Result(
                start,
                end,
                figures,
                ideal(spec, start, end),
                points(spec, start, end, mass),
                CylinderFindings.of(spec, start, end),
                spec.explain() ? CylinderWorking.of(spec, start, end, figures) : List.of());
    }

    private static State end(Spec spec, State start) {
        double index = spec.index().orElse(1);
        if (spec.finalVolume().isPresent()) {
            double density =
                    start.density() * spec.volume() / spec.finalVolume().getAsDouble();
            return atDensity(spec.equilibrium(), spec.path(), index, start, density);
        }
        double pressure = spec.finalPressure().orElseThrow();
        return switch (spec.path()) {
            case ISOTHERMAL -> spec.equilibrium().atPressureTemperature(pressure, start.temperature());
            case ADIABATIC -> spec.equilibrium().atPressureEntropy(pressure, start.specificEntropy());
            case POLYTROPIC ->
                spec.equilibrium()
                        .state(
                                Variable.PRESSURE,
                                pressure,
                                Variable.DENSITY,
                                start.density() * Math.pow(pressure / start.pressure(), 1 / index));
            case FREE_EXPANSION ->
                spec.equilibrium()
                        .state(
                                Variable.PRESSURE,
                                pressure,
                                Variable.SPECIFIC_INTERNAL_ENERGY,
                                start.specificInternalEnergy());
        };
    }

    private static State atDensity(Equilibrium equilibrium, Path path, double index, State start, double density) {
        return switch (path) {
            case ISOTHERMAL -> equilibrium.state(Variable.TEMPERATURE, start.temperature(), Variable.DENSITY, density);
            case ADIABATIC ->
                equilibrium.state(Variable.DENSITY, density, Variable.SPECIFIC_ENTROPY, start.specificEntropy());
            case POLYTROPIC ->
                equilibrium.state(
                        Variable.PRESSURE,
                        start.pressure() * Math.pow(density / start.density(), index),
                        Variable.DENSITY,
                        density);
            case FREE_EXPANSION ->
                equilibrium.state(
                        Variable.DENSITY, density, Variable.SPECIFIC_INTERNAL_ENERGY, start.specificInternalEnergy());
        };
    }

    /** Work done on the gas, J/kg: the integral of -p dv along a reversible path. */
    private static double work(Path path, double index, State start, State end) {
        double energy = end.specificInternalEnergy() - start.specificInternalEnergy();
        return switch (path) {
            case ISOTHERMAL -> energy - start.temperature() * (end.specificEntropy() - start.specificEntropy());
            case ADIABATIC -> energy;
            case POLYTROPIC ->
                IndexPath.closedWork(
                        start.pressure(), start.specificVolume(), start.specificVolume() / end.specificVolume(), index);
            case FREE_EXPANSION -> 0;
        };
    }

    private static void requireDirection(Spec spec, State start, State end) {
        if (spec.path() == Path.FREE_EXPANSION && end.specificVolume() < start.specificVolume()) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS, "Gas let into a vacuum takes up more room, not less.")
                    .about("final");
        }
        if (Math.abs(end.specificVolume() / start.specificVolume() - 1) < SAME) {
            throw EngineException.of(ErrorCode.CONTRADICTORY_INPUTS, "The end is the start: nothing is compressed.")
                    .about("final");
        }
    }

    /** Equal ratios of volume; a gas let into a vacuum has no states between. */
    private static List<PathPoint> points(Spec spec, State start, State end, double mass) {
        List<PathPoint> points = new ArrayList<>();
        points.add(new PathPoint(spec.volume(), start));
        if (spec.path() != Path.FREE_EXPANSION) {
            double ratio = end.density() / start.density();
            for (int k = 1; k < spec.points() - 1; k++) {
                double density = start.density() * Math.pow(ratio, (double) k / (spec.points() - 1));
                State state =
                        atDensity(spec.equilibrium(), spec.path(), spec.index().orElse(1), start, density);
                points.add(new PathPoint(mass / density, state));
            }
        }
        points.add(new PathPoint(mass * end.specificVolume(), end));
        return points;
    }

    private static Ideal ideal(Spec spec, State start, State end) {
        double k = start.isobaricHeatCapacity() / start.isochoricHeatCapacity();
        double volumes = start.specificVolume() / end.specificVolume();
        double index = switch (spec.path()) {
            case ISOTHERMAL, FREE_EXPANSION -> 1;
            case ADIABATIC -> k;
            case POLYTROPIC -> spec.index().orElseThrow();
        };
        double work = spec.path() == Path.FREE_EXPANSION
                ? 0
                : spec.volume() * IndexPath.closedWork(start.pressure(), 1, volumes, index);
        return new Ideal(
                index,
                start.pressure() * Math.pow(volumes, index),
                start.temperature() * Math.pow(volumes, index - 1),
                work);
    }

    /**
     * The demonstration.
     *
     * @param equilibrium the fluid
     * @param pressure Pa at the start
     * @param temperature K at the start
     * @param volume m3 at the start
     * @param finalVolume m3; this or the next
     * @param finalPressure Pa
     * @param path how the volume is changed
     * @param index n of a polytropic path, above 0
     * @param points along the path, ends included, 2 to 501
     * @param atmosphericPressure Pa, which pushes on the other side of the piston
     * @param guidance limits for the findings
     * @param explain whether the result shows its working
     */
    public record Spec(
            Equilibrium equilibrium,
            double pressure,
            double temperature,
            double volume,
            OptionalDouble finalVolume,
            OptionalDouble finalPressure,
            Path path,
            OptionalDouble index,
            int points,
            double atmosphericPressure,
            Guidance guidance,
            boolean explain) {
        public Spec {
            Objects.requireNonNull(equilibrium);
            Objects.requireNonNull(path);
            Objects.requireNonNull(guidance);
            Require.positive("initial.pressure", pressure);
            Require.positive("initial.temperature", temperature);
            Require.positive("initial.volume", volume);
            Require.positive("end.volume", finalVolume);
            Require.positive("end.pressure", finalPressure);
            Require.positive("polytropicIndex", index);
            if (points < 2 || points > 501 || (path == Path.POLYTROPIC) != index.isPresent()) {
                throw new IllegalArgumentException("points are 2 to 501, and an index belongs to a polytropic path");
            }
        }
    }

    /**
     * What happens.
     *
     * @param start state
     * @param end state
     * @param figures of the whole cylinder
     * @param ideal what the ideal-gas formulas give for the same volumes
     * @param points along the path, in order
     * @param findings what is worth knowing
     * @param steps the working; empty unless asked for
     */
    public record Result(
            State start,
            State end,
            Figures figures,
            Ideal ideal,
            List<PathPoint> points,
            List<Finding> findings,
            List<Step> steps) {
        public Result {
            points = List.copyOf(points);
            findings = List.copyOf(findings);
            steps = List.copyOf(steps);
        }
    }

    /**
     * The cylinder as a whole, J. work + heat = energyChange; work = workOfAtmosphere + workOnRod.
     *
     * @param mass kg inside
     * @param startVolume m3
     * @param endVolume m3
     * @param pressureRatio end over start, absolute
     * @param volumeRatio end over start
     * @param work done on the gas, negative where it gives work
     * @param heat taken up by the gas, negative where it gives heat
     * @param energyChange of its internal energy
     * @param workOfAtmosphere that the surrounding air does on the piston
     * @param workOnRod that is left for the hand
     * @param index n of p v^n between the ends
     */
    public record Figures(
            double mass,
            double startVolume,
            double endVolume,
            double pressureRatio,
            double volumeRatio,
            double work,
            double heat,
            double energyChange,
            double workOfAtmosphere,
            double workOnRod,
            double index) {}

    /**
     * Ideal-gas formulas for the same volumes, for comparison only.
     *
     * @param index n
     * @param pressure Pa at the end
     * @param temperature K at the end
     * @param work J
     */
    public record Ideal(double index, double pressure, double temperature, double work) {}

    /** A point along the path: volume (m3) and state. */
    public record PathPoint(double volume, State state) {}
}
