package io.loopstate.web.rest;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.testing.Http;
import io.loopstate.testing.RawHttp;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Requests that are refused, one a line in {@code web/bad-requests.json}: status, and every fault as {@code code@place}, in
 * order. A place is a pointer or a parameter, empty for the request as a whole.
 */
@QuarkusTest
class BadRequestsTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String HUGE = "{\"refrigerant\":\"" + "R".repeat(1 << 20) + "\"}";

    @TestHTTPResource
    URI server;

    static Stream<Arguments> requests() throws IOException {
        try (InputStream in = BadRequestsTest.class.getResourceAsStream("/web/bad-requests.json")) {
            return StreamSupport.stream(MAPPER.readTree(in).spliterator(), false)
                    .map(request -> Arguments.of(request.get("name").textValue(), request))
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("requests")
    void isRefused(String name, JsonNode request) throws IOException {
        RawHttp.Reply reply = send(request);
        assertThat(reply.status())
                .as(reply.body())
                .isEqualTo(request.get("status").intValue());
        assertThat(reply.header("Content-Type")).isEqualTo("application/problem+json");
        JsonNode problem = MAPPER.readTree(reply.body());
        assertThat(problem.get("status").intValue()).isEqualTo(reply.status());
        List<String> expected = new ArrayList<>();
        request.get("errors").forEach(error -> expected.add(error.textValue()));
        List<String> actual = new ArrayList<>();
        problem.get("errors").forEach(error -> actual.add(error.get("code").textValue() + '@' + place(error)));
        assertThat(actual).as(reply.body()).isEqualTo(expected);
        JsonNode first = problem.get("errors").get(0);
        assertThat(problem.findValuesAsText("detail"))
                .as("without names of the program")
                .noneMatch(detail -> detail.matches("(?s).*([A-Z]_[A-Z]|`).*"));
        for (String member : List.of("hint", "allowed")) {
            if (request.has(member)) {
                assertThat(first.path(member).asText())
                        .contains(request.get(member).textValue());
            }
        }
    }

    @Test
    void namesOfTheRequestsAreUnique() throws IOException {
        assertThat(requests().map(request -> request.get()[0])).doesNotHaveDuplicates();
    }

    private static String place(JsonNode error) {
        return error.has("pointer")
                ? error.get("pointer").textValue()
                : error.path("parameter").asText();
    }

    private RawHttp.Reply send(JsonNode request) {
        if (request.has("get")) {
            String accept = request.at("/headers/Accept").asText("*/*");
            return RawHttp.send(server, "GET", request.get("get").textValue(), "Accept: " + accept);
        }
        if (request.has("delete")) {
            return RawHttp.send(server, "DELETE", request.get("delete").textValue());
        }
        String body = request.get("body").textValue();
        Response response = Http.post(
                        request.get("post").textValue(),
                        request.at("/headers/Content-Type").asText("application/json"),
                        body.equals("HUGE") ? HUGE : body)
                .extract()
                .response();
        return new RawHttp.Reply(response.statusCode(), "Content-Type: " + response.contentType(), response.asString());
    }
}
