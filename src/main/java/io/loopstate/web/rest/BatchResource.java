package io.loopstate.web.rest;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.web.batch.ArrayBatch;
import io.loopstate.web.batch.BatchQuery;
import io.loopstate.web.batch.BatchReply;
import io.loopstate.web.batch.BatchRow;
import io.loopstate.web.batch.JsonRows;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.problem.ProblemMappers;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.StreamingOutput;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.ParameterIn;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/**
 * Many calculations in one request. Arrays come here; streams of rows are answered below the routes while they are read, and are
 * declared here for the contract.
 */
@Path("/v1/batch")
@Produces(MediaType.APPLICATION_JSON)
@Blocking
@Tag(name = "many at once", description = "Many calculations in one request, and one calculation over a range.")
public class BatchResource {
    private static final String TABLE =
            "A table (text/csv, text/tab-separated-values) is about the one calculation in the query and streams as well: its "
                    + "headings are the names of a query, with the unit of bare numbers behind an underscore "
                    + "(suctionPressure_psig); columns=input_unit:heading,... gives other headings a meaning, pass=heading,... lets "
                    + "columns through, pass=* all that hold no input, and inputs in the query hold for every row that has no cell "
                    + "for them. It comes back with the results, warnings (codes), status and error behind its columns, a row for "
                    + "each row. Which columns the results have is decided by the first 64 rows; a row with a value that has "
                    + "none names it in its error. The summary is the trailer Batch-Summary, or with summary=row the last row. "
                    + "UTF-8 with or without byte order mark, or the charset that Content-Type names: iso-8859-1, windows-1252.";

    private static final String BATCH =
            "Many calculations in one request, answered in the order of the rows; the last thing is a summary. A row that cannot "
                    + "be answered has a problem in place of its reply and spoils no other. Send a JSON array of up to 1000 rows, or, "
                    + "for more, one JSON object a line (application/x-ndjson, application/jsonl): such a stream is answered while "
                    + "it is read, line by line, with up to 1000000 lines of up to 64 KiB, empty ones left out; whoever reads "
                    + "slowly slows the calculation. The limits are settings of the service. Pointers in problems count from the row. "
                    + "Options in the query hold for every row that does not say otherwise. "
                    + TABLE;

    private final ObjectMapper mapper;
    private final Exchange exchange;
    private final ArrayBatch batch;

    /** Called by the container. */
    @Inject
    public BatchResource(ObjectMapper mapper, Exchange exchange, ArrayBatch batch) {
        this.mapper = mapper;
        this.exchange = exchange;
        this.batch = batch;
    }

    /** An array of rows. */
    @POST
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(operationId = "calculateBatch", summary = "Many calculations in one request", description = BATCH)
    @Parameter(
            name = BatchQuery.OPERATION,
            in = ParameterIn.QUERY,
            description = "The calculation of rows that name none, by its path below /v1.",
            schema = @Schema(type = SchemaType.STRING, examples = "cycle-points/design"))
    @Parameter(
            name = "columns",
            in = ParameterIn.QUERY,
            description =
                    "Of a table: what its headings mean, input_unit:heading with commas between; a heading with a "
                            + "comma stands in quotes with its pair.",
            schema = @Schema(type = SchemaType.STRING, examples = "suctionPressure_psig:Suction"))
    @Parameter(
            name = "pass",
            in = ParameterIn.QUERY,
            description = "Of a table: headings of columns that are let through, or * for all that hold no input.",
            schema = @Schema(type = SchemaType.STRING, examples = "Visit,Technician"))
    @Parameter(
            name = "pick",
            in = ParameterIn.QUERY,
            description = "Of a table: names or pointers of results, with commas between; all of them where absent.",
            schema = @Schema(type = SchemaType.STRING, examples = "superheat,subcooling"))
    @Parameter(
            name = "summary",
            in = ParameterIn.QUERY,
            description =
                    "Of a table: row for a summary in the last row; it is a trailer of the reply in any case. Default: trailer.",
            schema =
                    @Schema(
                            type = SchemaType.STRING,
                            enumeration = {"trailer", "row"}))
    @Parameter(
            name = "sep",
            in = ParameterIn.QUERY,
            description =
                    "Of a table, in and out: comma, semicolon, tab or pipe; where absent a comma, or with dec=, a semicolon.",
            schema = @Schema(type = SchemaType.STRING, examples = "semicolon"))
    @Parameter(
            name = "digits",
            in = ParameterIn.QUERY,
            description = "Of a table: significant digits of results; all of them where absent.",
            schema = @Schema(type = SchemaType.INTEGER, minimum = "1", maximum = "17"))
    @Parameter(
            name = "bom",
            in = ParameterIn.QUERY,
            description = "Of a table: 1 for a byte order mark at the beginning.",
            schema = @Schema(type = SchemaType.STRING, examples = "1"))
    @APIResponse(
            responseCode = "200",
            description = "The answers; rows that were refused are among them.",
            content = {
                @Content(mediaType = MediaType.APPLICATION_JSON, schema = @Schema(implementation = BatchReply.class)),
                @Content(
                        mediaType = "application/x-ndjson",
                        schema =
                                @Schema(
                                        type = SchemaType.STRING,
                                        description =
                                                "One BatchAnswer a line, then one line {\"summary\": BatchSummary}.")),
                @Content(
                        mediaType = "text/csv",
                        schema =
                                @Schema(
                                        type = SchemaType.STRING,
                                        description = "The table with results, status and error behind its columns."))
            })
    public StreamingOutput batch(
            @RequestBody(
                            required = true,
                            content = {
                                @Content(
                                        mediaType = MediaType.APPLICATION_JSON,
                                        schema = @Schema(type = SchemaType.ARRAY, implementation = BatchRow.class)),
                                @Content(
                                        mediaType = "application/x-ndjson",
                                        schema =
                                                @Schema(
                                                        type = SchemaType.STRING,
                                                        description = "One BatchRow a line.")),
                                @Content(
                                        mediaType = "text/csv",
                                        schema =
                                                @Schema(type = SchemaType.STRING, description = "A table with a head."))
                            })
                    JsonNode body,
            @Context UriInfo uri) {
        BatchQuery query = BatchQuery.read(uri.getQueryParameters(), List.of(), exchange);
        batch.check(body);
        JsonRows rows = new JsonRows(mapper, exchange, query, Integer.MAX_VALUE, ProblemMappers::ofCalculation);
        return out -> batch.write(body, rows, out);
    }
}
