package io.loopstate.wiring.contract;

import io.loopstate.web.problem.Problem;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.Components;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.PathItem.HttpMethod;

/** The refusals that each operation can give. */
final class Refusals {
    private static final Map<Integer, String> WORDS = new TreeMap<>(Map.of(
            400, "The request cannot be read: syntax, names, units, or too many or too few inputs.",
            401, "The header X-API-Key is missing or wrong; only where the service asks for keys.",
            404, "There is nothing of this name.",
            406, "None of the accepted formats is offered.",
            413, "The body is longer than the limit.",
            415, "The format of the body is not read here.",
            422, "The request can be read, but is physically impossible or outside the range of the model.",
            429, "Too many requests with this key; Retry-After says when to come back.",
            500, "A defect of the service.",
            503, "The service is busy; Retry-After says when to come back."));

    Refusals(Components components) {
        WORDS.forEach((status, words) -> components.addResponse(
                name(status),
                OASFactory.createAPIResponse()
                        .description(words)
                        .content(OASFactory.createContent()
                                .addMediaType(
                                        Problem.MEDIA_TYPE,
                                        OASFactory.createMediaType()
                                                .schema(OASFactory.createSchema()
                                                        .ref("#/components/schemas/Problem"))))));
    }

    void complete(String path, PathItem item) {
        boolean calculation = item.getOperations().containsKey(HttpMethod.POST);
        boolean many = calculation && !item.getOperations().containsKey(HttpMethod.GET);
        item.getOperations().forEach((method, operation) -> {
            TreeSet<Integer> statuses = new TreeSet<>(WORDS.keySet());
            statuses.removeIf(status -> status == 404 && !path.contains("{")
                    || status == 422 && (!calculation || many)
                    || (status == 413 || status == 415) && method != HttpMethod.POST);
            statuses.forEach(status -> operation
                    .getResponses()
                    .addAPIResponse(
                            status.toString(), OASFactory.createAPIResponse().ref(name(status))));
        });
    }

    private static String name(int status) {
        return "Problem" + status;
    }
}
