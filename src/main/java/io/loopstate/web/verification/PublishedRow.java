package io.loopstate.web.verification;

import java.util.List;
import java.util.Map;

/**
 * The numbers of one state or example, which one request gives.
 *
 * @param id unique in its table
 * @param table it stands in
 * @param source key of the source
 * @param place in the source
 * @param origin how the numbers came here: {@code read}, {@code memory} or {@code derived}
 * @param topic what it is about
 * @param request path below {@code /v1/} with query
 * @param operation name of the calculation
 * @param parameters of the query
 * @param values the numbers
 */
record PublishedRow(
        String id,
        String table,
        String source,
        String place,
        String origin,
        String topic,
        String request,
        String operation,
        Map<String, List<String>> parameters,
        List<PublishedValue> values) {}
