package io.loopstate.web.mapping;

import io.loopstate.engine.balance.Balanced;
import io.loopstate.engine.balance.Row;
import io.loopstate.engine.balance.SystemBalance;
import io.loopstate.engine.compression.MapCompressor;
import io.loopstate.engine.compression.MapRating;
import io.loopstate.engine.compression.RatingPolynomial;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.chart.Axis;
import io.loopstate.web.chart.Chart;
import io.loopstate.web.chart.Panel;
import io.loopstate.web.chart.Series;
import io.loopstate.web.chart.Style;
import io.loopstate.web.chart.Vertex;
import io.loopstate.web.dto.BalanceRequest;
import io.loopstate.web.dto.RatingMapRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;

/** Rating maps over their temperatures, and what-ifs beside their base case. */
public final class MachinePictures {
    /** A rating map around a working point. */
    public static final Picture<RatingMapRequest, MapRating.Spec, MapRating.Result> RATING_MAP =
            Picture.of(RatingMapMapping.OPERATION, MachinePictures::ratingMap);

    /** A machine in balance beside its what-ifs. */
    public static final Picture<BalanceRequest, SystemBalance.Spec, SystemBalance.Result> BALANCE =
            Picture.of(BalanceMapping.OPERATION, MachinePictures::balance);

    /** K that are shown on both sides of the working point where the envelope does not end before. */
    private static final double AROUND_SUCTION = 15;

    private static final double AROUND_DISCHARGE = 10;
    private static final int POINTS = 31;
    private static final List<Style> STYLES = List.of(Style.FIRST, Style.SECOND, Style.THIRD);
    private static final double ROOM = 0.12;

    private MachinePictures() {}

    private static Chart ratingMap(Input<RatingMapRequest> input, MapRating.Result result) {
        MapCompressor map = RatingMapMapping.map(input, input.request().map()).get();
        MapRating.Figures figures = result.figures();
        Measure temperature = new Measure(input.output(), QuantityKind.TEMPERATURE);
        Measure power = new Measure(input.output(), QuantityKind.POWER);
        boolean byFlow = map.massFlow().isPresent();
        Measure first = byFlow ? new Measure(input.output(), QuantityKind.MASS_FLOW) : power;
        List<Double> discharges = discharges(map, figures.dischargeDew());
        List<Panel> panels = List.of(
                panel(
                        byFlow ? "Mass flow" : "Capacity",
                        byFlow ? map.massFlow().orElseThrow() : map.capacity().orElseThrow(),
                        first,
                        temperature,
                        input.equilibrium(),
                        map,
                        figures,
                        discharges),
                panel("Power", map.power(), power, temperature, input.equilibrium(), map, figures, discharges));
        List<Chart.Key> key = new ArrayList<>();
        for (int i = 0; i < discharges.size(); i++) {
            key.add(new Chart.Key(STYLES.get(i), "discharge dew point " + temperature.words(discharges.get(i))));
        }
        String here = "Suction dew point " + temperature.words(figures.suctionDew()) + ", discharge dew point "
                + temperature.words(figures.dischargeDew());
        return new Chart(
                input.equilibrium().refrigerant().designation() + ": a rating map around its working point",
                here + ". As rated: "
                        + (byFlow ? first.words(figures.ratedMassFlow()) : first.words(figures.ratedCapacity()))
                        + ", " + power.words(figures.ratedPower()) + '.',
                "Two panels over the suction dew point: " + (byFlow ? "mass flow" : "capacity")
                        + " and power as rated, a line for each of " + discharges.size()
                        + " discharge dew points. The working point: " + here + '.',
                1,
                235,
                panels,
                key,
                List.of(),
                "As rated, before the correction to the actual suction. Lines end where the map's envelope does"
                        + (figures.insideEnvelope() ? "." : ", were not the working point outside of it."));
    }

    /** The discharge dew points of the lines, K: the working point's, and one on each side inside the envelope. */
    private static List<Double> discharges(MapCompressor map, double here) {
        TreeSet<Double> all = new TreeSet<>(List.of(here));
        all.add(Math.max(here - AROUND_DISCHARGE, Math.min(here, map.envelope().minDischarge())));
        all.add(Math.min(here + AROUND_DISCHARGE, Math.max(here, map.envelope().maxDischarge())));
        return List.copyOf(all);
    }

