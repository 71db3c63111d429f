package io.loopstate.engine.diagram;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.property.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** Follows a curve by its parameter, closer where it bends, as far as there are states and the window shows them. */
final class Tracer {
    /** Share of the window by which a chord may pass the curve: less than a pixel. */
    private static final double SEEN = 7e-4;

    private static final int DEPTH = 6;

    private final Window window;

    Tracer(Window window) {
        this.window = window;
    }

    /** A place on a curve, with a state where there is one. */
    private record Place(double at, Optional<State> state) {}

    /**
     * The runs of states along a curve, in the order of the parameter.
     *
     * @param parts into which the parameter is divided at first
     */
    List<List<State>> trace(DoubleFunction<State> curve, double from, double to, int parts) {
        List<Place> places = new ArrayList<>();
        Place last = place(curve, from);
        places.add(last);
        for (int i = 1; i <= parts; i++) {
            Place next = place(curve, from + (to - from) * i / parts);
            refine(curve, last, next, DEPTH, places);
            places.add(next);
            last = next;
        }
        return visible(places);
    }

    private static Place place(DoubleFunction<State> curve, double at) {
        try {
            return new Place(at, Optional.of(curve.apply(at)));
        } catch (EngineException e) {
            return new Place(at, Optional.empty());
        }
    }

    /** Adds the places needed between two. */
    private void refine(DoubleFunction<State> curve, Place a, Place b, int depth, List<Place> places) {
        boolean nothing = a.state().isEmpty() && b.state().isEmpty();
        boolean unseen = a.state().isPresent()
                && b.state().isPresent()
                && window.beside(a.state().get(), b.state().get());
        if (depth == 0 || nothing || unseen) {
            return;
        }
        Place middle = place(curve, (a.at() + b.at()) / 2);
        if (straight(a, middle, b)) {
            places.add(middle);
            return;
        }
        refine(curve, a, middle, depth - 1, places);
        places.add(middle);
        refine(curve, middle, b, depth - 1, places);
    }

    private boolean straight(Place a, Place middle, Place b) {
        return a.state().isPresent()
                && middle.state().isPresent()
                && b.state().isPresent()
                && window.bend(a.state().get(), middle.state().get(), b.state().get()) < SEEN;
    }

    /** Runs of neighboring states that the window shows, each with one state beyond its edge where the run leaves it. */
    private List<List<State>> visible(List<Place> places) {
        List<List<State>> runs = new ArrayList<>();
        List<State> run = new ArrayList<>();
        Optional<State> before = Optional.empty();
        for (Place place : places) {
            Optional<State> here = place.state();
            boolean seen = before.isPresent() && here.isPresent() && !window.beside(before.get(), here.get());
            if (seen) {
                if (run.isEmpty()) {
                    run.add(before.get());
                }
                run.add(here.get());
            } else if (!run.isEmpty()) {
                runs.add(run);
                run = new ArrayList<>();
            }
            before = here;
        }
        if (!run.isEmpty()) {
            runs.add(run);
        }
        return runs;
    }
}
