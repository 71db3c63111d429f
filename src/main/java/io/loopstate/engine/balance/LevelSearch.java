package io.loopstate.engine.balance;

import io.loopstate.engine.balance.BracketSearch.Precision;
import io.loopstate.engine.balance.Levels.Attempt;
import io.loopstate.engine.balance.Loop.Trial;
import io.loopstate.engine.error.EngineException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the two pressures of a machine. First Broyden's method (C. G. Broyden, Math. Comp. 19 (1965) 577) on the logarithms of
 * both shares; a pressure that is driven to its limit stays there. Then, where that fails, {@link BracketSearch}.
 */
final class LevelSearch {
    private static final int MAX_TRIALS = 40;
    private static final int MAX_HALVINGS = 8;
    /** Of each coil's area. */
    private static final double TOLERANCE = 1e-10;
    /** Rounding may keep the iteration from the tolerance: this much is accepted where it no longer improves. */
    private static final double ROUNDING = 1e-8;
    /** Change of ln p below which a pressure is as good as its last digits. */
    private static final double LAST_DIGITS = 1e-13;
    /** ln(p / limit) at the start: some five kelvin. */
    private static final double START = 0.15;
    /** Step in y away from a start where air and refrigerant would cross. */
    private static final double STRIDE = 0.5;
    /** Longest step in y. */
    private static final double LONGEST = 1.5;
    /** Of pressures at the start, where the outdoor air is the colder one. */
    private static final double LEAST_RATIO = 1.3;

    private final Window window;
    private final Probe probe;

    private LevelSearch(Loop loop, Window window, List<Attempt> tried) {
        this.window = window;
        this.probe = new Probe(loop, window, tried);
    }

    static Levels of(Loop loop) {
        return of(loop, false, new ArrayList<>());
    }

    private static Levels of(Loop loop, boolean exact, List<Attempt> tried) {
        Window.Opening opening = Window.of(loop, exact);
        if (opening.closed().isPresent()) {
            return new Levels(Optional.empty(), opening.closed(), tried, false);
        }
        Window window = opening.window().orElseThrow();
        LevelSearch search = new LevelSearch(loop, window, tried);
        Optional<Levels> fast = search.fast(search.start());
        if (fast.isPresent()) {
            return fast.get();
        }
        return window.guessed() ? of(loop, true, tried) : search.sure(loop);
    }

    /** By brackets, the last digits by the fast way if it can. */
    private Levels sure(Loop loop) {
        Optional<Levels> near = Optional.empty();
        try {
            near = Optional.of(new BracketSearch(loop, window, probe.tried(), Precision.COARSE).solve());
        } catch (EngineException e) {
            // Too steep for coarse brackets.
        }
        if (near.isPresent() && near.get().none().isPresent()) {
            return near.get();
        }
        return near.flatMap(Levels::balance)
                .map(trial -> node(
                        window.evaporatingVariable(trial.evaporating()), window.condensingVariable(trial.condensing())))
                .flatMap(this::fast)
                .filter(levels -> levels.balance().isPresent())
                .map(levels -> new Levels(levels.balance(), levels.none(), levels.tried(), true))
                .orElseGet(() -> new BracketSearch(loop, window, probe.tried(), Precision.FINE).solve());
    }

    /** Tries pairs of variables and keeps a record of them. */
    record Probe(Loop loop, Window window, List<Attempt> tried) {
        /** @throws EngineException where the compressor cannot run or a state lies outside the range */
        Trial at(double evaporating, double condensing) {
            Trial trial = loop.at(window.evaporating(evaporating), window.condensing(condensing));
            tried.add(new Attempt(
                    trial.evaporating(),
                    trial.condensing(),
                    trial.running().massFlow(),
                    trial.evaporatorShare(),
                    trial.condenserShare()));
            return trial;
        }
    }

    /** Two variables and the residuals there. */
    private record Node(double e, double c, double fe, double fc, Trial trial) {
        static Node of(double e, double c, Trial trial) {
            return new Node(e, c, Math.log(trial.evaporatorShare()), Math.log(trial.condenserShare()), trial);
        }

        boolean sound() {
            return Double.isFinite(fe) && Double.isFinite(fc);
        }
    }

    /** d(fe, fc) / d(e, c). */
    private record Jacobian(double ee, double ec, double ce, double cc) {
        /**
         * A guess: needs fall as exp(-y), the flow of a displacement rises with the density of the suction vapor, and falls a
         * little with the pressure ratio.
         */
        static Jacobian guess(Node node) {
            double flow = Math.exp(node.e());
            double ratio = 0.15 * Math.exp(node.c());
            return new Jacobian(-1 - 1.1 * flow, ratio - 0.1 * Math.exp(node.c()), -1.1 * flow, -1 - ratio);
        }

        /** Broyden's update for a step (e, c) that missed by (me, mc). */
        Jacobian updated(double e, double c, double me, double mc) {
            double square = e * e + c * c;
            return new Jacobian(ee + me * e / square, ec + me * c / square, ce + mc * e / square, cc + mc * c / square);
        }

        double determinant() {
            return ee * cc - ec * ce;
        }
    }

