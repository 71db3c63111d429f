package io.loopstate.web.rest;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.web.dto.Version;
import io.loopstate.web.form.Form;
import io.loopstate.web.form.Layout;
import io.loopstate.web.form.LayoutReader;
import io.loopstate.web.form.Negotiation;
import io.loopstate.web.form.Renderer;
import io.loopstate.web.mapping.Pictures;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Occurrence;
import io.loopstate.web.problem.Problem;
import io.loopstate.web.problem.ProblemException;
import io.loopstate.web.problem.ProblemKind;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.lang.annotation.Annotation;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;
import org.jboss.resteasy.reactive.server.core.CurrentRequestManager;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;
import org.jboss.resteasy.reactive.server.core.ServerSerialisers;

/**
 * Replies in the form asked for, and what lets a cache keep them. Resources know of JSON, and of pictures where they have
 * one; every other form is made of the reply here, so that a new operation has them all.
 */
@ApplicationScoped
public class FormFilters {
    private static final String VERSION_PREFIX = "/v1/";
    private static final String CHOICE = "loopstate.layout";
    /** Of a request whose form is not chosen here. */
    private static final LayoutReader.Choice UNASKED = new LayoutReader.Choice(Layout.PLAIN, List.of());

    private static final String TAG = "loopstate.tag";
    /** Read once. */
    private static final Map<Form, MediaType> MEDIA_TYPES = Arrays.stream(Form.values())
            .collect(Collectors.toUnmodifiableMap(form -> form, form -> MediaType.valueOf(form.contentType())));

    private static final List<MediaType> ANYTHING = List.of(MediaType.WILDCARD_TYPE);

    private static final Annotation[] NONE = {};
    private static final String CACHE = "public, max-age=3600";
    private static final String VERIFICATION = "/v1/verification";
    /** What tells whether this build is right must not be the answer of another build. */
    private static final String ASK_EACH_TIME = "no-cache";

    /** Routes that write forms of their own. */
    private static final Set<String> OWN_FORMS = Set.of("/v1/batch", "/v1/verify", VERIFICATION);

    private final ObjectMapper mapper;
    private final EntityTags tags;

    /** Called by the container. */
    @Inject
    public FormFilters(ObjectMapper mapper, Version version) {
        this.mapper = mapper;
        this.tags = new EntityTags(version);
    }

    /** Chooses the form before the route is chosen, and answers a cache that has this very reply. */
    @ServerRequestFilter(preMatching = true)
    public Optional<Response> choose(ContainerRequestContext request) {
        String path = path(request);
        List<MediaType> acceptable = acceptable(request);
        if (!path.startsWith(VERSION_PREFIX)) {
            return Optional.empty();
        }
        Map<String, List<String>> parameters =
                DecodedQuery.install((ResteasyReactiveRequestContext) CurrentRequestManager.get());
        String form = "";
        if (!OWN_FORMS.contains(path)) {
            Optional<Form> accepted = Negotiation.form(acceptable, parameters.containsKey("pick"));
            // A form by name beats what is accepted; where neither fits, the platform refuses.
            if (accepted.isPresent() || parameters.containsKey("format")) {
                LayoutReader.Choice choice = LayoutReader.read(parameters, accepted.orElse(Form.JSON));
                Layout layout = choice.layout();
                form = layout.form().key();
                Form produced = layout.form() == Form.SVG ? Form.SVG : Form.JSON;
                request.getHeaders().putSingle(HttpHeaders.ACCEPT, produced.mediaType());
                request.setProperty(CHOICE, choice);
                if (produced == Form.SVG) {
                    draw(request, path.substring(VERSION_PREFIX.length()));
                }
            }
        }
        if (!reads(request)) {
            return Optional.empty();
        }
        String accept = OWN_FORMS.contains(path) ? request.getHeaderString(HttpHeaders.ACCEPT) : form;
        String tag = tags.of(path, accept, parameters);
        request.setProperty(TAG, tag);
        // Whoever knows the tag got this reply from this very build.
        return EntityTags.matches(request.getHeaderString(HttpHeaders.IF_NONE_MATCH), tag)
                ? Optional.of(Response.notModified()
                        .header(HttpHeaders.ETAG, tag)
                        .header(HttpHeaders.CACHE_CONTROL, cacheControl(path))
                        .header(HttpHeaders.VARY, HttpHeaders.ACCEPT)
                        .build())
                : Optional.empty();
    }

    /** The platform takes a header that it cannot read for a defect of its own. */
    private static List<MediaType> acceptable(ContainerRequestContext request) {
        String accept = request.getHeaderString(HttpHeaders.ACCEPT);
        if (accept == null || accept.equals(MediaType.WILDCARD)) {
            return ANYTHING;
        }
        try {
            return request.getAcceptableMediaTypes();
        } catch (IllegalArgumentException e) {
            throw ProblemException.invalid(
                    Fault.parameter(HttpHeaders.ACCEPT, "unreadable-header", "This header is no list of media types.")
                            .withGot(accept)
                            .withAllowed("media types with commas between, such as application/json"));
        }
    }

