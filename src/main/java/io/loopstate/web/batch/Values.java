package io.loopstate.web.batch;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.web.form.FlatName;
import io.loopstate.web.form.Leaf;
import io.loopstate.web.form.Selection;
import io.loopstate.web.mapping.ReplyKinds;
import io.loopstate.web.problem.ProblemException;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** The values that are picked out of one reply after the other, and the picks that none of them has; for one thread. */
final class Values {
    private static final String AMBIGUOUS = "ambiguous-name";

    private final List<String> picks;
    private final Set<String> found = new HashSet<>();
    private final Map<String, ProblemException> unknown = new LinkedHashMap<>();
    private final Map<String, ProblemException> absent = new LinkedHashMap<>();

    Values(List<String> picks) {
        this.picks = picks;
    }

    /**
     * The values of a reply by name. A name that is taken already gets {@code reply} in front.
     *
     * @param tree the reply as it is written
     */
    Map<String, Leaf> of(Class<?> reply, JsonNode tree, Predicate<Leaf> taken) {
        Set<String> missing = new HashSet<>();
        Map<String, Leaf> values = new LinkedHashMap<>();
        List<Leaf> leaves = Selection.row(tree, picks, (pick, problem) -> {
            missing.add(pick);
            absent.putIfAbsent(pick, problem);
            // A value that this reply could have may be in another; a name of several means none.
            boolean several = problem.problem().errors().get(0).code().equals(AMBIGUOUS);
            if (several || !ReplyKinds.mayHave(reply, last(pick))) {
                unknown.putIfAbsent(pick, problem);
            }
        });
        leaves.forEach(leaf ->
                values.putIfAbsent(taken.test(leaf) ? FlatName.of(List.of("reply", leaf.name())) : leaf.name(), leaf));
        picks.stream().filter(pick -> !missing.contains(pick)).forEach(found::add);
        return values;
    }

    /**
     * Refuses a pick that is a slip.
     *
     * @throws ProblemException for the first pick that no reply has or could have
     */
    void refuseUnknown() {
        refuse(unknown);
    }

    /**
     * Refuses a pick that means nothing, where all replies were seen.
     *
     * @throws ProblemException for the first pick that none of the replies has
     */
    void refuseAbsent() {
        refuse(absent);
    }

    private void refuse(Map<String, ProblemException> picks) {
        picks.forEach((pick, problem) -> {
            if (!found.contains(pick)) {
                throw problem;
            }
        });
    }

    private static String last(String pick) {
        return pick.substring(Math.max(pick.lastIndexOf('/'), pick.lastIndexOf('.')) + 1);
    }
}
