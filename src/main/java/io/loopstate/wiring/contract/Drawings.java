package io.loopstate.wiring.contract;

import io.loopstate.web.chart.Svg;
import io.loopstate.web.mapping.Pictures;
import java.util.List;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.Components;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.PathItem.HttpMethod;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;

/** Pictures among the replies of the calculations that are drawn, and the parameter that chooses among several. */
final class Drawings {
    private static final String SWEEP = "SweepRequest";

    Drawings(Components components) {
        List<String> choices = Pictures.choices();
        components.addParameter(
                Pictures.CHOICE,
                OASFactory.createParameter()
                        .in(Parameter.In.QUERY)
                        .name(Pictures.CHOICE)
                        .description(
                                "Which picture is drawn; only with image/svg+xml. Default: " + choices.get(0) + ".")
                        .schema(OASFactory.createSchema()
                                .addType(Schema.SchemaType.STRING)
                                .enumeration(List.copyOf(choices))));
    }

    void complete(PathItem item) {
        Operation post = item.getOperations().get(HttpMethod.POST);
        if (post == null || post.getRequestBody() == null) {
            return;
        }
        String reference = post.getRequestBody()
                .getContent()
                .getMediaType("application/json")
                .getSchema()
                .getRef();
        String schema = reference == null ? "" : reference.substring(reference.lastIndexOf('/') + 1);
        if (schema.equals(SWEEP)) {
            complete(post, false);
        } else if (Pictures.drawn(schema)) {
            item.getOperations().values().forEach(operation -> complete(operation, Pictures.several(schema)));
        }
    }

    private static void complete(Operation operation, boolean several) {
        if (several) {
            operation.addParameter(OASFactory.createParameter().ref(Pictures.CHOICE));
        }
        operation
                .getResponses()
                .getAPIResponse("200")
                .getContent()
                .addMediaType(
                        Svg.MEDIA_TYPE,
                        OASFactory.createMediaType()
                                .schema(OASFactory.createSchema().addType(Schema.SchemaType.STRING)));
    }
}
