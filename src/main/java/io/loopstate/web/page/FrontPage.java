package io.loopstate.web.page;

import io.loopstate.web.template.Templates;
import io.quarkus.qute.RawString;
import io.quarkus.qute.Template;
import java.util.List;

/**
 * The front page.
 *
 * @param title in the head
 * @param style address of the style sheet
 * @param script address of the script
 * @param tabs the calculations to choose from
 * @param purpose what the chosen one answers
 * @param ask key of the chosen one
 * @param form its fields
 * @param asked whether there is a request
 * @param refusal why there is no answer; its lines are empty where there is one
 * @param answer the answer, of which there is one or none
 * @param picture address and words of the picture, of which there is one or none
 * @param takeaways the request for other clients
 * @param links other forms of the reply
 * @param examples requests to begin with
 * @param families what else there is
 * @param base scheme, host and port that stand in the takeaways
 * @param keyed whether requests need a key
 * @param version of the service
 */
public record FrontPage(
        String title,
        String style,
        String script,
        List<Tab> tabs,
        String purpose,
        String ask,
        Form form,
        boolean asked,
        Refusal refusal,
        List<Answer> answer,
        List<Picture> picture,
        List<Takeaways.Takeaway> takeaways,
        List<Link> links,
        List<Link> examples,
        List<Families.Family> families,
        String base,
        boolean keyed,
        String version) {
    /** The template, read when the first page is written. */
    private static final class Holder {
        static final Template TEMPLATE = Templates.read("/pages/front.html", "text/html");
    }

    /**
     * A calculation to choose.
     *
     * @param label its name
     * @param address where its form is
     * @param chosen whether it is the one on the page
     */
    public record Tab(String label, String address, boolean chosen) {}

    /**
     * A link.
     *
     * @param label its text
     * @param address where it leads
     */
    public record Link(String label, String address) {}

    /**
     * A picture.
     *
     * @param address where it is drawn
     * @param words what it shows
     * @param drawn the picture itself, where a browser could not get it without a key; none elsewhere
     */
    public record Picture(String address, String words, List<RawString> drawn) {}

    /** The text of the page. */
    String render() {
        return Holder.TEMPLATE.data("page", this).render();
    }
}
