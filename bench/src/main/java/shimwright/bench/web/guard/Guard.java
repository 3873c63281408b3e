package shimwright.bench.web.guard;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.router.ParsedEndpoint;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import shimwright.bench.web.pair.Asker;
import shimwright.mechanics.outcome.Refusal;

/** Asks of every request, before any page sees it: how, under which name, from where, who, and how much. */
public final class Guard extends Handler.Wrapper {
    private static final Logger LOG = LoggerFactory.getLogger(Guard.class);
    private static final Refusal FAULT = Refusal.at(
            "program", "it has a fault here; nothing that was kept is lost", "Go back, and tell who looks after it");
    private static final Refusal PLAIN = Refusal.at(
            "address", "nothing is taken here that others on the network could read", "Open the address with https");
    private static final Refusal STRANGER =
            Refusal.at("device", "it was not let in here, or was let out", "Open the shop's address and pair it");
    private static final String PAIR = "/pair";

    /** Set by something between this program and who asks, which then may sit anywhere. */
    private static final List<String> FORWARDED =
            List.of("Forwarded", "X-Forwarded-For", "X-Forwarded-Host", "X-Real-IP", "Via");

    private static final Set<String> METHODS = Set.of("GET", "HEAD", "POST");

    private static final RefusalLog WATCH = new RefusalLog();

    private final Entrance entrance;

    private Guard(Entrance entrance) {
        super(new BodyReader(null));
        this.entrance = entrance;
    }

    /** Puts the guard and every limit before the pages of a server that is being made. */
    public static void on(JavalinConfig config, Entrance entrance) {
        config.http.maxRequestSize = RequestLimits.UPLOAD;
        config.jetty.multipartConfig.maxFileSize(RequestLimits.UPLOAD, io.javalin.config.SizeUnit.BYTES);
        config.jetty.multipartConfig.maxTotalRequestSize(RequestLimits.UPLOAD, io.javalin.config.SizeUnit.BYTES);
        // what is held in memory is never laid down on a disk, so nothing stays there
        config.jetty.multipartConfig.maxInMemoryFileSize(RequestLimits.UPLOAD, io.javalin.config.SizeUnit.BYTES);
        config.jetty.modifyServletContextHandler(context -> {
            context.setMaxFormKeys(RequestLimits.FIELDS);
            context.setMaxFormContentSize(RequestLimits.UPLOAD);
            context.setErrorHandler(new Errors());
        });
        config.jetty.modifyHttpConfiguration(http -> {
            http.setRequestHeaderSize(RequestLimits.HEADERS);
            http.setSendServerVersion(false);
            http.setIdleTimeout(RequestLimits.IDLE.toMillis());
        });
        config.jetty.modifyServer(server -> {
            server.setErrorHandler(new Errors());
            server.setHandler(new Guard(entrance));
            server.addBean(new ConnectionLimit(RequestLimits.connections(), server));
        });
        config.routes.before(ctx -> may(config, ctx));
        ScreenMemory.on(config);
        config.routes.after(ctx -> {
            if ("text/html".equals(ctx.res().getContentType())) {
                ctx.contentType("text/html; charset=utf-8");
            }
        });
        config.router.javaLangErrorHandler((response, error) -> broken(response, error));
        entrance.connectors(config);
    }

    /** Memory or stack ran out on one request: it is answered with a sentence, and the others go on. */
    private static void broken(HttpServletResponse response, Error error) {
        boolean memory = Memory.ranOut(error);
        LOG.error("{}", memory ? "out of memory" : "a fault of ours", memory ? null : error);
        try {
            response.resetBuffer();
            response.setStatus(memory ? Memory.STATUS : 500);
            response.setContentType(RefusalAnswers.type(false));
            response.getOutputStream()
                    .write(RefusalAnswers.page(List.of(memory ? Memory.TOO_LITTLE : FAULT))
                            .getBytes(StandardCharsets.UTF_8));
        } catch (IOException | IllegalStateException gone) {
            LOG.warn("nobody heard of it: {}", gone.getMessage());
        }
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        RefusalAnswers.headers(response.getHeaders());
        RequestHead asked = RequestHead.of(request);
        Optional<RequestDenied> denied = denied(asked);
        if (denied.isPresent()) {
            WATCH.refused(request, String.valueOf(denied.get().getMessage()));
            RefusalAnswers.write(
                    response,
                    callback,
                    asked.byProgram(),
                    denied.get().status(),
                    denied.get().refusals());
            return true;
        }
        boolean here = Entrance.here(request.getConnectionMetaData().getLocalSocketAddress())
                && FORWARDED.stream().noneMatch(asked::has);
        if (here) {
            Asker.HERE.on(request);
            return super.handle(request, response, callback);
        }
        if (entrance.certificate() != null && !asked.secure()) {
            return plain(asked, response, callback);
        }
        Optional<Asker> asker = entrance.devices().asker(DeviceCookie.of(request));
        if (asker.isPresent()) {
            asker.get().on(request);
            return super.handle(request, response, callback);
        }
        ScreenMemory.forget(response.getHeaders(), entrance.devices().letOut(DeviceCookie.of(request)));
        return stranger(asked, request, response, callback);
    }

