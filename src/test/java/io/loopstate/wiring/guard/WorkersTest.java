package io.loopstate.wiring.guard;

import static io.loopstate.testing.Http.get;
import static io.loopstate.testing.Http.post;
import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.testing.ThreadHeader;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.ValidatableResponse;
import java.util.Locale;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What takes long never runs on an event loop. */
@QuarkusTest
@TestProfile(WorkersTest.Unused.class)
class WorkersTest {
    /** A service of its own, which has made no lines yet. */
    public static class Unused implements QuarkusTestProfile {}

    private static final String STATE = "/v1/properties/state?temperature=300+K&pressure=1+bar_a&refrigerant=";
    private static final String BODY = "{\"temperature\":\"300 K\",\"pressure\":\"1 bar_a\",\"refrigerant\":%s}";

    @ConfigProperty(name = "quarkus.thread-pool.max-threads")
    int threads;

    @Test
    void fourWorkersForEachProcessor() {
        assertThat(threads).isEqualTo(4 * Runtime.getRuntime().availableProcessors());
    }

    /** One pure and one blend. */
    @ParameterizedTest
    @ValueSource(strings = {"R-236ea", "R-421B"})
    void linesAreMadeOnWorkersAndUsedOnTheEventLoop(String refrigerant) {
        assertThat(thread(get(STATE + refrigerant))).doesNotContain("eventloop");
        assertThat(thread(get(STATE + refrigerant))).contains("eventloop");
        assertThat(thread(get(STATE + refrigerant.toLowerCase(Locale.ROOT)))).contains("eventloop");
        assertThat(thread(state('"' + refrigerant + '"'))).contains("eventloop");
    }

    @Test
    void bodyIsMovedAsWellAsAQuery() {
        assertThat(thread(state("\"R-421A\""))).doesNotContain("eventloop");
        assertThat(thread(state("\"R-421A\""))).contains("eventloop");
    }

    /** The first of each makes the lines. */
    @Test
    void statesThatAreSearchedForRunOnWorkers() {
        String query = "/v1/properties/state?refrigerant=R-424A&density=10+kg_per_m3&specificEntropy=1.9+kJ_per_kg_K";
        String body =
                "{\"refrigerant\":\"R-424A\",\"density\":\"10 kg_per_m3\",\"specificEntropy\":\"1.9 kJ_per_kg_K\"}";
        for (int i = 0; i < 2; i++) {
            assertThat(thread(get(query))).doesNotContain("eventloop");
            assertThat(thread(post("/v1/properties/state", body))).doesNotContain("eventloop");
        }
    }

    @Test
    void compositionsAlwaysRunOnWorkers() {
        String components =
                "[{\"refrigerant\":\"R-32\",\"massFraction\":0.61},{\"refrigerant\":\"R-125\",\"massFraction\":0.39}]";
        for (int i = 0; i < 2; i++) {
            assertThat(thread(get(STATE + "R-32/125+(61/39)"))).doesNotContain("eventloop");
            assertThat(thread(state("\"R-32/125 (61/39)\""))).doesNotContain("eventloop");
            assertThat(thread(state(components))).doesNotContain("eventloop");
        }
    }

    @Test
    void whatIsNotMovedStaysOnTheEventLoop() {
        assertThat(get("/v1/properties/moist-air?dryBulb=20+degC&wetBulb=15+degC")
                        .extract()
                        .header(ThreadHeader.NAME))
                .contains("eventloop");
        assertThat(get(STATE + "R-nothing").statusCode(400).extract().header(ThreadHeader.NAME))
                .contains("eventloop");
    }

    private static ValidatableResponse state(String refrigerant) {
        return post("/v1/properties/state", BODY.formatted(refrigerant));
    }

    private static String thread(ValidatableResponse reply) {
        return reply.statusCode(200).extract().header(ThreadHeader.NAME);
    }
}
