package io.loopstate.engine.transport;

import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Citation;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.Limits;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Viscosity, thermal conductivity and surface tension of one fluid, each from the published correlation preferred for it,
 * or empty: nothing is estimated for a fluid without one. Immutable and thread-safe; build it once per fluid, e.g. by a
 * {@link TransportLibrary}.
 *
 * <p>Correlations are used within the limits of the fluid's equation of state; outside them {@link EngineException} with
 * {@link ErrorCode#OUT_OF_RANGE} states the limits. A correlation whose source states a tighter range of its own answers
 * nothing outside it, and no correlation answers where it has no finite positive value, e.g. beyond a close-packed density.
 *
 * <p>Viscosity and thermal conductivity belong to a single phase. Below the critical temperature a temperature and a density
 * between those of the saturated phases still name a metastable state up to the spinodal: whoever passes them decides
 * whether the phase is stable. Beyond the spinodal, where pressure falls as density rises, there is no answer. A conformal
 * state that is not found gives {@link ErrorCode#NOT_CONVERGED}.
 */
public final class TransportProperties {
    /** A state made at a limit may miss it by the rounding of its density. */
    private static final double ROUNDING = 1e-9;

    private final Fluid fluid;
    private final Optional<ConformalStateSolver> conformal;
    private final Optional<Correlation<Viscosity>> viscosity;
    private final Optional<Correlation<ThermalConductivity>> conductivity;
    private final Optional<Correlation<SurfaceTension>> surfaceTension;

    private TransportProperties(Fluid fluid, TransportReader reader) {
        this.fluid = fluid;
        conformal = reader.referenceFluid().map(reference -> new ConformalStateSolver(fluid, reference));
        viscosity = reader.viscosities().stream().findFirst();
        conductivity = reader.conductivities().stream().findFirst();
        surfaceTension = reader.surfaceTension();
    }

    /**
     * Reads the correlations of a fluid.
     *
     * @param catalog where the reference fluid of a corresponding-states correlation is found
     */
    public static TransportProperties of(Fluid fluid, Catalog catalog) {
        return new TransportProperties(fluid, new TransportReader(fluid, catalog));
    }

    public Fluid fluid() {
        return fluid;
    }

    /**
     * Viscosity in Pa s.
     *
     * @param temperature K
     * @param density kg/m3
     */
    public OptionalDouble viscosity(double temperature, double density) {
        return viscosity(molarState(temperature, density));
    }

    /** Viscosity in Pa s at a state of this fluid's equation. */
    public OptionalDouble viscosity(MolarState state) {
        return single(state) ? reported(viscosity, state, viscosityAt(point(state))) : OptionalDouble.empty();
    }

    /**
     * Thermal conductivity in W/(m K).
     *
     * @param temperature K
     * @param density kg/m3
     */
    public OptionalDouble thermalConductivity(double temperature, double density) {
        return thermalConductivity(molarState(temperature, density));
    }

    /** Thermal conductivity in W/(m K) at a state of this fluid's equation. */
    public OptionalDouble thermalConductivity(MolarState state) {
        return at(state).thermalConductivity();
    }

    /** Both at a state of this fluid's equation; costs little more than one of them. */
    public TransportValues at(MolarState state) {
        if (!single(state)) {
            return TransportValues.NONE;
        }
        Point point = point(state);
        double eta = viscosityAt(point);
        double lambda = conductivity.isPresent() ? conductivity.get().formula().at(point, eta) : Double.NaN;
        return new TransportValues(reported(viscosity, state, eta), reported(conductivity, state, lambda));
    }

    /** Both at a state of this fluid; none for a mixture of phases. */
    public TransportValues at(State state) {
        return state.phase() == Phase.TWO_PHASE
                ? TransportValues.NONE
                : at(molarState(state.temperature(), state.density()));
    }

    /**
     * Surface tension between saturated liquid and vapor in N/m, empty from the critical temperature of the fluid or of the
     * correlation on.
     *
     * @param temperature K, not below the lower limit of the equation of state
     */
    public OptionalDouble surfaceTension(double temperature) {
        checkTemperature(temperature);
        if (surfaceTension.isEmpty() || temperature >= fluid.criticalPoint().temperature()) {
            return OptionalDouble.empty();
        }
        return physical(surfaceTension.get().formula().at(temperature));
    }

    /** Range that the source of the viscosity states for it, inside the limits of the equation of state. */
    public CorrelationRange viscosityRange() {
        return viscosity.map(Correlation::range).orElse(CorrelationRange.UNBOUNDED);
    }

    /** Range that the source of the thermal conductivity states for it, inside the limits of the equation of state. */
    public CorrelationRange thermalConductivityRange() {
        return conductivity.map(Correlation::range).orElse(CorrelationRange.UNBOUNDED);
    }

    /** Empty where the fluid has no viscosity correlation, as are the two that follow for theirs. */
    public Optional<Citation> viscositySource() {
        return viscosity.map(Correlation::source);
    }

    public Optional<Citation> thermalConductivitySource() {
        return conductivity.map(Correlation::source);
    }

    public Optional<Citation> surfaceTensionSource() {
        return surfaceTension.map(Correlation::source);
    }

    private double viscosityAt(Point point) {
        return viscosity.isPresent() ? viscosity.get().formula().at(point) : Double.NaN;
    }

    private static OptionalDouble reported(
            Optional<? extends Correlation<?>> correlation, MolarState state, double value) {
        boolean inside = correlation
                .filter(c -> c.range().contains(state.temperature(), state.pressure()))
                .isPresent();
        return inside ? physical(value) : OptionalDouble.empty();
    }

    private static OptionalDouble physical(double value) {
        return value > 0 && Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    private Point point(MolarState state) {
        return new Point(state, conformal.map(solver -> solver.solve(state)));
    }

    private MolarState molarState(double temperature, double density) {
        checkTemperature(temperature);
        if (!(density > 0 && Double.isFinite(density))) {
            throw outOfRange(Variable.DENSITY, density, 0, Double.NaN);
        }
        return fluid.model().isotherm(temperature).state(density / fluid.molarMass());
    }

    /** Whether the state is one of a single phase; an error where it lies outside the limits. */
    private boolean single(MolarState state) {
        checkTemperature(state.temperature());
        if (!(state.pressureByDensity() > 0)) {
            return false;
        }
        check(Variable.PRESSURE, state.pressure(), 0, fluid.limits().maxPressure());
        return true;
    }

    private void checkTemperature(double temperature) {
        Limits limits = fluid.limits();
        check(Variable.TEMPERATURE, temperature, limits.minTemperature(), limits.maxTemperature());
    }

    private void check(Variable variable, double got, double lower, double upper) {
        if (!(got >= lower * (1 - ROUNDING) && got <= upper * (1 + ROUNDING))) {
            throw outOfRange(variable, got, lower, upper);
        }
    }

    private EngineException outOfRange(Variable variable, double got, double lower, double upper) {
        return EngineException.of(
                ErrorCode.OUT_OF_RANGE, "transport properties of " + fluid.designation(), variable, got, lower, upper);
    }
}