    /** Nothing is taken or given in plain text where there is TLS; who only looks is sent there. */
    private static boolean plain(RequestHead asked, Response response, Callback callback) {
        if (asked.looks() && !asked.byProgram()) {
            response.setStatus(308);
            response.getHeaders().put(HttpHeader.LOCATION, "https://" + asked.authority() + "/");
            response.write(true, null, callback);
        } else {
            RefusalAnswers.write(response, callback, asked.byProgram(), 403, List.of(PLAIN));
        }
        return true;
    }

    /** One page for who was not let in, and no more. */
    private boolean stranger(RequestHead asked, Request request, Response response, Callback callback)
            throws Exception {
        if (asked.path().equals(PAIR)) {
            return super.handle(request, response, callback);
        }
        if (asked.looks() && !asked.byProgram()) {
            response.setStatus(303);
            response.getHeaders().put(HttpHeader.LOCATION, PAIR);
            response.write(true, null, callback);
        } else {
            WATCH.refused(request, STRANGER.fact());
            RefusalAnswers.write(response, callback, asked.byProgram(), 403, List.of(STRANGER));
        }
        return true;
    }

    /** The route as it was declared, but for the act, which decides who may do it. */
    private static String named(ParsedEndpoint found, String path) {
        String act = found.extractPathParams(path).get("act");
        return act == null ? found.endpoint.path : found.endpoint.path.replace("{act}", act);
    }

    /** Whether who asks may do what the route does that will answer. */
    private static void may(JavalinConfig config, Context ctx) {
        ParsedEndpoint found = config.unsafe.internalRouter.findFirstHttpHandlerEntry(ctx.method(), ctx.path());
        boolean looks = HandlerType.GET.equals(ctx.method()) || HandlerType.HEAD.equals(ctx.method());
        String route = found == null ? ctx.path() : named(found, ctx.path());
        Asker asker = Asker.of(ctx.req());
        if (asker == null ? !route.equals(PAIR) : !asker.role().may(looks, route)) {
            WATCH.refused(ctx.ip(), ctx.method() + " " + route, asker == null ? "not let in" : asker.device());
            throw new RequestDenied(
                    403,
                    "device",
                    asker == null ? "it was not let in" : "as " + asker.role().word() + " it may not do this",
                    "Do it on the machine itself, or ask the owner of the shop");
        }
    }

    /** What stands against a request whoever sent it. */
    private Optional<RequestDenied> denied(RequestHead asked) {
        boolean entry = asked.method().equals("DELETE") && asked.address().startsWith("/api/units/");
        if (!entry && !METHODS.contains(asked.method())) {
            return Optional.of(
                    new RequestDenied(405, "request", "nothing is done by that method here", "Use GET or POST"));
        }
        Optional<Refusal> host = entrance.hosts().refusal(asked);
        if (host.isPresent()) {
            return Optional.of(new RequestDenied(421, List.of(host.get())));
        }
        Optional<Refusal> origin = Origins.refusal(asked);
        if (origin.isPresent()) {
            return Optional.of(new RequestDenied(403, List.of(origin.get())));
        }
        if (asked.address().length() > RequestLimits.ADDRESS) {
            return Optional.of(new RequestDenied(
                    414, "address", "it is longer than " + RequestLimits.ADDRESS + " characters", "Send less"));
        }
        return ReadableText.refusal(asked).map(refusal -> new RequestDenied(400, List.of(refusal)));
    }
}
