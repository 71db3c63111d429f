package io.loopstate.load;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.testing.ReadyMadeResource;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.Operations;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Requests a second of calculations, against requests that are read as well but answered with the same reply made before, as
 * bytes or written each time: in the same process, over the same sockets, in turns of a second, of which the median ratio
 * counts. Compilers need half a minute of load until the rate stays, so it warms up for that long. It measures and does not
 * judge, so that a busy machine fails no build; what it asserts is that every request was answered.
 */
@QuarkusTest
@Tag("load")
class ServiceLoadTest {
    private static final int CONNECTIONS = 16;
    private static final int CROWD = 1024;
    /** A shared machine changes its speed from second to second. */
    private static final int ROUNDS = 15;

    private static final int LONG_ROUNDS = 5;
    private static final double WARM_UP = Double.parseDouble(System.getProperty("load.warmup", "30"));
    private static final double SECONDS = Double.parseDouble(System.getProperty("load.seconds", "1"));

    @TestHTTPResource
    URI server;

    @Inject
    Exchange exchange;

    @Inject
    ObjectMapper mapper;

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "saturation R-134a | /v1/properties/saturation | {\"refrigerant\":\"R-134a\",\"temperature\":\"40 degF\"}",
                "state R-134a | /v1/properties/state | {\"refrigerant\":\"R-134a\",\"pressure\":\"35 psig\",\"temperature\":\"55 degF\"}",
                "state R-454B | /v1/properties/state | {\"refrigerant\":\"R-454B\",\"pressure\":\"100 psig\",\"temperature\":\"55 degF\"}",
                "design R-134a | /v1/cycle-points/design | {\"refrigerant\":\"R-134a\",\"evaporating\":{\"temperature\":\"20 degF\"},\"condensing\":{\"temperature\":\"105 degF\"},\"superheat\":\"10 delta_degF\",\"subcooling\":\"8 delta_degF\",\"isentropicEfficiency\":0.7,\"refrigeratingCapacity\":\"3 ton\"}",
                "design R-454B | /v1/cycle-points/design | {\"refrigerant\":\"R-454B\",\"evaporating\":{\"temperature\":\"40 degF\"},\"condensing\":{\"temperature\":\"105 degF\"},\"superheat\":\"10 delta_degF\",\"subcooling\":\"8 delta_degF\",\"isentropicEfficiency\":0.7,\"refrigeratingCapacity\":\"3 ton\"}",
                "design R-448A | /v1/cycle-points/design | {\"refrigerant\":\"R-448A\",\"evaporating\":{\"temperature\":\"-20 degF\"},\"condensing\":{\"temperature\":\"105 degF\"},\"superheat\":\"10 delta_degF\",\"subcooling\":\"8 delta_degF\",\"isentropicEfficiency\":0.7,\"refrigeratingCapacity\":\"3 ton\"}",
            })
    void body(String name, String path, String body) throws InterruptedException, IOException {
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        byte[] reply = RestAssured.given()
                .contentType("application/json")
                .body(bytes)
                .post(path)
                .then()
                .statusCode(200)
                .extract()
                .asByteArray();
        ReadyMadeResource.keep("body", reply);
        ReadyMadeResource.keepUnwritten("body", unwritten(path, bytes));
        String copy = "/testing/ready/body";
        String written = copy + "/unwritten";
        requireSame(
                reply,
                RestAssured.given().contentType("application/json").body(bytes).post(copy));
        requireSame(
                reply,
                RestAssured.given().contentType("application/json").body(bytes).post(written));
        Wrk calculated = Wrk.post(server.resolve(path), body);
        calculated.run(CONNECTIONS, WARM_UP);
        compare(name, calculated, "ready-made", Wrk.post(server.resolve(copy), body), reply.length);
        compare(name, calculated, "written", Wrk.post(server.resolve(written), body), reply.length);
        steady(name, Client.post(path, bytes), Client.post(copy, bytes), reply.length);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "one number | refrigerant=R-134a&temperature=40%20degF&units=IP&format=txt&pick=dewPressure",
            })
    void singleNumber(String name, String query) throws InterruptedException, IOException {
        String target = "/v1/properties/saturation?" + query;
        byte[] reply = RestAssured.given()
                .urlEncodingEnabled(false)
                .get(target)
                .then()
                .statusCode(200)
                .extract()
                .asByteArray();
        ReadyMadeResource.keep("number", reply);
        String copy = "/testing/ready/number?" + query;
        requireSame(reply, RestAssured.given().urlEncodingEnabled(false).get(copy));
        Wrk calculated = Wrk.get(server.resolve(target));
        calculated.run(CONNECTIONS, WARM_UP);
        compare(name, calculated, "ready-made", Wrk.get(server.resolve(copy)), reply.length);
        steady(name, Client.get(target), Client.get(copy), reply.length);
    }

    /** Four times as many requests as can be answered: most are refused, and the others do not suffer. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "balance, /v1/heat-rejection/balance, heat-rejection-balance/good",
        "reading with many inputs, /v1/cycle-points/readings, cycle-points-readings/good",
    })
    void overload(String name, String path, String example) throws InterruptedException, IOException {
        byte[] body = Files.readAllBytes(Path.of("examples/requests", example + ".request.json"));
        Client client = new Client(server, Client.post(path, body));
        client.run(CONNECTIONS, WARM_UP);
        for (int round = 0; round < LONG_ROUNDS; round++) {
            Client.Run capacity = client.run(CONNECTIONS, 2 * SECONDS);
            Client.Run four = client.run(CROWD, 8 * SECONDS, 4 * capacity.rate());
            assertThat(capacity.failed() + four.failed())
                    .as("neither answered nor refused cleanly")
                    .isZero();
            print(
                    "%-20s capacity %6.0f/s; sent %6.0f/s: answered %6.0f/s (%.0f %% of capacity), refused %6.0f/s, p50 %.0f p99 %.0f ms",
                    name,
                    capacity.rate(),
                    (four.answered() + four.shed()) / four.seconds(),
                    four.rate(),
                    100 * four.rate() / capacity.rate(),
                    four.shed() / four.seconds(),
                    four.milliseconds(0.5),
                    four.milliseconds(0.99));
        }
    }

    private Object unwritten(String path, byte[] body) throws IOException {
        JsonNode request = mapper.readTree(body);
        return Operations.named(path.substring("/v1/".length()))
                .map(operation -> (Object) exchange.answer(operation, request, Map.of()))
                .orElseThrow();
    }

    /** What is compared has the same bytes. */
    private static void requireSame(byte[] reply, Response other) {
        assertThat(other.then().statusCode(200).extract().asByteArray()).isEqualTo(reply);
    }

    private static void compare(String name, Wrk calculated, String kind, Wrk readyMade, int bytes)
            throws IOException, InterruptedException {
        readyMade.run(CONNECTIONS, WARM_UP / 3);
        Turns rates = new Turns();
        for (int round = 0; round < ROUNDS; round++) {
            double copied = readyMade.run(CONNECTIONS, SECONDS).rate();
            rates.add(calculated.run(CONNECTIONS, SECONDS).rate(), copied);
        }
        Turns medians = new Turns();
        Turns tails = new Turns();
        for (int round = 0; round < ROUNDS; round++) {
            Wrk.Run copied = readyMade.run(1, SECONDS);
            Wrk.Run run = calculated.run(1, SECONDS);
            medians.add(run.p50(), copied.p50());
            tails.add(run.p99(), copied.p99());
        }
        rates.print("%-20s %6d bytes  calculated %7.0f/s  " + kind + " %7.0f/s  ratio", name, bytes);
        medians.print("%-20s one connection: calculated p50 %.3f ms, " + kind + " p50 %.3f ms, ratio", name);
        tails.print("%-20s one connection: calculated p99 %.3f ms, " + kind + " p99 %.3f ms, ratio", name);
    }

    private void steady(String name, byte[] request, byte[] copy, int bytes) throws InterruptedException, IOException {
        paced(name, "calculated", request, bytes);
        paced(name, "ready-made", copy, bytes);
        Client client = new Client(server, request);
        double most = client.run(CONNECTIONS, SECONDS).rate();
        Client.Run crowd = client.run(CROWD, 8 * SECONDS);
        assertThat(crowd.failed()).as("neither answered nor refused cleanly").isZero();
        print(
                "%-20s %d connections at once: %7.0f/s answered (%.0f %% of capacity), %.0f/s refused, p99 %.0f ms",
                name,
                CROWD,
                crowd.rate(),
                100 * crowd.rate() / most,
                crowd.shed() / crowd.seconds(),
                crowd.milliseconds(0.99));
    }

    /** At 70 % of what went through just before, since the speed of a shared machine changes from minute to minute. */
    private void paced(String name, String kind, byte[] request, int bytes) throws InterruptedException, IOException {
        Client client = new Client(server, request);
        OpenLoop steady = new OpenLoop(server, request);
        Turns latencies = new Turns();
        for (int round = 0; round < LONG_ROUNDS; round++) {
            double rate = whole(client.run(CONNECTIONS, SECONDS), bytes).rate();
            Client.Run run = whole(steady.run(2 * SECONDS, 0.7 * rate), bytes);
            latencies.add(run.milliseconds(0.99), run.milliseconds(0.5));
        }
        latencies.print("%-20s at 70 %%, %s: p99 %.3f ms p50 %.3f ms, p99/p50", name, kind);
    }

    /** Two figures of each turn and their ratio. */
    private static final class Turns {
        private final List<Double> over = new ArrayList<>();
        private final List<Double> under = new ArrayList<>();
        private final List<Double> ratios = new ArrayList<>();

        void add(double numerator, double denominator) {
            over.add(numerator);
            under.add(denominator);
            ratios.add(numerator / denominator);
        }

        /** The medians of both behind what is given, then that of the ratio, its least and its largest. */
        void print(String format, Object... before) {
            List<Object> values = new ArrayList<>(List.of(before));
            values.add(median(over));
            values.add(median(under));
            values.add(median(ratios));
            values.add(Collections.min(ratios));
            values.add(Collections.max(ratios));
            ServiceLoadTest.print(format + " %.3f (%.3f to %.3f)", values.toArray());
        }

        private static double median(List<Double> values) {
            return values.stream().sorted().toList().get(values.size() / 2);
        }
    }

    private static Client.Run whole(Client.Run run, int bytes) {
        assertThat(run.failed() + run.shed()).as("not answered").isZero();
        assertThat(run.answered()).isPositive();
        assertThat(run.bytes()).as("bytes of a reply").isEqualTo(bytes);
        return run;
    }

    private static void print(String format, Object... values) {
        System.out.println("LOAD " + String.format(Locale.ROOT, format, values));
    }
}
