package io.loopstate.deployment;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.fabric8.kubernetes.client.utils.KubernetesSerialization;
import io.fabric8.openshift.api.model.monitoring.v1.PrometheusRule;
import io.loopstate.testing.Http;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Alerts and dashboard ask for metrics that the service has. */
@QuarkusTest
class MetricNamesTest {
    /** All names of metrics of this service have an underscore; of the functions and labels that are used here only one has. */
    private static final Pattern NAME = Pattern.compile("\\b(?!histogram_quantile)[a-z]+(_[a-z]+)+");

    @Test
    void everyQueryNamesMetricsThatAreServed() throws IOException {
        Http.get("/v1/version").statusCode(200);
        Set<String> served = Http.get("/metrics")
                .extract()
                .asString()
                .lines()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.split("[{ ]")[0])
                .collect(Collectors.toSet());
        List<String> names = queries().stream()
                .flatMap(query -> NAME.matcher(query.replaceAll("\"[^\"]*\"", ""))
                        .results()
                        .map(MatchResult::group))
                .distinct()
                .toList();
        assertThat(names).hasSizeGreaterThan(4).isSubsetOf(served);
    }

    private static List<String> queries() throws IOException {
        List<String> queries = new ArrayList<>();
        PrometheusRule rules = new KubernetesSerialization()
                .unmarshal(
                        Files.readString(Path.of("k8s", "overlays", "production", "prometheus-rule.yaml")),
                        PrometheusRule.class);
        rules.getSpec()
                .getGroups()
                .forEach(group -> group.getRules()
                        .forEach(rule -> queries.add(rule.getExpr().getValue().toString())));
        JsonNode dashboard =
                new ObjectMapper().readTree(Path.of("k8s", "dashboard.json").toFile());
        queries.addAll(dashboard.findValuesAsText("expr"));
        return queries;
    }
}
