package io.loopstate.wiring;

import com.fasterxml.jackson.core.io.NumberOutput;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.Operation;
import io.loopstate.web.mapping.Operations;
import io.loopstate.web.mapping.Pictures;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.DoubleStream;
import java.util.stream.StreamSupport;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Where the time of a request goes below the server: reading JSON, calculating with both mappings, writing JSON, of which the numbers
 * alone; and a picture.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 10, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
@State(Scope.Thread)
public class ReplyBenchmark {
    private static final int REQUESTS = 512;
    private static final Map<String, List<String>> PLAIN = Map.of();

    @Param({"R-134a", "R-454B", "R-448A"})
    public String refrigerant;

    @Param({"properties/saturation", "cycle-points/design"})
    public String operation;

    private final ObjectMapper mapper = Assembly.mapper();
    private final Exchange exchange = Assembly.exchange();
    private final byte[][] bodies = new byte[REQUESTS][];
    private final JsonNode[] trees = new JsonNode[REQUESTS];
    private final Object[] replies = new Object[REQUESTS];
    private final double[][] numbers = new double[REQUESTS][];
    private Operation<?, ?, ?, ?> named;
    /** Temperatures differ from call to call, so that nothing is the same twice. */
    private int turn;

    @Setup
    public void setUp() throws IOException {
        named = Operations.named(operation).orElseThrow();
        for (int i = 0; i < REQUESTS; i++) {
            bodies[i] = mapper.writeValueAsBytes(mapper.readTree(request(-20 + i * 0.02, 30 + i * 0.03)));
            trees[i] = mapper.readTree(bodies[i]);
            replies[i] = exchange.answer(named, trees[i], PLAIN);
            numbers[i] = numbers(mapper.valueToTree(replies[i])).toArray();
        }
    }

    private String request(double evaporating, double condensing) {
        String form = operation.endsWith("saturation")
                ? "{\"refrigerant\":\"%s\",\"temperature\":\"%.3f degC\"}"
                : "{\"refrigerant\":\"%s\",\"evaporating\":{\"temperature\":\"%.3f degC\"},\"condensing\":{\"temperature\":"
                        + "\"%.3f degC\"},\"superheat\":\"8 K\",\"subcooling\":\"5 K\",\"isentropicEfficiency\":0.7,"
                        + "\"refrigeratingCapacity\":\"3 kW\"}";
        return String.format(Locale.ROOT, form, refrigerant, evaporating, condensing);
    }

    private static DoubleStream numbers(JsonNode tree) {
        return tree.isNumber()
                ? DoubleStream.of(tree.doubleValue())
                : StreamSupport.stream(tree.spliterator(), false).flatMapToDouble(ReplyBenchmark::numbers);
    }

    private int next() {
        turn = (turn + 1) % REQUESTS;
        return turn;
    }

    @Benchmark
    public JsonNode read() throws IOException {
        return mapper.readTree(bodies[next()]);
    }

    @Benchmark
    public Object answer() {
        return exchange.answer(named, trees[next()], PLAIN);
    }

    @Benchmark
    public byte[] write() throws IOException {
        return mapper.writeValueAsBytes(replies[next()]);
    }

    /** The shortest decimals of all numbers of a reply, and nothing between them. */
    @Benchmark
    public int decimals() {
        int length = 0;
        for (double number : numbers[next()]) {
            length += NumberOutput.toString(number, true).length();
        }
        return length;
    }

    @Benchmark
    public String picture() {
        return exchange.draw(Pictures.named(operation).orElseThrow(), trees[next()], PLAIN);
    }
}