    /** Sends a request for a picture to where pictures are drawn; what is not drawn is refused where it is. */
    private static void draw(ContainerRequestContext request, String operation) {
        if (!request.getMethod().equals(HttpMethod.OPTIONS)
                && Pictures.named(operation).isPresent()) {
            request.setProperty(PictureResource.SENT, operation);
            request.setRequestUri(request.getUriInfo()
                    .getRequestUriBuilder()
                    .replacePath(PictureResource.PATH + '/' + operation)
                    .build());
        }
    }

    /** Writes the reply in its form. */
    @ServerResponseFilter
    public void write(ContainerRequestContext request, ContainerResponseContext response) {
        if (!request.getUriInfo().getPath().startsWith(VERSION_PREFIX)) {
            return;
        }
        response.getHeaders().putSingle(HttpHeaders.VARY, HttpHeaders.ACCEPT);
        LayoutReader.Choice choice =
                request.getProperty(CHOICE) instanceof LayoutReader.Choice chosen ? chosen : UNASKED;
        Layout layout = choice.layout();
        Object entity = response.getEntity();
        if (entity != null && !(entity instanceof Problem) && choice != UNASKED) {
            entity = form(request, response, choice, entity);
        }
        if (entity instanceof Problem problem) {
            if (problem.status() == ProblemKind.NOT_ACCEPTABLE.status() && !OWN_FORMS.contains(path(request))) {
                response.setEntity(Occurrence.refuse(offered(problem)));
            }
            refuse(response, layout, problem);
        } else if (response.getStatus() == 200 && request.getProperty(TAG) instanceof String tag) {
            response.getHeaders().putSingle(HttpHeaders.ETAG, tag);
            response.getHeaders().putSingle(HttpHeaders.CACHE_CONTROL, cacheControl(path(request)));
        }
    }

    /** The reply as it was written, or the problem that kept it from being written. */
    private Object form(
            ContainerRequestContext request,
            ContainerResponseContext response,
            LayoutReader.Choice choice,
            Object entity) {
        Layout layout = choice.layout();
        try {
            if (!choice.faults().isEmpty()) {
                throw new ProblemException(ProblemKind.INVALID_REQUEST, choice.faults());
            }
            if (plain(layout)) {
                return entity;
            }
            Optional<String> number = Renderer.number(layout, entity);
            if (number.isPresent()) {
                written(response, number.get(), layout.form());
                return entity;
            }
            JsonNode tree = mapper.valueToTree(entity);
            if (layout.form() == Form.JSON) {
                response.setEntity(Renderer.rounded(tree, layout), NONE, mediaType(Form.JSON));
            } else {
                String title = path(request).substring(VERSION_PREFIX.length());
                String text = Renderer.reply(layout, title, tree, entity.getClass());
                written(response, text, layout.form());
            }
            return entity;
        } catch (ProblemException e) {
            Problem problem = Occurrence.refuse(e.problem());
            response.setStatus(problem.status());
            response.setEntity(problem, NONE, MediaType.valueOf(Problem.MEDIA_TYPE));
            return problem;
        }
    }

    /** A text goes out as it is; the platform would look for whoever writes texts. */
    private static void written(ContainerResponseContext response, String text, Form form) {
        response.getHeaders().putSingle(HttpHeaders.CONTENT_TYPE, mediaType(form));
        ((ResteasyReactiveRequestContext) CurrentRequestManager.get()).setEntityWriter((context, entity) -> {
            ServerSerialisers.encodeResponseHeaders(context);
            context.serverResponse().end(text);
        });
    }

    /** The platform knows only what resources write. */
    private static Problem offered(Problem problem) {
        String offered = Arrays.stream(Form.values())
                .filter(form -> form != Form.SVG)
                .map(Form::mediaType)
                .collect(Collectors.joining(", "));
        return Problem.of(
                ProblemKind.NOT_ACCEPTABLE,
                problem.errors().stream()
                        .map(fault -> fault.withAllowed(offered))
                        .toList());
    }

    private static void refuse(ContainerResponseContext response, Layout layout, Problem problem) {
        if (!layout.inlineErrors()) {
            return;
        }
        response.setStatus(200);
        response.getHeaders().putSingle(HttpHeaders.CACHE_CONTROL, "no-store");
        if (layout.form() == Form.JSON) {
            response.setEntity(problem, NONE, mediaType(Form.JSON));
        } else {
            written(response, Renderer.refusal(layout, problem), layout.form());
        }
    }

    private static boolean plain(Layout layout) {
        return layout.form() == Form.SVG
                || layout.form() == Form.JSON
                        && layout.digits().isEmpty()
                        && layout.picks().isEmpty();
    }

    /** A slash behind a route changes nothing. */
    static String path(ContainerRequestContext request) {
        String path = request.getUriInfo().getPath();
        return path.endsWith("/") ? path.substring(0, path.length() - 1) : path;
    }

    private static String cacheControl(String path) {
        return path.equals(VERIFICATION) ? ASK_EACH_TIME : CACHE;
    }

    private static boolean reads(ContainerRequestContext request) {
        return request.getMethod().equals(HttpMethod.GET) || request.getMethod().equals(HttpMethod.HEAD);
    }

    private static MediaType mediaType(Form form) {
        return MEDIA_TYPES.get(form);
    }
}
