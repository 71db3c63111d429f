package io.loopstate.web.page;

import io.loopstate.web.dto.RefrigerantItem;
import io.loopstate.web.problem.Fault;
import java.util.ArrayList;
import java.util.List;

/**
 * The form as it stands after a request: what was sent is still in it.
 *
 * @param refrigerants the catalogue, single compounds and blends apart
 * @param ownBlend composition of a client's own
 * @param refrigerantErrors what is wrong with either
 * @param groups the fields
 * @param units sets of units of a reply
 * @param digits significant digits of a reply
 * @param picks values for the cell of a spreadsheet
 * @param arguments what separates the arguments of a spreadsheet's function
 * @param decimals marks of the numbers that are typed
 */
public record Form(
        List<Kind> refrigerants,
        String ownBlend,
        List<String> refrigerantErrors,
        List<Group> groups,
        List<Choice> units,
        List<Choice> digits,
        List<Choice> picks,
        List<Choice> arguments,
        List<Choice> decimals) {
    private static final List<Choice> UNITS = List.of(
            new Choice("IP,pressure=psig", "Inch-pound, gauge", false),
            new Choice("IP", "Inch-pound, absolute", false),
            new Choice("SI,pressure=bar_g", "SI, gauge", false),
            new Choice("SI", "SI, absolute", false));
    private static final List<Choice> DIGITS = List.of(
            new Choice("5", "5 digits", false),
            new Choice("4", "4 digits", false),
            new Choice("8", "8 digits", false),
            new Choice("", "all digits", false));
    private static final List<Choice> ARGUMENTS = List.of(
            new Choice("comma", "comma, as in English", false),
            new Choice("semicolon", "semicolon, as in most of Europe", false));
    private static final List<Choice> DECIMALS =
            List.of(new Choice("", "point, 41.5", false), new Choice(",", "comma, 41,5", false));

    /**
     * Refrigerants of a kind.
     *
     * @param label of the kind
     * @param choices its refrigerants
     */
    public record Kind(String label, List<Choice> choices) {}

    /**
     * Fields that belong together.
     *
     * @param title of the group
     * @param side name of its style
     * @param folded whether it may be put away
     * @param open whether it is not
     * @param inputs its fields
     */
    public record Group(String title, String side, boolean folded, boolean open, List<Input> inputs) {}

    /**
     * One field.
     *
     * @param name of the parameter
     * @param label for a person
     * @param hint below it
     * @param required whether it must be filled
     * @param value what is in it
     * @param units to choose from; empty where there is one or none
     * @param usualIp the unit to choose where the page speaks inch-pound
     * @param usualSi the unit to choose where it speaks SI
     * @param unit the only unit, printed; empty where there is a choice or none
     * @param errors what is wrong with it
     */
    public record Input(
            String name,
            String label,
            String hint,
            boolean required,
            String value,
            List<Choice> units,
            String usualIp,
            String usualSi,
            String unit,
            List<String> errors) {}

    /** Copies the lists. */
    public Form {
        refrigerants = List.copyOf(refrigerants);
        refrigerantErrors = List.copyOf(refrigerantErrors);
        groups = List.copyOf(groups);
    }

    /** What was sent, and what is wrong with it. */
    static Form of(Composition sent, List<RefrigerantItem> catalogue, List<Fault> faults, Labels labels) {
        List<Group> groups = new ArrayList<>();
        for (Question.Group group : sent.question().groups()) {
            List<Input> inputs = group.fields().stream()
                    .map(field -> input(field, sent, faults, labels))
                    .toList();
            boolean used = inputs.stream().anyMatch(input -> !input.value().isEmpty());
            groups.add(new Group(group.title(), group.side(), group.folded(), used, inputs));
        }
        List<Choice> picks = sent.question().figures().stream()
                .map(figure -> new Choice(figure.pick(), figure.label(), false))
                .toList();
        return new Form(
                kinds(sent, catalogue),
                sent.sent(Composition.OWN_BLEND),
                errors(Composition.REFRIGERANT, faults),
                groups,
                chosen(UNITS, sent, Composition.UNITS, "SI"),
                chosen(DIGITS, sent, Composition.DIGITS, ""),
                chosen(picks, sent, Composition.PICK, picks.get(0).value()),
                chosen(ARGUMENTS, sent, Composition.ARGUMENTS, ARGUMENTS.get(0).value()),
                chosen(DECIMALS, sent, Composition.DEC, ""));
    }

    private static List<Kind> kinds(Composition sent, List<RefrigerantItem> catalogue) {
        String chosen = sent.sent(Composition.REFRIGERANT);
        List<Choice> pure = new ArrayList<>();
        List<Choice> blends = new ArrayList<>();
        boolean found = chosen.isEmpty();
        for (RefrigerantItem item : catalogue) {
            boolean same = item.designation().equals(chosen);
            found |= same;
            String group = item.safetyGroup() == null
                    ? ""
                    : " · " + item.safetyGroup().name().replace('_', ' ');
            String label = item.designation() + group + (item.blend() == null ? " · " + item.name() : "");
            (item.blend() == null ? pure : blends).add(new Choice(item.designation(), label, same));
        }
        List<Kind> kinds = new ArrayList<>(List.of(new Kind("Single compounds", pure), new Kind("Blends", blends)));
        if (!found) {
            kinds.add(0, new Kind("As sent", List.of(new Choice(chosen, chosen, true))));
        }
        return kinds;
    }

    private static Input input(Field field, Composition sent, List<Fault> faults, Labels labels) {
        String unit = sent.unit(field);
        List<String> tokens = field.units().tokens();
        List<Choice> units = tokens.size() < 2
                ? List.of()
                : tokens.stream()
                        .map(token -> new Choice(token, labels.symbol(token), token.equals(unit)))
                        .toList();
        return new Input(
                field.name(),
                field.label(),
                field.hint(),
                field.required(),
                sent.number(field),
                units,
                field.units().usualIp(),
                field.units().usualSi(),
                tokens.size() == 1 ? labels.symbol(tokens.get(0)) : "",
                errors(field.name(), faults));
    }

    private static List<String> errors(String name, List<Fault> faults) {
        return faults.stream()
                .filter(fault -> name.equals(fault.parameter()))
                .map(Refusal::text)
                .toList();
    }

    /**
     * The list with what was sent chosen; what is not in the list comes first.
     *
     * @param absent what a request means that does not say
     */
    private static List<Choice> chosen(List<Choice> choices, Composition sent, String name, String absent) {
        String unsaid = sent.asked() ? absent : choices.get(0).value();
        String value = sent.given(name) ? sent.sent(name) : unsaid;
        List<Choice> all = new ArrayList<>();
        choices.forEach(choice -> all.add(
                new Choice(choice.value(), choice.label(), choice.value().equals(value))));
        if (all.stream().noneMatch(Choice::selected)) {
            all.add(0, new Choice(value, value, true));
        }
        return all;
    }
}
