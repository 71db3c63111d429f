package io.loopstate.web.page;

import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Problem;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A refusal as a person reads it.
 *
 * @param title the kind of problem
 * @param lines its faults
 */
public record Refusal(String title, List<Line> lines) {
    /** Beyond so many characters what is allowed is a list for a program. */
    private static final int LONGEST_ALLOWED = 160;

    /**
     * One fault.
     *
     * @param field the field it belongs to; empty where the form has none of its name
     * @param label of the field, or the name of the parameter
     * @param text what is wrong and what would be right
     */
    public record Line(String field, String label, String text) {}

    /** Copies the lines. */
    public Refusal {
        lines = List.copyOf(lines);
    }

    static Refusal of(Problem problem, Question question) {
        Set<String> names = question.fields().stream().map(Field::name).collect(Collectors.toSet());
        List<Line> lines = problem.errors().stream()
                .map(fault -> {
                    String name = fault.parameter() == null ? "" : fault.parameter();
                    boolean inForm = names.contains(name) || name.equals(Composition.REFRIGERANT);
                    return new Line(inForm ? name : "", label(name, question), text(fault));
                })
                .toList();
        return new Refusal(problem.title(), lines.isEmpty() ? List.of(new Line("", "", problem.detail())) : lines);
    }

    private static String label(String name, Question question) {
        return question.fields().stream()
                .filter(field -> field.name().equals(name))
                .map(Field::label)
                .findFirst()
                .orElse(name.isEmpty() ? "" : Labels.words(name));
    }

    /** A fault in sentences. */
    static String text(Fault fault) {
        StringBuilder text = new StringBuilder(fault.detail());
        if (fault.got() != null && !fault.got().isEmpty()) {
            text.append(" Got: ").append(fault.got()).append('.');
        }
        if (fault.allowed() != null && fault.allowed().length() <= LONGEST_ALLOWED) {
            text.append(" Allowed: ").append(fault.allowed()).append('.');
        }
        if (fault.hint() != null) {
            text.append(' ').append(fault.hint());
        }
        return text.toString();
    }
}
