package io.loopstate.wiring.guard;

import static io.loopstate.testing.Http.get;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Calculations whose time is up before they are done. */
@QuarkusTest
@TestProfile(DeadlineTest.Short.class)
class DeadlineTest {

    /** Nothing is done within a microsecond. */
    public static final class Short implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.of("loopstate.limits.deadline", "PT0.000001S");
        }
    }

    @Test
    void calculationIsCancelled() {
        get("/v1/properties/saturation?temperature=280+K&refrigerant=R-134a")
                .statusCode(503)
                .contentType("application/problem+json")
                .header("Retry-After", equalTo("1"))
                .body("code", equalTo("deadline-exceeded"))
                .body("type", equalTo("urn:loopstate:problem:deadline-exceeded"));
    }

    @Test
    void whatIsNoCalculationGoesOn() {
        get("/v1/version").statusCode(200);
        get("/readyz").statusCode(200);
    }
}
