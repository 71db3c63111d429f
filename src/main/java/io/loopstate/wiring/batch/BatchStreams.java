package io.loopstate.wiring.batch;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.web.batch.BatchQuery;
import io.loopstate.web.batch.CsvFormat;
import io.loopstate.web.batch.JsonRows;
import io.loopstate.web.batch.NdjsonFormat;
import io.loopstate.web.batch.RowFormat;
import io.loopstate.web.batch.TableQuery;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.problem.ProblemMappers;
import io.loopstate.wiring.guard.Order;
import io.loopstate.wiring.guard.Replies;
import io.loopstate.wiring.guard.Routes;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.MultiMap;
import io.vertx.core.http.HttpMethod;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes streams of rows out of the way of other requests: their bodies are answered while they are read. */
@ApplicationScoped
public class BatchStreams {
    private static final Set<String> LINES =
            Set.of("application/x-ndjson", "application/ndjson", "application/jsonl", "application/x-jsonlines");

    private static final Pattern CHARSET =
            Pattern.compile(";\\s*charset\\s*=\\s*\"?([^\\s;\"]+)", Pattern.CASE_INSENSITIVE);

    private final ObjectMapper mapper;
    private final Exchange exchange;
    private final BatchSettings settings;
    private final BatchThreads threads;
    private final Replies replies;
    private final AtomicInteger streams = new AtomicInteger();

    /** Called by the container. */
    @Inject
    public BatchStreams(
            ObjectMapper mapper, Exchange exchange, BatchSettings settings, BatchThreads threads, Replies replies) {
        this.mapper = mapper;
        this.exchange = exchange;
        this.settings = settings;
        this.threads = threads;
        this.replies = replies;
    }

    /** Whether a request is a stream of rows, which has no limit as a whole. */
    public static boolean isStream(HttpServerRequest request) {
        return request.method().equals(HttpMethod.POST)
                && Routes.is(Routes.BATCH, request.path())
                && (LINES.contains(type(request)) || TableQuery.reads(type(request)));
    }

    private static String type(HttpServerRequest request) {
        String type = request.getHeader("Content-Type");
        return type == null ? "" : type.split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
    }

    /** The charset of a body, empty where none is named. */
    private static String charset(HttpServerRequest request) {
        Matcher charset = CHARSET.matcher(Objects.requireNonNullElse(request.getHeader("Content-Type"), ""));
        return charset.find() ? charset.group(1) : "";
    }

    void filter(@Observes Filters filters) {
        filters.register(this::handle, Order.STREAMS);
    }

    private void handle(RoutingContext context) {
        if (!isStream(context.request())) {
            context.next();
            return;
        }
        if (streams.incrementAndGet() > settings.streams()) {
            streams.decrementAndGet();
            replies.sendUnread(context, Replies.overloaded("As many streams are under way as the service takes on."));
            return;
        }
        try {
            RowFormat format = format(context.request());
            new RowStream(
                            context,
                            format,
                            bounds(),
                            threads,
                            e -> replies.send(context, ProblemMappers.ofCalculation(e)),
                            streams::decrementAndGet)
                    .start();
        } catch (RuntimeException e) {
            streams.decrementAndGet();
            replies.sendUnread(context, ProblemMappers.ofCalculation(e));
        }
    }

    private RowFormat format(HttpServerRequest request) {
        Map<String, List<String>> parameters = parameters(request.params());
        int longest = Math.toIntExact(settings.rowSize().asLongValue());
        if (TableQuery.reads(type(request))) {
            TableQuery table = TableQuery.read(parameters, type(request), charset(request), exchange);
            return new CsvFormat(mapper, exchange, table, longest, settings.tableColumns());
        }
        BatchQuery query = BatchQuery.read(parameters, List.of(), exchange);
        JsonRows rows = new JsonRows(mapper, exchange, query, longest, ProblemMappers::ofCalculation);
        return new NdjsonFormat(rows, longest);
    }

    private RowStream.Bounds bounds() {
        return new RowStream.Bounds(
                settings.streamRows(),
                threads.count(),
                settings.window(),
                settings.waitingAnswers().asLongValue());
    }

    private static Map<String, List<String>> parameters(MultiMap params) {
        Map<String, List<String>> parameters = new LinkedHashMap<>();
        params.names().forEach(name -> parameters.put(name, params.getAll(name)));
        return parameters;
    }
}