    private Optional<Levels> fast(Node start) {
        Node node = start;
        if (node == null) {
            return Optional.empty();
        }
        Jacobian jacobian = Jacobian.guess(node);
        double before = Double.POSITIVE_INFINITY;
        for (int k = 0; k < MAX_TRIALS; k++) {
            boolean freeE = freeE(node);
            boolean freeC = freeC(node);
            double missE = freeE ? node.fe() : 0;
            double missC = freeC ? node.fc() : 0;
            double miss = miss(node);
            if (miss <= TOLERANCE || miss <= ROUNDING && miss > before / 4) {
                return found(node, freeE, freeC);
            }
            double[] step = step(jacobian, missE, missC, freeE, freeC);
            double length = Math.max(Math.abs(step[0]) / longest(node.e()), Math.abs(step[1]) / longest(node.c()));
            double shrink = length > 1 ? 1 / length : 1;
            Node next = next(node, shrink * step[0], shrink * step[1], miss);
            if (next == null) {
                return Optional.empty();
            }
            double de = next.e() - node.e();
            double dc = next.c() - node.c();
            if (Math.abs(de) * Math.exp(node.e()) <= LAST_DIGITS && Math.abs(dc) * Math.exp(node.c()) <= LAST_DIGITS) {
                return miss <= ROUNDING ? found(node, freeE, freeC) : Optional.empty();
            }
            jacobian = jacobian.updated(
                    de,
                    dc,
                    next.fe() - node.fe() - jacobian.ee() * de - jacobian.ec() * dc,
                    next.fc() - node.fc() - jacobian.ce() * de - jacobian.cc() * dc);
            before = miss;
            node = next;
        }
        return Optional.empty();
    }

    /**
     * {@code null} where the machine cannot run anywhere near the start. Where all air would have to become as warm as the
     * refrigerant, the start is moved away from it.
     */
    private Node start() {
        double e = Math.min(Math.log(START), window.mostEvaporating());
        double least = window.condensingVariable(LEAST_RATIO * window.evaporating(e));
        double c = Math.min(Math.max(Math.log(START), least), window.mostCondensing());
        for (int k = 0; k < MAX_HALVINGS; k++) {
            try {
                Node node = Node.of(e, c, probe.at(e, c));
                if (node.sound()) {
                    return node;
                }
                boolean crossed = Double.isInfinite(node.fe());
                e = crossed ? Math.min(e + STRIDE, window.mostEvaporating()) : e;
                c = crossed ? c : Math.min(c + STRIDE, window.mostCondensing());
            } catch (EngineException exception) {
                return null;
            }
        }
        return null;
    }

    private Node node(double e, double c) {
        try {
            Node node = Node.of(e, c, probe.at(e, c));
            return node.sound() ? node : null;
        } catch (EngineException exception) {
            return null;
        }
    }

    private boolean freeE(Node node) {
        return free(node.e(), node.fe(), window.mostEvaporating());
    }

    private boolean freeC(Node node) {
        return free(node.c(), node.fc(), window.mostCondensing());
    }

    /** The larger residual of what is not held at an end. */
    private double miss(Node node) {
        return Math.max(freeE(node) ? Math.abs(node.fe()) : 0, freeC(node) ? Math.abs(node.fc()) : 0);
    }

    /** Whether a variable is not held at one of its ends by its residual. */
    private boolean free(double y, double residual, double most) {
        return !(y <= window.least() && residual <= 0 || y >= most && residual >= 0);
    }

    /** Longest step: close to a limit its distance may shrink by orders of magnitude. */
    private static double longest(double y) {
        return Math.max(LONGEST, -y);
    }

    private static double[] step(Jacobian j, double missE, double missC, boolean freeE, boolean freeC) {
        double e;
        double c;
        if (freeE && freeC) {
            e = -(missE * j.cc() - missC * j.ec()) / j.determinant();
            c = -(j.ee() * missC - j.ce() * missE) / j.determinant();
        } else {
            e = freeE ? -missE / j.ee() : 0;
            c = freeC ? -missC / j.cc() : 0;
        }
        return new double[] {e, c};
    }

    /** The next pair, on the way of a step, at which the machine runs and misses by less, or not by much more. */
    private Node next(Node from, double e, double c, double miss) {
        double share = 1;
        for (int k = 0; k < MAX_HALVINGS; k++) {
            double toE = clamp(from.e() + share * e, window.mostEvaporating());
            double toC = clamp(from.c() + share * c, window.mostCondensing());
            Node next = node(toE, toC);
            if (next != null && miss(next) < 2 * miss + LONGEST) {
                return next;
            }
            share /= 2;
        }
        return null;
    }

    private double clamp(double y, double most) {
        return Math.max(window.least(), Math.min(most, y));
    }

    /** A balance, or a coil that would need a pressure beyond the window; empty at an end of it that is a guess. */
    private Optional<Levels> found(Node node, boolean freeE, boolean freeC) {
        Optional<NoBalance> none = Optional.empty();
        if (!freeC && node.fc() > 0) {
            none = Optional.of(NoBalance.condensingAboveCritical());
        } else if (!freeE && node.fe() > 0) {
            if (window.guessed()) {
                return Optional.empty();
            }
            none = Optional.of(NoBalance.evaporatingBelowRange());
        } else if (!freeE && !window.airLimits()) {
            none = Optional.of(NoBalance.evaporatingAboveCritical());
        }
        Optional<Trial> balance = none.isPresent() ? Optional.empty() : Optional.of(node.trial());
        return Optional.of(new Levels(balance, none, probe.tried(), false));
    }
}
