package io.loopstate.web.page;

import java.util.List;

/** One request in the words of each client. */
final class Takeaways {
    /** The longest text that a formula of a common spreadsheet holds in one piece, with room to spare. */
    private static final int LONGEST_TEXT = 240;

    /**
     * Something to copy.
     *
     * @param id of the element
     * @param label where it goes
     * @param text what is copied
     * @param hint what to mind
     */
    public record Takeaway(String id, String label, String text, String hint) {}

    private Takeaways() {}

    /**
     * The same request for each client.
     *
     * @param base scheme, host and port
     * @param target path and query
     * @param pick the value for a cell
     * @param semicolons whether semicolons separate the arguments of a function
     * @param commas whether the reply has decimal commas, and semicolons between its cells then
     */
    static List<Takeaway> of(String base, String target, Question.Figure pick, boolean semicolons, boolean commas) {
        String address = base + target;
        String value = address + "&format=txt&pick=" + pick.pick() + "&errors=inline";
        String cell = address + "&format=csv&pick=" + pick.pick();
        String mark = semicolons ? ";" : ",";
        String number = commas ? "\",\"" + mark + "\".\"" : "\".\"";
        String table = commas ? "\";\"" + mark + "\"de_DE\"" : "\",\"" + mark + "\"en_US\"";
        return List.of(
                new Takeaway("address", "Address", address, "GET, the reply is JSON."),
                new Takeaway("curl", "Command line", "curl -s \"" + address + '"', ""),
                new Takeaway(
                        "webservice",
                        "Excel on Windows, LibreOffice Calc: " + pick.label(),
                        "=NUMBERVALUE(WEBSERVICE(" + pieces(value) + ")" + mark + number + ")",
                        "#VALUE! instead of a number: take NUMBERVALUE away and read the reason. Spreadsheets in other languages"
                                + " have other names for the functions."),
                new Takeaway(
                        "importdata",
                        "Google Sheets: " + pick.label(),
                        "=INDEX(IMPORTDATA(\"" + cell + "\"" + mark + table + ")" + mark + "2" + mark + "1)",
                        "The service has to be reachable from the internet."));
    }

    /** A text of any length for a formula. */
    private static String pieces(String text) {
        StringBuilder pieces = new StringBuilder();
        for (int from = 0; from < text.length(); from += LONGEST_TEXT) {
            pieces.append(from == 0 ? "" : "&")
                    .append('"')
                    .append(text, from, Math.min(text.length(), from + LONGEST_TEXT))
                    .append('"');
        }
        return pieces.toString();
    }
}
