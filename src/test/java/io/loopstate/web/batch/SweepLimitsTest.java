package io.loopstate.web.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.testing.Service;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.problem.ProblemException;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/** What ends a sweep as a whole. */
class SweepLimitsTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final ExecutorService THREADS = Executors.newFixedThreadPool(2);
    private static final String BODY = """
            {"operation": "properties/saturation", "request": {"refrigerant": "R-134a"},
             "vary": [{"input": "temperature", "from": "0 degC", "to": "30 degC", "count": 20}], "pick": ["dew.pressure"]}""";

    @AfterAll
    static void stop() {
        THREADS.shutdownNow();
    }

    @Test
    void sweepWhoseTimeIsUpIsRefusedAsAWhole() {
        Exchange late = Service.exchange(() -> System.nanoTime() - 1);
        ProblemException refusal = refusal(new Sweep(MAPPER, late, THREADS, new Sweep.Bounds(4, 100, 1000)), BODY);
        assertThat(refusal.problem().status()).isEqualTo(503);
        assertThat(refusal.problem().code()).isEqualTo("deadline-exceeded");
    }

    @Test
    void valuesOfAllPointsAreBounded() throws JsonProcessingException {
        Exchange exchange = Service.exchange(() -> System.nanoTime() + Long.MAX_VALUE / 2);
        // The pressure and the warnings of each of 20 points.
        Sweep enough = new Sweep(MAPPER, exchange, THREADS, new Sweep.Bounds(3, 20, 40));
        assertThat(enough.answer(MAPPER.readTree(BODY), Map.of()).rows()).hasSize(20);
        assertThat(codeAndPlace(new Sweep(MAPPER, exchange, THREADS, new Sweep.Bounds(3, 20, 39)), BODY))
                .isEqualTo("too-many-values@#/pick");
        assertThat(codeAndPlace(new Sweep(MAPPER, exchange, THREADS, new Sweep.Bounds(3, 19, 40)), BODY))
                .isEqualTo("wrong-value@#/vary/0/count");
    }

    /** Every reply was seen, so a name that none of them has is a slip even where its last part is a member. */
    @Test
    void pickThatNoPointHasIsRefused() {
        Exchange exchange = Service.exchange(() -> System.nanoTime() + Long.MAX_VALUE / 2);
        Sweep sweep = new Sweep(MAPPER, exchange, THREADS, new Sweep.Bounds(3, 20, 40));
        assertThat(codeAndPlace(sweep, BODY.replace("dew.pressure", "energy.pressure")))
                .isEqualTo("unknown-value@#/pick");
    }

    private static String codeAndPlace(Sweep sweep, String body) {
        var first = refusal(sweep, body).problem().errors().get(0);
        return first.code() + '@' + first.pointer();
    }

    private static ProblemException refusal(Sweep sweep, String body) {
        return catchThrowableOfType(() -> sweep.answer(MAPPER.readTree(body), Map.of()), ProblemException.class);
    }
}
