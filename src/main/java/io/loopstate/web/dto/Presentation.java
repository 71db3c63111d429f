package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * How a reply is written; parameters of every operation's query.
 *
 * @param format form of the reply
 * @param pick values to write
 * @param errors where a refusal is told
 * @param digits significant digits
 * @param sep separator of cells
 * @param bom byte order mark
 */
public record Presentation(
        @Schema(
                description =
                        "Form of the reply, before any Accept header: json, csv, tsv, txt (one value), html (a table to "
                                + "print or for a web query), xml (flat), or svg where the operation has a picture. Default: json.",
                pattern = "^(json|csv|tsv|txt|html|xml|svg)$")
        String format,

        @Schema(
                description = "The value that format=txt writes, or the columns of csv, tsv, html and xml, with commas "
                        + "between: names, with their owner where needed (superheat, dewTemperature), or RFC 6901 pointers. "
                        + "The name of an array makes its elements the rows.",
                examples = "superheat")
        String pick,

        @Schema(
                description =
                        "inline: a refusal has status 200 and the form of the reply, as text that begins with #ERR, since "
                                + "spreadsheets show nothing of a real refusal. Default: status.",
                pattern = "^(inline|status)$")
        String errors,

        @Schema(
                description = "Significant digits of numbers. Default: as many as read back to the same number.",
                minimum = "1",
                maximum = "17")
        Integer digits,

        @Schema(
                description =
                        "Separator of csv: comma, semicolon, tab or pipe. Default: a comma, or a semicolon where dec is a "
                                + "comma.",
                pattern = "^(comma|semicolon|tab|pipe|[,;|])$")
        String sep,

        @Schema(description = "1: csv and tsv begin with a byte order mark. Default: 0.", pattern = "^[01]$")
        String bom) {}
