package io.loopstate.web.verify;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.transport.TransportLibrary;
import io.loopstate.web.dto.VerifyReport;
import io.loopstate.web.dto.VerifyValueReport;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.Refrigerants;
import io.loopstate.web.mapping.RequestReader;
import io.loopstate.web.mapping.SafetyGroups;
import io.loopstate.web.mapping.Trust;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.ProblemException;
import io.loopstate.wiring.Constraints;
import io.loopstate.wiring.JsonSettings;
import java.util.List;

/** Files of cases, and a verifier without a server around it. */
final class Files {
    static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Catalog CATALOG = Catalog.bundled();
    static final Exchange EXCHANGE = new Exchange(
            new RequestReader(
                    new Refrigerants(CATALOG, new Equilibria(), new TransportLibrary(CATALOG)),
                    Constraints.validator()),
            new Trust("test", SafetyGroups.bundled()));
    private static final Verifier VERIFIER = new Verifier(new Answers(EXCHANGE, MAPPER), "test");

    static {
        new JsonSettings().customize(MAPPER);
    }

    private Files() {}

    /** Saturated R-134a at 40 degC and 700 m; every test of the semantics asks for it. */
    static final String REQUEST =
            "\"operation\": \"properties/saturation\", \"request\": {\"refrigerant\": \"R-134a\", \"temperature\": \"40 degC\","
                    + " \"altitude\": \"700 m\"}";

    static JsonNode tree(String json) {
        try {
            return MAPPER.readTree(json);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(json, e);
        }
    }

    /** The report on a file of these cases. */
    static VerifyReport verify(String... cases) {
        return VERIFIER.verify(tree("{\"name\": \"suite\", \"cases\": [" + String.join(",", cases) + "]}"));
    }

    /** What becomes of one expectation of the request above. */
    static VerifyValueReport expect(String expectation) {
        return verify("{\"id\": \"one\", " + REQUEST + ", \"expect\": [" + expectation + "]}")
                .cases()
                .get(0)
                .expectations()
                .get(0);
    }

    /** Code and pointer of each fault of a file that cannot be read. */
    static List<String> faults(String file) {
        try {
            VERIFIER.verify(tree(file));
            return List.of();
        } catch (ProblemException e) {
            return e.problem().errors().stream().map(Files::place).toList();
        }
    }

    /** Code of each fault of one expectation. */
    static List<String> faultsOf(String expectation) {
        String prefix = "#/cases/0/expect/0";
        return faults("{\"cases\": [{\"id\": \"one\", " + REQUEST + ", \"expect\": [" + expectation + "]}]}").stream()
                .map(place -> place.replace("@" + prefix + '/', "@").replace("@" + prefix, "@"))
                .toList();
    }

    private static String place(Fault fault) {
        return fault.code() + '@' + fault.pointer();
    }
}
