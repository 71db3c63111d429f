package io.loopstate.web.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.web.dto.RefrigerantItem;
import io.loopstate.web.dto.UnitsReply;
import io.loopstate.web.dto.Version;
import io.loopstate.web.form.Layout;
import io.loopstate.web.form.LayoutReader;
import io.loopstate.web.form.Renderer;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.Operations;
import io.loopstate.web.mapping.Pictures;
import io.loopstate.web.page.FrontPage.Link;
import io.loopstate.web.page.FrontPage.Picture;
import io.loopstate.web.page.FrontPage.Tab;
import io.loopstate.web.problem.Problem;
import io.loopstate.web.problem.ProblemException;
import io.loopstate.web.template.Templates;
import io.quarkus.qute.RawString;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Writes the front page: as a form to fill, or with the answer to what it sent. */
public final class FrontPages {
    private static final List<Link> EXAMPLES = List.of(
            example("R-134a bench trainer", "cycle-points-readings/good"),
            example("R-448A walk-in cooler, with glide", "cycle-points-readings/blend"),
            example("R-290 ice-cream case: liquid at the compressor", "cycle-points-readings/warning"));

    private final Exchange exchange;
    private final ObjectMapper mapper;
    private final List<RefrigerantItem> refrigerants;
    private final Labels labels;
    private final boolean keyed;
    private final String version;
    private final List<Families.Family> families = Families.bundled();

    /**
     * A page as it is sent.
     *
     * @param status of the reply
     * @param text the page
     */
    public record Written(int status, String text) {}

    /**
     * Pages of a service that knows these refrigerants and units.
     *
     * @param keyed whether requests need a key
     */
    public FrontPages(
            Exchange exchange,
            ObjectMapper mapper,
            List<RefrigerantItem> refrigerants,
            UnitsReply units,
            boolean keyed,
            Version version) {
        this.exchange = exchange;
        this.mapper = mapper;
        this.refrigerants = List.copyOf(refrigerants);
        this.labels = new Labels(units);
        this.keyed = keyed;
        this.version = version.engineVersion();
    }

    private static Link example(String label, String file) {
        String query = Templates.text("/examples/" + file + ".url").strip();
        String gauge =
                query.substring(query.indexOf('?') + 1).replaceFirst("units=IP(?=&|$)", "units=IP,pressure=psig");
        return new Link(label, "/?ask=readings&" + gauge + "&digits=5");
    }

    /**
     * The page of a query.
     *
     * @param sent the parameters, decoded
     * @param base scheme, host and port under which the service was asked
     */
    public Written page(Map<String, List<String>> sent, String base) {
        Composition composition = new Composition(sent);
        if (!composition.asked()) {
            return new Written(200, write(composition, base, Optional.empty(), Optional.empty()));
        }
        try {
            JsonNode reply = answer(composition);
            return new Written(200, write(composition, base, Optional.of(reply), Optional.empty()));
        } catch (ProblemException e) {
            return new Written(
                    e.problem().status(), write(composition, base, Optional.empty(), Optional.of(e.problem())));
        }
    }

    private JsonNode answer(Composition composition) {
        Map<String, List<String>> parameters = composition.parameters();
        Object reply = exchange.answer(
                Operations.named(composition.question().operation()).orElseThrow(), parameters);
        Layout layout =
                LayoutReader.read(parameters, io.loopstate.web.form.Form.JSON).layout();
        return Renderer.rounded(mapper.valueToTree(reply), layout);
    }

    private String write(Composition composition, String base, Optional<JsonNode> reply, Optional<Problem> problem) {
        Question question = composition.question();
        String target = composition.target();
        return new FrontPage(
                        "Loopstate",
                        PageFile.STYLE.address(),
                        PageFile.SCRIPT.address(),
                        Questions.ALL.stream()
                                .map(each -> tab(each, composition))
                                .toList(),
                        question.purpose(),
                        question.key(),
                        Form.of(
                                composition,
                                refrigerants,
                                problem.map(Problem::errors).orElse(List.of()),
                                labels),
                        composition.asked(),
                        problem.map(found -> Refusal.of(found, question)).orElse(new Refusal("", List.of())),
                        reply.map(tree -> List.of(Answer.of(question, tree, labels)))
                                .orElse(List.of()),
                        reply.isPresent() ? picture(question, composition, target) : List.of(),
                        reply.map(tree -> takeaways(composition, base, target, tree))
                                .orElse(List.of()),
                        reply.isPresent() ? links(question, target) : List.of(),
                        EXAMPLES,
                        families,
                        base,
                        keyed,
                        version)
                .render();
    }

    private static Tab tab(Question question, Composition composition) {
        String units = composition.sent(Composition.UNITS);
        String kept = units.isEmpty() ? "" : '&' + Composition.query(Map.of(Composition.UNITS, List.of(units)));
        return new Tab(question.label(), "/?ask=" + question.key() + kept, question.equals(composition.question()));
    }

    private List<Picture> picture(Question question, Composition composition, String target) {
        String refrigerant = composition
                .parameters()
                .getOrDefault(Composition.REFRIGERANT, List.of(""))
                .get(0);
        try {
            List<RawString> drawn = drawn(composition);
            return question.picture().stream()
                    .map(words -> new Picture(target + "&format=svg", refrigerant + ": " + words, drawn))
                    .toList();
        } catch (ProblemException e) {
            // Without a picture the answer is still one.
            return List.of();
        }
    }

    /** In the page itself where the address of a picture would need a key. */
    private List<RawString> drawn(Composition composition) {
        return !keyed
                ? List.of()
                : Pictures.named(composition.question().operation())
                        .map(picture -> new RawString(exchange.draw(picture, composition.parameters())))
                        .stream()
                        .toList();
    }

    /** Whether requests need a key, so that the page says so. */
    public boolean keyed() {
        return keyed;
    }

    /** For the value that was chosen, or the first that the answer has. */
    private static List<Takeaways.Takeaway> takeaways(
            Composition composition, String base, String target, JsonNode reply) {
        List<Question.Figure> present = composition.question().figures().stream()
                .filter(figure -> !reply.at(figure.pointer()).isMissingNode())
                .toList();
        String wanted = composition.sent(Composition.PICK);
        Question.Figure pick = present.stream()
                .filter(figure -> figure.pick().equals(wanted))
                .findFirst()
                .orElse(present.get(0));
        return Takeaways.of(
                base,
                target,
                pick,
                composition.sent(Composition.ARGUMENTS).equals("semicolon"),
                composition.sent(Composition.DEC).equals(","));
    }

    private static List<Link> links(Question question, String target) {
        return Stream.of(
                        new Link("JSON", target + "&format=json"),
                        new Link("Table to print", target + "&format=html"),
                        new Link("CSV", target + "&format=csv"),
                        new Link("With the working", target + "&explain=true&format=json"),
                        new Link("Picture alone", target + "&format=svg"))
                .filter(link ->
                        !link.address().endsWith("svg") || question.picture().isPresent())
                .toList();
    }
}
