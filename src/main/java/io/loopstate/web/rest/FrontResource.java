package io.loopstate.web.rest;

import io.loopstate.web.dto.Version;
import io.loopstate.web.page.FrontPages;
import io.loopstate.web.page.PageFile;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** The front page and its files. Runs on workers, as the calculations of a person's first request do. */
@Path("/")
@Blocking
public class FrontResource {
    private static final String ROOT = "/";
    private static final String BASE = "base";
    private static final String KEYED = "keyed";
    private static final String CACHE = "public, max-age=3600";
    private static final String PAGE = "text/html;charset=utf-8";

    /** What a Host header may be: a name or an address, and a port. */
    private static final Pattern HOST = Pattern.compile("[A-Za-z0-9.\\-]+(:\\d{1,5})?|\\[[0-9A-Fa-f:.]+](:\\d{1,5})?");

    private final FrontPages pages;
    private final EntityTags tags;
    private final Optional<String> address;

    /** Called by the container. */
    @Inject
    public FrontResource(
            FrontPages pages, Version version, @ConfigProperty(name = "loopstate.address") Optional<String> address) {
        this.pages = pages;
        this.tags = new EntityTags(version);
        this.address = address.map(FrontResource::withoutSlash);
    }

    private static String withoutSlash(String address) {
        if (!address.startsWith("http://") && !address.startsWith("https://")) {
            throw new IllegalStateException("loopstate.address begins with http:// or https://, got: " + address);
        }
        return address.endsWith(ROOT) ? address.substring(0, address.length() - 1) : address;
    }

    /** The page: a form, or the answer to what it sent. */
    @GET
    @Produces(MediaType.TEXT_HTML)
    @Operation(hidden = true)
    public Response page(
            @Context UriInfo uri,
            @HeaderParam(HttpHeaders.HOST) String host,
            @HeaderParam(HttpHeaders.IF_NONE_MATCH) String known) {
        Map<String, List<String>> sent = uri.getQueryParameters();
        String base = base(host);
        Map<String, List<String>> all = new TreeMap<>(sent);
        all.put(BASE, List.of(base));
        all.put(KEYED, List.of(Boolean.toString(pages.keyed())));
        String tag = tags.of(ROOT, MediaType.TEXT_HTML, all);
        if (EntityTags.matches(known, tag)) {
            return kept(Response.notModified(), tag);
        }
        FrontPages.Written written = pages.page(sent, base);
        Response.ResponseBuilder reply =
                Response.status(written.status()).entity(written.text()).type(PAGE);
        return written.status() == 200 ? kept(reply, tag) : reply.build();
    }

    /** A file of the page. */
    @GET
    @Path("front/{file}")
    @Produces({"text/css", "text/javascript", "image/svg+xml"})
    @Operation(hidden = true)
    public Response file(@PathParam("file") String name, @HeaderParam(HttpHeaders.IF_NONE_MATCH) String known) {
        PageFile file = PageFile.named(name).orElseThrow(NotFoundException::new);
        String tag = '"' + file.tag() + '"';
        return EntityTags.matches(known, tag)
                ? kept(Response.notModified(), tag)
                : kept(Response.ok(file.text()).type(file.mediaType()), tag);
    }

    private static Response kept(Response.ResponseBuilder reply, String tag) {
        return reply.header(HttpHeaders.ETAG, tag)
                .header(HttpHeaders.CACHE_CONTROL, CACHE)
                .build();
    }

    /** Scheme and host as they are set, or as the client wrote them. */
    private String base(String host) {
        return address.orElseGet(
                () -> "http://" + (host != null && HOST.matcher(host).matches() ? host : "localhost:8080"));
    }
}
