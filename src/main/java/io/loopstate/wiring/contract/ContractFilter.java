package io.loopstate.wiring.contract;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import io.quarkus.smallrye.openapi.OpenApiFilter.RunStage;
import java.util.List;
import java.util.TreeMap;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.Components;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.media.Schema;

/** Adds to the contract what annotations cannot say; every part comes from the declarations that requests are read by. */
@OpenApiFilter(stages = RunStage.BUILD)
public class ContractFilter implements OASFilter {
    @Override
    public void filterOpenAPI(OpenAPI contract) {
        Components components = contract.getComponents();
        Quantities.addTo(components);
        // Nothing is asked of everyone. Keys that may be left out, declared, make some generated clients demand them.
        contract.setSecurity(List.of());
        components.getSchemas().forEach(Requests::order);
        components.getSchemas().values().forEach(ContractFilter::tidyReferences);
        Requests requests = new Requests(components);
        Presentations presentations = new Presentations(components);
        Refusals refusals = new Refusals(components);
        Examples examples = Examples.bundled();
        Drawings drawings = new Drawings(components);
        contract.getPaths().getPathItems().forEach((path, item) -> {
            requests.complete(item);
            presentations.complete(item);
            refusals.complete(path, item);
            examples.complete(path, item);
            drawings.complete(item);
        });
        components.setSchemas(new TreeMap<>(components.getSchemas()));
    }

    /** A reference beside a type makes client generators forget the reference. */
    private static void tidyReferences(Schema schema) {
        if (schema.getProperties() != null) {
            schema.getProperties().values().stream()
                    .filter(property -> property.getRef() != null)
                    .forEach(property -> property.setType(null));
        }
    }
}
