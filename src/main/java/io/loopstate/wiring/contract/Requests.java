package io.loopstate.wiring.contract;

import io.loopstate.web.mapping.Contract;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.Components;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.PathItem.HttpMethod;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;

/** The parameters of a query are the flattened members of the body at the same path. */
final class Requests {
    private static final String SCHEMAS = "#/components/schemas/";
    private static final String JSON = "application/json";

    private final Components components;

    Requests(Components components) {
        this.components = components;
    }

    /** Members of a request in the order of its declaration, and no others. */
    static void order(String name, Schema schema) {
        List<String> members = Contract.members(name);
        if (!members.isEmpty()) {
            Map<String, Schema> ordered = new LinkedHashMap<>();
            members.forEach(member -> ordered.put(member, schema.getProperties().get(member)));
            schema.setProperties(ordered);
            schema.setAdditionalPropertiesBoolean(false);
        }
    }

    /** Parameters for the GET and the POST of a path that has a POST. */
    void complete(PathItem item) {
        Operation post = item.getOperations().get(HttpMethod.POST);
        if (post == null) {
            return;
        }
        Schema body =
                resolve(post.getRequestBody().getContent().getMediaType(JSON).getSchema());
        List<String> options = Contract.options();
        // Bodies of many calculations: an array of rows, or the request that the points of a sweep share.
        if (body.getProperties() == null || body.getProperties().containsKey("request")) {
            options.forEach(
                    option -> post.addParameter(OASFactory.createParameter().ref(option)));
            return;
        }
        List<Parameter> parameters = parameters("", body);
        for (Parameter parameter : parameters) {
            boolean option = options.contains(parameter.getName());
            if (option) {
                components.addParameter(parameter.getName(), parameter);
                post.addParameter(OASFactory.createParameter().ref(parameter.getName()));
            }
            Operation get = item.getOperations().get(HttpMethod.GET);
            if (get != null) {
                get.addParameter(option ? OASFactory.createParameter().ref(parameter.getName()) : parameter);
            }
        }
    }

    private List<Parameter> parameters(String owner, Schema body) {
        List<Parameter> parameters = new ArrayList<>();
        body.getProperties().forEach((member, schema) -> {
            String name = Contract.flat(owner, member);
            Schema target = resolve(schema);
            if (target.getProperties() != null && !quantity(schema)) {
                parameters.addAll(parameters(name, target));
            } else {
                Schema text = ofText(schema);
                boolean required = owner.isEmpty()
                        && body.getRequired() != null
                        && body.getRequired().contains(member);
                parameters.add(OASFactory.createParameter()
                        .in(Parameter.In.QUERY)
                        .name(name)
                        .description(
                                schema.getDescription() == null
                                        ? resolve(text).getDescription()
                                        : schema.getDescription())
                        .required(required ? Boolean.TRUE : null)
                        .schema(text));
            }
        });
        return parameters;
    }

    private Schema resolve(Schema schema) {
        return schema.getRef() == null ? schema : components.getSchemas().get(name(schema));
    }

    private boolean quantity(Schema schema) {
        return schema.getRef() != null && Quantities.isKind(name(schema));
    }

    private Schema ofText(Schema schema) {
        if (schema.getRef() != null) {
            return quantity(schema)
                    ? Quantities.text(components, name(schema))
                    : OASFactory.createSchema().ref(schema.getRef());
        }
        if (schema.getItems() != null) {
            return OASFactory.createSchema().addType(Schema.SchemaType.STRING).examples(List.of("1,2.5,-3"));
        }
        return OASFactory.createSchema()
                .type(schema.getType())
                .format(schema.getFormat())
                .pattern(schema.getPattern())
                .minimum(schema.getMinimum())
                .maximum(schema.getMaximum())
                .exclusiveMinimum(schema.getExclusiveMinimum())
                .exclusiveMaximum(schema.getExclusiveMaximum())
                .examples(schema.getExamples());
    }

    private static String name(Schema reference) {
        return reference.getRef().substring(SCHEMAS.length());
    }
}
