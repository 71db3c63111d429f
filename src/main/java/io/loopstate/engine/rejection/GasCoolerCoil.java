package io.loopstate.engine.rejection;

import io.loopstate.engine.component.Require;
import io.loopstate.engine.cycle.Inputs;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.fluid.Blend;
import io.loopstate.engine.fluid.Refrigerant;
import io.loopstate.engine.numerics.ChebyshevPieces;
import io.loopstate.engine.numerics.Quadrature;
import io.loopstate.engine.numerics.Search;
import io.loopstate.engine.property.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * An air-cooled gas cooler at a pressure above the critical one, where the heat capacity of the refrigerant changes so much that
 * no mean will do. Its need is an integral over the heat, with the temperature along the isobar as series of the enthalpy and the
 * integral halved where it has not converged, so that a pinch inside gets as many segments as it needs:
 *
 * <ul>
 *   <li>{@link Arrangement#SERIES}, many rows in counter flow: UA = integral of dQ / (T - T_air)
 *   <li>{@link Arrangement#CROSS_FLOW}, one row, air unmixed: share = integral of dQ / (Gamma C_air (T - T_entering)), Gamma = 1 -
 *       exp(-UA / C_air)
 * </ul>
 *
 * <p>There is no pressure drop. Made for one pressure and one inlet: the isobar costs some tens of states once, then trials of an
 * outlet cost none.
 */
public final class GasCoolerCoil {
    /** Accuracy of the series of the temperature, and of the integral. */
    private static final double SERIES = 1e-10;

    private static final double INTEGRAL = 1e-11;
    private static final double TOLERANCE = 1e-15;
    /** Segments that a result shows, of equal heat. */
    private static final int SHOWN = 10;

    private final Equilibrium equilibrium;
    private final CoilAir air;
    private final Arrangement arrangement;
    private final double pressure;
    private final State inlet;
    private final double coldest;
    private final ChebyshevPieces temperature;

    /**
     * A gas cooler.
     *
     * @param pressure Pa, above the critical one
     * @param inletTemperature K, above that of the air
     * @throws EngineException {@code CONTRADICTORY_INPUTS} about {@code pressure} or {@code gasCoolerInletTemperature}
     */
    public GasCoolerCoil(
            Equilibrium equilibrium, CoilAir air, Arrangement arrangement, double pressure, double inletTemperature) {
        this.equilibrium = Objects.requireNonNull(equilibrium);
        this.air = Objects.requireNonNull(air);
        this.arrangement = Objects.requireNonNull(arrangement);
        this.pressure = pressure;
        double least = leastPressure(equilibrium.refrigerant());
        if (!(pressure > least)) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "At and below the critical pressure the refrigerant condenses: that is a condensing coil, not a gas cooler.",
                    "pressure",
                    pressure,
                    least,
                    Double.NaN);
        }
        double entering = air.state().dryBulb();
        if (!(inletTemperature > entering)) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "The refrigerant arrives no warmer than the air: nothing would be cooled.",
                    "gasCoolerInletTemperature",
                    inletTemperature,
                    entering,
                    Double.NaN);
        }
        this.inlet = Inputs.trace(
                "gasCoolerInletTemperature", () -> equilibrium.atPressureTemperature(pressure, inletTemperature));
        this.coldest = equilibrium.atPressureTemperature(pressure, entering).specificEnthalpy();
        this.temperature = ChebyshevPieces.fit(
                h -> equilibrium.atPressureEnthalpy(pressure, h).temperature(),
                coldest,
                inlet.specificEnthalpy(),
                SERIES);
    }

    /** Pa above which a refrigerant has one phase at every temperature. */
    static double leastPressure(Refrigerant refrigerant) {
        double critical = refrigerant.criticalPoint().pressure();
        return refrigerant instanceof Blend blend
                ? Math.max(critical, blend.figures().cricondenbar())
                : critical;
    }

    /**
     * A part of the gas cooler.
     *
     * @param heat W
     * @param share of the area
     * @param refrigerantInlet K
     * @param refrigerantOutlet K
     * @param airInlet K
     * @param airOutlet K, in cross flow the mean of the air that passed this part
     */
    public record Segment(
            double heat,
            double share,
            double refrigerantInlet,
            double refrigerantOutlet,
            double airInlet,
            double airOutlet) {}

    /**
     * A gas cooler at work.
     *
     * @param inlet of the refrigerant
     * @param outlet of the refrigerant
     * @param massFlow of the refrigerant, kg/s
     * @param heat W
     * @param conductance W/K
     * @param segments of equal heat in the direction of the refrigerant
     * @param pinch least difference between refrigerant and air, K
     * @param pinchTemperature of the refrigerant where it is, K
     * @param airOutlet K, mean of all air
     * @param intervals of the integral that its convergence took
     * @param search of the outlet's enthalpy, J/kg; empty where it was given
     */
    public record Operating(
            State inlet,
            State outlet,
            double massFlow,
            double heat,
            double conductance,
            List<Segment> segments,
            double pinch,
            double pinchTemperature,
            double airOutlet,
            int intervals,
            Optional<Search> search) {
        public Operating {
            segments = List.copyOf(segments);
        }
    }

    /**
     * The outlet that a conductance brings about.
     *
     * @param conductance W/K
     * @param load refrigerant flow or heat
     * @throws EngineException {@code CONTRADICTORY_INPUTS} about {@code heat} where the refrigerant cannot give so much to this air
     *     in this coil
     */
    public Operating solve(double conductance, Load load) {
        Require.positive("conductance", conductance);
        double warmest = inlet.specificEnthalpy();
        // With a heat the flow grows beyond all bounds towards an outlet as warm as the inlet: stay a little below.
        double last = load.heatGiven() ? warmest - 1e-6 * (warmest - coldest) : warmest;
        if (load.heatGiven() && miss(need(last, load), conductance) > 0) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS,
                            "The gas cooler is too small for so much heat at this inlet temperature, however much refrigerant flows.")
                    .about("conductance");
        }
        Search search =
                Search.brent(h -> miss(need(h, load), conductance), coldest, last, TOLERANCE, "outlet of a gas cooler");
        return operating(search.root(), load, conductance, Optional.of(search));
    }

    /**
     * The conductance that explains an outlet, W/K; infinite where temperatures would have to cross.
     *
     * @param outletTemperature K, below that of the inlet
     */
    double fitting(double outletTemperature, Load load) {
        double need = need(outlet(outletTemperature), load);
        double rate = air.capacityRate();
        return arrangement == Arrangement.SERIES
                ? need
                : need < rate ? -rate * Math.log1p(-need / rate) : Double.POSITIVE_INFINITY;
    }

    /** The gas cooler with an outlet (K) and the conductance that fits it. */
    Operating measured(double outletTemperature, Load load) {
        return operating(outlet(outletTemperature), load, fitting(outletTemperature, load), Optional.empty());
    }

    private double outlet(double outletTemperature) {
        return equilibrium.atPressureTemperature(pressure, outletTemperature).specificEnthalpy();
    }

    /** Between -1, nothing needed, and 1, more than any coil has; 0 in balance. */
    private double miss(double need, double conductance) {
        double share = need / whole(conductance);
        return Double.isInfinite(share) ? 1 : (share - 1) / (share + 1);
    }

    /** What a whole coil offers: its conductance in counter flow, Gamma C_air in cross flow; W/K. */
    private double whole(double conductance) {
        return arrangement == Arrangement.SERIES
                ? conductance
                : -air.capacityRate() * Math.expm1(-conductance / air.capacityRate());
    }

    private double need(double outletEnthalpy, Load load) {
        return new Integral(outletEnthalpy, load.flow(inlet.specificEnthalpy() - outletEnthalpy))
                .over(outletEnthalpy, inlet.specificEnthalpy());
    }

    private Operating operating(double outletEnthalpy, Load load, double conductance, Optional<Search> search) {
        double flow = load.flow(inlet.specificEnthalpy() - outletEnthalpy);
        double warmest = inlet.specificEnthalpy();
        Integral integral = new Integral(outletEnthalpy, flow);
        List<Segment> segments = new ArrayList<>();
        double step = (warmest - outletEnthalpy) / SHOWN;
        for (int i = 0; i < SHOWN; i++) {
            double from = i == 0 ? warmest : warmest - i * step;
            double to = i == SHOWN - 1 ? outletEnthalpy : warmest - (i + 1) * step;
            double share = integral.over(to, from) / whole(conductance);
            double heat = flow * (from - to);
            boolean series = arrangement == Arrangement.SERIES;
            double before = series ? integral.air(to) : air.state().dryBulb();
            segments.add(new Segment(
                    heat,
                    share,
                    temperature.at(from),
                    temperature.at(to),
                    before,
                    before + heat / (air.capacityRate() * (series ? 1 : share))));
        }
        double pinchAt = integral.pinch(conductance);
        double heat = flow * (warmest - outletEnthalpy);
        return new Operating(
                inlet,
                equilibrium.atPressureEnthalpy(pressure, outletEnthalpy),
                flow,
                heat,
                conductance,
                segments,
                integral.difference(pinchAt, conductance),
                temperature.at(pinchAt),
                air.state().dryBulb() + heat / air.capacityRate(),
                integral.intervals,
                search);
    }

    /** The need of a coil over the enthalpy of its refrigerant. */
    private final class Integral {
        private final double outlet;
        private final double flow;
        private int intervals;

        Integral(double outlet, double flow) {
            this.outlet = outlet;
            this.flow = flow;
        }

        /** K of the air where the refrigerant has an enthalpy. */
        double air(double enthalpy) {
            double entering = air.state().dryBulb();
            return arrangement == Arrangement.SERIES
                    ? entering + flow * (enthalpy - outlet) / air.capacityRate()
                    : entering;
        }

        private double density(double enthalpy) {
            double difference = temperature.at(enthalpy) - air(enthalpy);
            return difference > 0 ? flow / difference : Double.POSITIVE_INFINITY;
        }

        double over(double from, double to) {
            Quadrature.Integral need = Quadrature.of(this::density, from, to, INTEGRAL);
            intervals += need.parts();
            return need.value();
        }

        /** K between refrigerant and air that passed it. */
        double difference(double enthalpy, double conductance) {
            double apart = temperature.at(enthalpy) - air(enthalpy);
            return arrangement == Arrangement.SERIES
                    ? apart
                    : apart * Math.exp(-conductance / GasCoolerCoil.this.air.capacityRate());
        }

        /** J/kg where the streams come closest, on a fine grid that is then halved around the least. */
        double pinch(double conductance) {
            double low = outlet;
            double high = inlet.specificEnthalpy();
            for (int round = 0; round < PINCH_ROUNDS; round++) {
                int best = 0;
                double least = Double.POSITIVE_INFINITY;
                for (int i = 0; i <= PINCH_GRID; i++) {
                    double apart = difference(low + (high - low) * i / PINCH_GRID, conductance);
                    if (apart < least) {
                        least = apart;
                        best = i;
                    }
                }
                double step = (high - low) / PINCH_GRID;
                double center = low + step * best;
                low = Math.max(low, center - step);
                high = Math.min(high, center + step);
            }
            return 0.5 * (low + high);
        }
    }

    private static final int PINCH_GRID = 200;
    private static final int PINCH_ROUNDS = 5;
}
