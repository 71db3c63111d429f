package io.loopstate.wiring;

import io.loopstate.wiring.contract.ContractDocuments;
import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;

/** Starts the service, or with the argument {@code health} asks a running one whether it is ready. */
@QuarkusMain
public final class Main {
    private Main() {}

    /** Entry point of the process. */
    public static void main(String... arguments) {
        if (arguments.length > 0 && arguments[0].equals("health")) {
            System.exit(HealthProbe.run());
        }
        // The platform's check of URLs answers 400 without a word; HttpGuard does it instead and says what is wrong.
        System.setProperty("vertx.disableURIValidation", "true");
        ContractDocuments.hideFromPlatform();
        Quarkus.run(arguments);
    }
}