    private static Panel panel(
            String name,
            RatingPolynomial polynomial,
            Measure measure,
            Measure temperature,
            Equilibrium equilibrium,
            MapCompressor map,
            MapRating.Figures figures,
            List<Double> discharges) {
        double here = figures.suctionDew();
        double from =
                Math.max(here - AROUND_SUCTION, Math.min(here, map.envelope().minSuction()));
        double to =
                Math.min(here + AROUND_SUCTION, Math.max(here, map.envelope().maxSuction()));
        List<Series> series = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < discharges.size(); i++) {
            double discharge = discharges.get(i);
            List<Vertex> run = new ArrayList<>();
            for (int k = 0; k < POINTS; k++) {
                double suction = from + (to - from) * k / (POINTS - 1);
                boolean shown = suction < discharge
                        && (!figures.insideEnvelope() || holds(equilibrium, map, suction, discharge));
                if (shown) {
                    run.add(new Vertex(temperature.of(suction), measure.of(polynomial.at(suction, discharge))));
                }
                if (!run.isEmpty() && (!shown || k == POINTS - 1)) {
                    run.forEach(vertex -> values.add(vertex.y()));
                    series.add(Series.of(STYLES.get(i), run));
                    run = new ArrayList<>();
                }
            }
        }
        Vertex point = new Vertex(temperature.of(here), measure.of(polynomial.at(here, figures.dischargeDew())));
        values.add(point.y());
        return new Panel(
                "",
                PropertyPictures.around(
                        "Suction dew point, " + temperature.symbol(),
                        List.of(temperature.of(from), temperature.of(to))),
                PropertyPictures.around(name + ", " + measure.symbol(), values),
                series,
                List.of(new Panel.Mark(Style.PROCESS, point, "")));
    }

    private static boolean holds(Equilibrium equilibrium, MapCompressor map, double suction, double discharge) {
        try {
            double low = equilibrium.saturationAtTemperature(suction).dew().pressure();
            double high = equilibrium.saturationAtTemperature(discharge).dew().pressure();
            return map.envelope().breach(suction, discharge, low, high).isEmpty();
        } catch (EngineException e) {
            // no dew point, no line
            return false;
        }
    }

    private static Chart balance(Input<BalanceRequest> input, SystemBalance.Result result) {
        List<String> names = new ArrayList<>(List.of("base case"));
        result.rows().forEach(row -> names.add(name(row)));
        List<Optional<Balanced>> cases = new ArrayList<>(List.of(Optional.of(result.base())));
        result.rows().forEach(row -> cases.add(row.balanced()));
        Measure power = new Measure(input.output(), QuantityKind.POWER);
        Measure temperature = new Measure(input.output(), QuantityKind.TEMPERATURE);
        List<Panel> panels = List.of(
                dots("Capacity", power, names, cases, b -> b.energy().refrigeratingCapacity()),
                dots("Electrical power", power, names, cases, b -> b.energy().electricalPower()),
                dots(
                        "Condensing, midpoint",
                        temperature,
                        names,
                        cases,
                        b -> b.condensing().midpoint()));
        StringBuilder words = new StringBuilder("Capacity, electrical power and condensing temperature of each case.");
        for (int i = 0; i < names.size(); i++) {
            words.append(' ')
                    .append(names.get(i))
                    .append(": ")
                    .append(cases.get(i)
                            .map(b -> power.words(b.energy().refrigeratingCapacity()) + ", "
                                    + power.words(b.energy().electricalPower()) + ", "
                                    + temperature.words(b.condensing().midpoint()))
                            .orElse("no balance"))
                    .append('.');
        }
        Balanced base = result.base();
        return new Chart(
                input.equilibrium().refrigerant().designation() + ": a machine in balance"
                        + (result.rows().isEmpty() ? "" : " and what would change it"),
                "Base case: capacity " + power.words(base.energy().refrigeratingCapacity()) + ", power "
                        + power.words(base.energy().electricalPower()) + ", condensing at "
                        + temperature.words(base.condensing().midpoint()) + '.',
                words.toString(),
                panels.size(),
                34.0 * names.size() + 16,
                panels,
                List.of(
                        new Chart.Key(Style.FIRST, true, "each case, from the base case"),
                        new Chart.Key(Style.REFERENCE, "base case")),
                List.of(),
                "The axes do not start at zero.");
    }

    private static String name(Row row) {
        String words = row.whatIf().kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return row.whatIf()
                .refrigerant()
                .map(other -> "with " + other.refrigerant().designation())
                .orElse(words);
    }

    private static Panel dots(
            String heading,
            Measure measure,
            List<String> names,
            List<Optional<Balanced>> cases,
            ToDoubleFunction<Balanced> figure) {
        double base = measure.of(figure.applyAsDouble(cases.get(0).orElseThrow()));
        double[] known = cases.stream()
                .flatMap(Optional::stream)
                .mapToDouble(balanced -> measure.of(figure.applyAsDouble(balanced)))
                .toArray();
        double lowest = DoubleStream.of(known).min().orElseThrow();
        double highest = DoubleStream.of(known).max().orElseThrow();
        double room = Math.max(ROOM * (highest - lowest), 0.02 * Math.abs(highest) + 1e-9);
        List<Series> series = new ArrayList<>();
        List<Panel.Mark> marks = new ArrayList<>();
        series.add(Series.of(Style.REFERENCE, List.of(new Vertex(base, 0), new Vertex(base, names.size()))));
        for (int i = 0; i < cases.size(); i++) {
            double y = names.size() - i - 0.5;
            if (cases.get(i).isPresent()) {
                Vertex at =
                        new Vertex(measure.of(figure.applyAsDouble(cases.get(i).get())), y);
                series.add(Series.of(Style.FIRST, List.of(new Vertex(base, y), at)));
                marks.add(new Panel.Mark(Style.FIRST, at, ""));
            } else {
                marks.add(new Panel.Mark(Style.REFERENCE, new Vertex(base, y), "no balance"));
            }
        }
        return new Panel(
                heading,
                Axis.linear(measure.symbol(), lowest - room, highest + room, 4),
                Axis.cases("", names),
                series,
                marks);
    }
}
