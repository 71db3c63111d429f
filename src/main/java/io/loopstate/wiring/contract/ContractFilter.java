package io.loopstate.wiring.contract;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import io.quarkus.smallrye.openapi.OpenApiFilter.RunStage;
import java.util.TreeMap;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.Components;
import org.eclipse.microprofile.openapi.models.OpenAPI;

/** Adds to the contract what annotations cannot say; every part comes from the declarations that requests are read by. */
@OpenApiFilter(stages = RunStage.BUILD)
public class ContractFilter implements OASFilter {
    @Override
    public void filterOpenAPI(OpenAPI contract) {
        Components components = contract.getComponents();
        Quantities.addTo(components);
        components.getSchemas().forEach(Requests::order);
        components.setSchemas(new TreeMap<>(components.getSchemas()));
        Requests requests = new Requests(components);
        Refusals refusals = new Refusals(components);
        Examples examples = Examples.bundled();
        contract.getPaths().getPathItems().forEach((path, item) -> {
            requests.complete(item);
            refusals.complete(path, item);
            examples.complete(path, item);
        });
    }
}
