package io.loopstate.web.form;

import io.loopstate.web.template.Templates;
import io.quarkus.qute.Template;
import java.util.List;

/**
 * A page with one table, for web queries and for paper.
 *
 * @param title of the page
 * @param head of the table
 * @param rows its cells as text
 * @param notes warnings in words, then cautions
 * @param foot what the numbers rest on
 */
public record SheetPage(String title, List<String> head, List<List<String>> rows, List<String> notes, String foot) {
    /** The template, read when the first page is written. */
    private static final class Holder {
        static final Template TEMPLATE = Templates.read("/pages/sheet.html", "text/html");
    }

    /** Copies the lists. */
    public SheetPage {
        head = List.copyOf(head);
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
    }

    /** The text of the page. */
    String render() {
        return Holder.TEMPLATE.data("page", this).render();
    }
}
