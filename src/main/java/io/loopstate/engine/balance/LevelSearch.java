package io.loopstate.engine.balance;

import io.loopstate.engine.balance.BracketSearch.Precision;
import io.loopstate.engine.balance.Levels.Attempt;
import io.loopstate.engine.balance.Loop.Trial;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.numerics.Iteration;
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

    private static final BracketSearch.Variables START_AT =
            new BracketSearch.Variables(Math.log(START), Math.log(START));
    /** Step in y away from a start where air and refrigerant would cross. */
    private static final double STRIDE = 0.5;
    /** Longest step in y. */
    private static final double LONGEST = 1.5;
    /** Steps in a row towards where the compressor cannot run, after which that is where the balance would be. */
    private static final int ENOUGH = 3;
    /** Residual below which a step ends close to the balance. */
    private static final double NEAR = 0.5;
    /** Residual over that of the trial before, above which the slopes are measured anew. */
    private static final double POOR = 0.5;
    /** Of a variable, or relative where it is large, over which slopes are measured. */
    private static final double SHORT = 1e-4;
    /** Of pressures at the start, where the outdoor air is the colder one. */
    private static final double LEAST_RATIO = 1.3;

    private final Window window;
    private final Probe probe;
    /** Whether the fast way would have ended otherwise if the lower end of the window were no guess. */
    private boolean guessDecided;
    /** Where the fast way was last. */
    private BracketSearch.Variables closest;

    private LevelSearch(Loop loop, Window window, List<Attempt> tried, BracketSearch.Variables closest) {
        this.closest = closest;
        this.window = window;
        this.probe = new Probe(loop, window, tried);
    }

    static Levels of(Loop loop) {
        List<Attempt> tried = new ArrayList<>();
        try {
            Levels levels = of(loop, false, tried);
            Iteration.BALANCE.converged(tried.size());
            return levels;
        } catch (EngineException e) {
            Iteration.BALANCE.gaveUp(tried.size());
            throw e;
        }
    }

    private static Levels of(Loop loop, boolean exact, List<Attempt> tried) {
        Window.Opening opening = Window.of(loop, exact);
        if (opening.closed().isPresent()) {
            return new Levels(Optional.empty(), opening.closed(), tried, false);
        }
        Window window = opening.window().orElseThrow();
        LevelSearch search = new LevelSearch(loop, window, tried, START_AT);
        Optional<Levels> fast = search.fast(search.start());
        if (fast.isPresent()) {
            return fast.get();
        }
        if (window.guessed() && search.guessDecided) {
            return of(loop, true, tried);
        }
        LevelSearch exactly = window.guessed() ? search.exactly(loop) : search;
        return exactly.sure(loop);
    }

    private LevelSearch exactly(Loop loop) {
        return Window.of(loop, true)
                .window()
                .map(known -> new LevelSearch(loop, known, probe.tried(), closest))
                .orElseThrow();
    }

    /** By brackets, the last digits by the fast way if it can. */
    private Levels sure(Loop loop) {
        Optional<Levels> near = Optional.empty();
        try {
            near = Optional.of(new BracketSearch(loop, window, probe.tried(), Precision.COARSE, closest).solve());
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
                .orElseGet(() -> new BracketSearch(loop, window, probe.tried(), Precision.FINE, closest).solve());
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

    private Optional<Levels> fast(Node start) {
        Node node = start;
        if (node == null) {
            return Optional.empty();
        }
        Jacobian jacobian = Jacobian.guess(node);
        double before = Double.POSITIVE_INFINITY;
        int refusals = 0;
        boolean measured = false;
        for (int k = 0; k < MAX_TRIALS; k++) {
            closest = new BracketSearch.Variables(node.e(), node.c());
            boolean freeE = freeE(node);
            boolean freeC = freeC(node);
            double missE = freeE ? node.fe() : 0;
            double missC = freeC ? node.fc() : 0;
            double miss = miss(node);
            if (miss <= TOLERANCE || miss <= ROUNDING && miss > before / 4) {
                return found(node, freeE, freeC);
            }
            measured = !measured && miss > POOR * before;
            if (measured) {
                jacobian = slopes(node).orElse(jacobian);
            }
            Jacobian.Step step = jacobian.step(missE, missC, freeE, freeC);
            double length = Math.max(Math.abs(step.e()) / longest(node.e()), Math.abs(step.c()) / longest(node.c()));
            Move move = move(node, length > 1 ? step.times(1 / length) : step, miss);
            refusals = move.refusal().isPresent() ? refusals + 1 : 0;
            boolean blocked =
                    refusals >= ENOUGH || move.to().isEmpty() && move.refusal().isPresent();
            if (blocked && miss < NEAR && move.lifts()) {
                if (window.guessed()) {
                    guessDecided = true;
                    return Optional.empty();
                }
                NoBalance none = NoBalance.compressor(move.refusal().orElseThrow());
                return Optional.of(new Levels(Optional.empty(), Optional.of(none), probe.tried(), false));
            }
            if (move.to().isEmpty()) {
                return Optional.empty();
            }
            Node next = move.to().get();
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
        for (int k = 0; k < 2 * MAX_HALVINGS; k++) {
            try {
                Node node = Node.of(e, c, probe.at(e, c));
                if (node.sound()) {
                    return node;
                }
                boolean evaporator = Double.isInfinite(node.fe()) || c >= window.mostCondensing();
                e = evaporator ? Math.min(e + STRIDE, window.mostEvaporating()) : e;
                c = evaporator ? c : Math.min(c + STRIDE, window.mostCondensing());
            } catch (EngineException exception) {
                if (e <= window.least() && c <= window.least()) {
                    return null;
                }
                // Less lift.
                e = Math.max(e - LONGEST, window.least());
                c = Math.max(c - LONGEST, window.least());
            }
        }
        return null;
    }

    /** Measured slopes, away from the limits where there is room; empty where the machine cannot run there. */
    private Optional<Jacobian> slopes(Node node) {
        double de = stride(node.e(), window.mostEvaporating());
        double dc = stride(node.c(), window.mostCondensing());
        Node besideE = node(node.e() + de, node.c());
        Node besideC = besideE == null ? null : node(node.e(), node.c() + dc);
        return besideC == null
                ? Optional.empty()
                : Optional.of(new Jacobian(
                        (besideE.fe() - node.fe()) / de,
                        (besideC.fe() - node.fe()) / dc,
                        (besideE.fc() - node.fc()) / de,
                        (besideC.fc() - node.fc()) / dc));
    }

    private static double stride(double y, double most) {
        double length = SHORT * Math.max(1, Math.abs(y));
        return y + length <= most ? length : -length;
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

    /**
     * A move along a step.
     *
     * @param to where the machine runs and misses by less, or not by much more; empty where it does nowhere on the way
     * @param refusal why the machine cannot run at the end of the step; empty where it can
     * @param lifts whether the condensing pressure lies above the evaporating one there
     */
    private record Move(Optional<Node> to, Optional<EngineException> refusal, boolean lifts) {}

    private Move move(Node from, Jacobian.Step step, double miss) {
        Optional<EngineException> refusal = Optional.empty();
        double share = 1;
        for (int k = 0; k < MAX_HALVINGS; k++) {
            double e = clamp(from.e() + share * step.e(), window.mostEvaporating());
            double c = clamp(from.c() + share * step.c(), window.mostCondensing());
            try {
                Node next = Node.of(e, c, probe.at(e, c));
                if (next.sound() && miss(next) < 2 * miss + LONGEST) {
                    return new Move(Optional.of(next), refusal, lifts(from, step));
                }
            } catch (EngineException exception) {
                refusal = k == 0 ? Optional.of(exception) : refusal;
            }
            share /= 2;
        }
        return new Move(Optional.empty(), refusal, lifts(from, step));
    }

    private boolean lifts(Node from, Jacobian.Step step) {
        return window.condensing(clamp(from.c() + step.c(), window.mostCondensing()))
                > BracketSearch.LEAST_RATIO * window.evaporating(clamp(from.e() + step.e(), window.mostEvaporating()));
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
                guessDecided = true;
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
