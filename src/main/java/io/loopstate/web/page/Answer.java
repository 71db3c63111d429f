package io.loopstate.web.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A reply as a person reads it.
 *
 * @param refrigerant what was calculated with
 * @param figures the first numbers to look at
 * @param alerts warnings, the worst first
 * @param missing what would open more of the answer; empty where nothing would
 * @param tables the other numbers
 * @param cautions what no calculation takes over
 * @param foot what the numbers rest on
 */
public record Answer(
        String refrigerant,
        List<Line> figures,
        List<Alert> alerts,
        String missing,
        List<Table> tables,
        List<String> cautions,
        String foot) {
    private static final String NO_FLOW =
            "Flow, capacity and heat rejected as a power need one more reading: airflow with the air before and behind the condenser, "
                    + "volts and amperes, or displacement with volumetric efficiency.";
    private static final List<String> SEVERITIES = List.of("danger", "caution", "note");

    /**
     * A name and what stands beside it.
     *
     * @param label the name
     * @param number the number
     * @param unit its unit; empty where it has none
     */
    public record Line(String label, String number, String unit) {}

    /**
     * A warning.
     *
     * @param severity name of the style
     * @param title what it is about
     * @param message in sentences
     * @param numbers value and limit; empty where there are none
     * @param basis where the limit comes from
     */
    public record Alert(String severity, String title, String message, String numbers, String basis) {}

    /** Copies the lists. */
    public Answer {
        figures = List.copyOf(figures);
        alerts = List.copyOf(alerts);
        tables = List.copyOf(tables);
        cautions = List.copyOf(cautions);
    }

    /** The reply to a question. */
    static Answer of(Question question, JsonNode reply, Labels labels) {
        List<Table> tables = new ArrayList<>();
        for (int i = 0; i < question.tables().size(); i++) {
            Table.of(question.tables().get(i), "table-" + i, reply, labels).ifPresent(tables::add);
        }
        List<Alert> alerts = new ArrayList<>();
        reply.path("warnings").forEach(warning -> alerts.add(alert(warning, labels)));
        alerts.sort(Comparator.comparingInt(alert -> SEVERITIES.indexOf(alert.severity())));
        List<String> cautions = new ArrayList<>();
        reply.path("cautions").forEach(caution -> cautions.add(caution.asText()));
        return new Answer(
                reply.at("/basis/refrigerant").asText(),
                question.figures().stream()
                        .filter(figure -> !reply.at(figure.pointer()).isMissingNode())
                        .map(figure -> line(figure.label(), reply.at(figure.pointer()), labels))
                        .toList(),
                alerts,
                reply.path("routes").isArray() && reply.path("routes").isEmpty() ? NO_FLOW : "",
                tables,
                cautions,
                foot(reply.path("basis"), labels));
    }

    private static Line line(String label, JsonNode value, Labels labels) {
        return new Line(
                label, Labels.number(value), labels.symbol(value.path("unit").asText()));
    }

    private static Alert alert(JsonNode warning, Labels labels) {
        String numbers = "";
        if (warning.has("value")) {
            numbers = labels.text(warning.get("value"))
                    + (warning.has("limit") ? ", limit " + labels.text(warning.get("limit")) : "");
        }
        return new Alert(
                warning.path("severity").asText(),
                Labels.words(warning.path("code").asText()),
                warning.path("message").asText(),
                numbers,
                warning.path("basis").asText());
    }

    private static String foot(JsonNode basis, Labels labels) {
        return "Engine " + basis.path("engineVersion").asText() + ". Reference state of enthalpy and entropy: "
                + basis.path("referenceState").asText() + ". Atmosphere: "
                + labels.text(basis.at("/atmosphere/pressure")) + " ("
                + labels.text(basis.at("/atmosphere/origin")) + "). Equation of state: "
                + basis.at("/equationOfState/source").asText("see the reply") + '.';
    }
}
