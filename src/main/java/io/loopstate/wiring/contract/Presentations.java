package io.loopstate.wiring.contract;

import io.loopstate.web.dto.Presentation;
import io.loopstate.web.form.Form;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.Components;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.media.Content;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;

/** The forms of a reply and the parameters that choose among them, for every operation whose reply is JSON alone. */
final class Presentations {
    private static final List<Form> TEXTS = List.of(Form.CSV, Form.TSV, Form.TXT, Form.HTML, Form.XML);

    Presentations(Components components) {
        for (RecordComponent component : Presentation.class.getRecordComponents()) {
            components.addParameter(component.getName(), parameter(component));
        }
    }

    void complete(PathItem item) {
        item.getOperations().values().stream().filter(Presentations::jsonAlone).forEach(Presentations::complete);
    }

    private static boolean jsonAlone(Operation operation) {
        Content content = operation.getResponses().getAPIResponse("200") == null
                ? null
                : operation.getResponses().getAPIResponse("200").getContent();
        return content != null
                && content.getMediaTypes()
                        .keySet()
                        .equals(Map.of(Form.JSON.mediaType(), "").keySet());
    }

    private static void complete(Operation operation) {
        for (RecordComponent component : Presentation.class.getRecordComponents()) {
            operation.addParameter(OASFactory.createParameter().ref(component.getName()));
        }
        Content content = operation.getResponses().getAPIResponse("200").getContent();
        for (Form form : TEXTS) {
            content.addMediaType(
                    form.mediaType(),
                    OASFactory.createMediaType()
                            .schema(OASFactory.createSchema().addType(Schema.SchemaType.STRING)));
        }
    }

    private static Parameter parameter(RecordComponent component) {
        org.eclipse.microprofile.openapi.annotations.media.Schema words =
                component.getAccessor().getAnnotation(org.eclipse.microprofile.openapi.annotations.media.Schema.class);
        Schema schema = OASFactory.createSchema()
                .addType(component.getType() == Integer.class ? Schema.SchemaType.INTEGER : Schema.SchemaType.STRING);
        if (!words.pattern().isEmpty()) {
            schema.setPattern(words.pattern());
        }
        if (!words.minimum().isEmpty()) {
            schema.setMinimum(new BigDecimal(words.minimum()));
            schema.setMaximum(new BigDecimal(words.maximum()));
        }
        if (words.examples().length > 0) {
            schema.setExamples(Arrays.<Object>asList((Object[]) words.examples()));
        }
        return OASFactory.createParameter()
                .in(Parameter.In.QUERY)
                .name(component.getName())
                .description(words.description())
                .schema(schema);
    }
}
