package io.loopstate.wiring;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.fluid.Catalog;
import io.quarkus.test.junit.QuarkusMock;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.microprofile.health.Readiness;
import org.junit.jupiter.api.Test;

/** Readiness is that of an engine that gives published values. */
@QuarkusTest
class EngineCheckTest {
    private static final String CHECK = "checks.find { it.name == 'published values' }";

    private static List<SelfCheck.Value> values() {
        return new SelfCheck(Catalog.bundled(), new Equilibria()).values();
    }

    @Test
    void readyWhereTheValuesAreMet() {
        given().get("/q/health/ready")
                .then()
                .statusCode(200)
                .body("status", equalTo("UP"))
                .body(CHECK + ".status", equalTo("UP"))
                .body(CHECK + ".data.values", equalTo(3))
                .body(CHECK + ".data.failures", equalTo(""));
    }

    @Test
    void notReadyWhereOneIsNotAndSaysWhich() {
        List<SelfCheck.Value> altered = new ArrayList<>(values());
        SelfCheck.Value cycle = altered.get(2);
        altered.set(2, new SelfCheck.Value(cycle.name(), "3.07", cycle.tolerance(), cycle.calculated()));
        EngineCheck check = new EngineCheck(altered);
        check.run();
        QuarkusMock.installMockForType(check, EngineCheck.class, Readiness.Literal.INSTANCE);
        given().get("/readyz")
                .then()
                .statusCode(503)
                .body("status", equalTo("DOWN"))
                .body(CHECK + ".status", equalTo("DOWN"))
                .body(CHECK + ".data.failures", containsString("BORG: coefficient of performance"))
                .body(CHECK + ".data.failures", containsString("printed 3.07, calculated 3.0635"));
        given().get("/livez").then().statusCode(200);
    }

    /** Each value is sharp: the next value of the last digit that is held is refused; of the long one that is the last but one. */
    @Test
    void everyAlteredValueIsFound() {
        for (SelfCheck.Value value : values()) {
            assertThat(value.failure()).isEmpty();
            int last = value.printed().length() - (value.printed().length() > 10 ? 2 : 1);
            char other = value.printed().charAt(last) == '9'
                    ? '8'
                    : (char) (value.printed().charAt(last) + 1);
            String altered = new StringBuilder(value.printed())
                    .replace(last, last + 1, String.valueOf(other))
                    .toString();
            assertThat(new SelfCheck.Value(value.name(), altered, value.tolerance(), value.calculated()).failure())
                    .as(value.name() + altered)
                    .isPresent();
        }
    }

    /** What cannot be calculated at all is a failure like any other. */
    @Test
    void aRefusalIsAFailure() {
        SelfCheck.Value refused = new SelfCheck.Value("outside", "1", 1, () -> {
            throw EngineException.of(ErrorCode.OUT_OF_RANGE, "R-134a");
        });
        assertThat(refused.failure())
                .hasValueSatisfying(text -> assertThat(text).contains("not calculated"));
    }
}
