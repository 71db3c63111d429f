package io.loopstate.wiring;

import io.loopstate.web.mapping.Contract;
import io.loopstate.web.problem.Problem;
import io.quarkus.smallrye.openapi.OpenApiFilter;
import io.quarkus.smallrye.openapi.OpenApiFilter.RunStage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.Components;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.PathItem.HttpMethod;
import org.eclipse.microprofile.openapi.models.media.MediaType;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;

/**
 * Adds to the contract what annotations cannot say: a schema for each kind of quantity with its units, the parameters of
 * each query as the flattened members of the body, the refusals of each operation. Runs while the build writes the contract.
 */
@OpenApiFilter(stages = RunStage.BUILD)
public class ContractFilter implements OASFilter {
    private static final String SCHEMAS = "#/components/schemas/";
    private static final String JSON = "application/json";
    private static final Map<Integer, String> REFUSALS = new TreeMap<>(Map.of(
            400, "The request cannot be read: syntax, names, units, or too many or too few inputs.",
            404, "There is nothing of this name.",
            406, "None of the accepted formats is offered.",
            413, "The body is longer than the limit.",
            415, "The format of the body is not read here.",
            422, "The request can be read, but is physically impossible or outside the range of the model.",
            500, "A defect of the service."));

    @Override
    public void filterOpenAPI(OpenAPI contract) {
        Components components = contract.getComponents();
        Contract.kinds().forEach(kind -> addKind(components, kind));
        components.addSchema(
                "AnyQuantity",
                quantity("A number of any kind with its unit; a plain number has the unit ratio.", Contract.units()));
        components.getSchemas().forEach(ContractFilter::order);
        components.setSchemas(new TreeMap<>(components.getSchemas()));
        REFUSALS.forEach((status, words) -> components.addResponse(
                "Problem" + status,
                OASFactory.createAPIResponse()
                        .description(words)
                        .content(OASFactory.createContent()
                                .addMediaType(
                                        Problem.MEDIA_TYPE,
                                        OASFactory.createMediaType().schema(reference("Problem"))))));
        contract.getPaths().getPathItems().forEach((path, item) -> complete(components, path, item));
    }

    private static void addKind(Components components, Contract.Kind kind) {
        String replies = kind.siReply().equals(kind.ipReply())
                ? " Replies: " + kind.siReply() + "."
                : " Replies: " + kind.siReply() + " in SI, " + kind.ipReply() + " in IP.";
        String words = kind.words().substring(0, 1).toUpperCase(Locale.ROOT)
                + kind.words().substring(1);
        components.addSchema(
                kind.schema(),
                quantity(
                        words + ", a number with its unit." + replies + " A request may write it as text too: \"41.5 "
                                + kind.siReply() + "\".",
                        kind.units()));
        components.addSchema(
                kind.schema() + "Text",
                OASFactory.createSchema()
                        .addType(Schema.SchemaType.STRING)
                        .description(words + ": a number and a unit with a space between. Units: "
                                + String.join(", ", kind.units()) + ".")
                        .addExample("41.5 " + kind.siReply()));
    }

    private static Schema quantity(String description, List<String> units) {
        return OASFactory.createSchema()
                .addType(Schema.SchemaType.OBJECT)
                .description(description)
                .required(List.of("value", "unit"))
                .addProperty(
                        "value",
                        OASFactory.createSchema()
                                .addType(Schema.SchemaType.NUMBER)
                                .format("double"))
                .addProperty(
                        "unit",
                        OASFactory.createSchema()
                                .addType(Schema.SchemaType.STRING)
                                .enumeration(List.copyOf(units)));
    }

    /** Members of a request in the order of its declaration, and no others. */
    private static void order(String name, Schema schema) {
        List<String> members = Contract.members(name);
        if (!members.isEmpty()) {
            Map<String, Schema> ordered = new LinkedHashMap<>();
            members.forEach(member -> ordered.put(member, schema.getProperties().get(member)));
            schema.setProperties(ordered);
            schema.setAdditionalPropertiesBoolean(false);
        }
    }

    private static void complete(Components components, String path, PathItem item) {
        Map<HttpMethod, Operation> operations = item.getOperations();
        Operation post = operations.get(HttpMethod.POST);
        if (post != null) {
            Schema body = body(components, post);
            parameters(components, "", body, true).forEach(post::addParameter);
            Operation get = operations.get(HttpMethod.GET);
            if (get != null) {
                parameters(components, "", body, false).forEach(get::addParameter);
            }
        }
        operations.forEach((method, operation) -> {
            List<Integer> statuses = new ArrayList<>(List.of(400, 406, 500));
            if (post != null) {
                statuses.add(422);
            }
            if (method == HttpMethod.POST) {
                statuses.addAll(List.of(413, 415));
            }
            if (path.contains("{")) {
                statuses.add(404);
            }
            statuses.stream()
                    .sorted()
                    .forEach(status -> operation
                            .getResponses()
                            .addAPIResponse(
                                    status.toString(),
                                    OASFactory.createAPIResponse().ref("#/components/responses/Problem" + status)));
        });
    }

    private static Schema body(Components components, Operation post) {
        MediaType media = post.getRequestBody().getContent().getMediaType(JSON);
        return resolve(components, media.getSchema());
    }

    private static Schema resolve(Components components, Schema schema) {
        return schema.getRef() == null
                ? schema
                : components.getSchemas().get(schema.getRef().substring(SCHEMAS.length()));
    }

    /** The members of a body as parameters; of a POST only those that may stand in its query. */
    private static List<Parameter> parameters(Components components, String owner, Schema body, boolean optionsOnly) {
        List<Parameter> parameters = new ArrayList<>();
        body.getProperties().forEach((member, schema) -> {
            if (optionsOnly && !Contract.options().contains(member)) {
                return;
            }
            String name = Contract.flat(owner, member);
            Schema target = resolve(components, schema);
            boolean quantity =
                    schema.getRef() != null && components.getSchemas().containsKey(text(schema));
            if (!quantity && target.getProperties() != null) {
                parameters.addAll(parameters(components, name, target, false));
                return;
            }
            boolean required = owner.isEmpty()
                    && !optionsOnly
                    && body.getRequired() != null
                    && body.getRequired().contains(member);
            parameters.add(OASFactory.createParameter()
                    .in(Parameter.In.QUERY)
                    .name(name)
                    .description(schema.getDescription())
                    .required(required ? Boolean.TRUE : null)
                    .schema(quantity ? reference(text(schema)) : plain(schema)));
        });
        return parameters;
    }

    private static String text(Schema schema) {
        return schema.getRef().substring(SCHEMAS.length()) + "Text";
    }

    private static Schema plain(Schema schema) {
        return schema.getRef() != null
                ? reference(schema.getRef().substring(SCHEMAS.length()))
                : OASFactory.createSchema()
                        .type(schema.getType())
                        .format(schema.getFormat())
                        .enumeration(schema.getEnumeration())
                        .pattern(schema.getPattern())
                        .defaultValue(schema.getDefaultValue())
                        .minimum(schema.getMinimum())
                        .maximum(schema.getMaximum())
                        .examples(schema.getExamples());
    }

    private static Schema reference(String name) {
        return OASFactory.createSchema().ref(SCHEMAS + name);
    }
}
