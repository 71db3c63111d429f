package io.loopstate.testing;

import java.net.URI;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** The front page as a reader of documents sees it. */
public record Page(Document document) {

    /** The page at an address, which has to be there. */
    public static Page get(String address) {
        return of(Http.get(address).statusCode(200).extract().asString());
    }

    /** A page that was read. */
    public static Page of(String text) {
        return new Page(Jsoup.parse(text));
    }

    /** Where its links, pictures, scripts and style sheets lead. */
    public List<String> addresses() {
        return document.select("[href], [src]").stream()
                .map(element -> element.hasAttr("href") ? element.attr("href") : element.attr("src"))
                .filter(address -> !address.startsWith("#"))
                .distinct()
                .toList();
    }

    /** Places on the page that its links, labels and descriptions name. */
    public List<String> references() {
        List<String> references = new ArrayList<>(document.select("a[href^=#]").eachAttr("href").stream()
                .map(address -> address.substring(1))
                .toList());
        references.addAll(document.select("label").eachAttr("for"));
        for (String attribute : List.of("aria-describedby", "aria-labelledby")) {
            document.select('[' + attribute + ']')
                    .eachAttr(attribute)
                    .forEach(ids -> references.addAll(List.of(ids.split(" "))));
        }
        return references;
    }

    /** Names of places, in order. */
    public List<String> ids() {
        return document.select("[id]").eachAttr("id");
    }

    /** A text to copy. */
    public String code(String id) {
        return document.getElementById(id).text();
    }

    /** Path and query of the request that the page made of its form. */
    public String target() {
        URI address = URI.create(code("address"));
        return address.getRawPath() + '?' + address.getRawQuery();
    }

    /** The figures at the top of the answer: number by label. */
    public Map<String, String> figures() {
        Map<String, String> figures = new LinkedHashMap<>();
        for (Element figure : document.select(".figures > div")) {
            figures.put(figure.select("dt").text(), figure.select(".number").text());
        }
        return figures;
    }

    /** The cells of the table under a title. */
    public List<List<String>> table(String title) {
        Element head = document.select("h3").stream()
                .filter(each -> each.text().equals(title))
                .findFirst()
                .orElseThrow();
        String id = head.id().replace("-title", "");
        return document.select('#' + id + " tr").stream()
                .map(row -> row.select("th, td").eachText())
                .toList();
    }

    /** What stands in a field. */
    public String value(String name) {
        return document.select("[name=" + name + ']').attr("value");
    }

    /** What is chosen in a list. */
    public String chosen(String name) {
        return document.select("select[name=" + name + "] option[selected]").attr("value");
    }

    /** What can be chosen in a list. */
    public List<String> choices(String name) {
        return document.select("select[name=" + name + "] option").eachAttr("value");
    }

    /** What is wrong with a field. */
    public String error(String name) {
        return document.getElementById(name + "-error").text();
    }
}
