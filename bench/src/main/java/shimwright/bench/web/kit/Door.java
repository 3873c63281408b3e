package shimwright.bench.web.kit;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.TemplateOutput;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.time.Duration;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.sheet.DrawOptions;
import shimwright.bench.text.Characters;
import shimwright.bench.web.guard.RequestDenied;
import shimwright.bench.web.guard.RequestLimits;
import shimwright.bench.web.pair.Asker;
import shimwright.bench.web.words.WordedOutput;
import shimwright.bench.web.words.Words;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;

/** Between a request and the pages: who asks, in which units, what was typed; and templates out. */
public final class Door {
    /** No page of ours has a longer one; all headers of an answer together have 8 kB. */
    private static final int LONGEST_ADDRESS = 2_000;

    /** Coded for an address a letter may take nine characters. */
    private static final int LONGEST_WORD = 400;

    /** Under which name a request carries the mark of what its page will show. */
    public static final String MARK = "mark";

    private static final String HELD = "held";

    private static final int YEAR = 365 * 24 * 3600;
    private static final int LONGEST_NAME = 60;
    private static final Duration LONGEST_WAIT = Duration.ofDays(31);

    private final TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);
    private final Supplier<String> ids;
    private final ZoneId zone;
    private final ShopSpeech speech;

    /**
     * A door.
     *
     * @param ids makes ids for entries where the browser did not
     * @param zone the shop's time zone
     * @param facts what the shop has said of itself
     */
    public Door(Supplier<String> ids, ZoneId zone, Supplier<Map<String, String>> facts) {
        this.ids = ids;
        this.zone = zone;
        this.speech = new ShopSpeech(facts);
    }

    /** The units of measure that the person at this screen chose. */
    public UnitSystem system(Context ctx) {
        return "inch".equals(ctx.cookie("units")) ? UnitSystem.INCH : UnitSystem.METRIC;
    }

    /** The time zone of the shop. */
    public ZoneId zone() {
        return zone;
    }

    /** How entries are signed: the person, and the device where it is not this machine. */
    public String who(Context ctx) {
        Asker asker = Asker.of(ctx.req());
        return asker == null ? name(ctx) : asker.signs(name(ctx));
    }

    private String name(Context ctx) {
        String name = remembered(ctx, "who");
        return name.isBlank() ? "the bench" : name;
    }

    /** What a cookie says; empty where it is none of ours. */
    private static String decoded(String cookie) {
        if (cookie.length() > RequestLimits.COOKIE) {
            return "";
        }
        String name;
        try {
            name = java.net.URLDecoder.decode(cookie, java.nio.charset.StandardCharsets.UTF_8);
        } catch (IllegalArgumentException notOurs) {
            return "";
        }
        if (Characters.unfit(name).isPresent()) {
            return "";
        }
        return name.length() > LONGEST_NAME ? name.substring(0, LONGEST_NAME) : name;
    }

    /** Keeps a choice of the person at this screen in a cookie; one that would not be read again is refused. */
    public void remember(Context ctx, String name, String value) {
        String safe = java.net.URLEncoder.encode(value, java.nio.charset.StandardCharsets.UTF_8);
        if (value.length() > LONGEST_NAME || safe.length() > RequestLimits.COOKIE) {
            throw new RequestDenied(422, name, "it is too long to be remembered here", "Type a shorter one");
        }
        ctx.cookie(new Cookie(name, safe, "/", YEAR, ctx.req().isSecure(), true, null, SameSite.STRICT));
    }

    /** Keeps how this screen is held, as a form says it. */
    public void hold(Context ctx, Form form) {
        remember(ctx, HELD, Held.typed(form).kept());
    }

    /** What was remembered under a name; empty for nothing. */
    public String remembered(Context ctx, String name) {
        String value = ctx.cookie(name);
        return value == null ? "" : decoded(value);
    }

    /** How a worksheet is to be drawn, from the address. */
    public static DrawOptions.Typed draws(Context ctx) {
        DrawOptions names = DrawOptions.ADDRESS;
        return new DrawOptions.Typed(query(ctx, names.count()), query(ctx, names.seed()), query(ctx, names.coverage()));
    }

    private static String query(Context ctx, String name) {
        String typed = ctx.queryParam(name);
        return typed == null ? "" : typed.strip();
    }

    /** The form of a post, multipart or not. */
    public Form form(Context ctx) {
        Map<String, List<String>> fields;
        try {
            fields = ctx.formParamMap();
        } catch (Exception unreadable) { // Kotlin throws what it does not declare
            throw new RequestDenied(400, "form", "it cannot be read", "Go back, and send it again");
        }
        return new Form(fields, system(ctx));
    }

    /** Who does what a form says, in which units, under the id that the client made. */
    public Desk.Signed signed(Context ctx, Form form) {
        return new Desk.Signed(entryId(form), who(ctx), form.system(), waited(form));
    }

    /** How long a post lay on its screen, as the screen says; more than a month is a clock set wrong, and not believed. */
    private static Duration waited(Form form) {
        String seconds = form.raw("waited");
        return seconds.matches("\\d{1,7}") && Integer.parseInt(seconds) <= LONGEST_WAIT.toSeconds()
                ? Duration.ofSeconds(Integer.parseInt(seconds))
                : Duration.ZERO;
    }

    /** The entry's id as the client made it, or a new one. */
    public String entryId(Form form) {
        String id = form.raw("entry");
        return id.matches("[A-Za-z0-9-]{8,64}") ? id : ids.get();
    }

    /** The page around a body, as it stands for this request. */
    public Page page(Context ctx, String title, String tab, @Nullable JobOnBench bench) {
        return page(ctx, title, tab, bench, List.of(), Map.of());
    }

    /** The page as it stands after a refusal: with the faults found and everything that was typed. */
    public Page page(
            Context ctx,
            String title,
            String tab,
            @Nullable JobOnBench bench,
            List<Refusal> faults,
            Map<String, String> typed) {
        String said = ctx.queryParam("said");
        Held held = Held.of(remembered(ctx, HELD));
        return new Page(
                title,
                new Show(system(ctx), zone),
                tab,
                bench,
                faults,
                typed,
                name(ctx),
                said == null ? "" : said,
                Optional.ofNullable(ctx.<String>attribute(MARK)).orElse(""),
                held,
                speech.words(held),
                ids.get());
    }

    /** Renders a template; 422 where the page carries refusals, so that nothing reads it as kept. */
    public void show(Context ctx, String template, Page page, Map<String, Object> more) {
        Map<String, Object> all = new LinkedHashMap<>(more);
        all.put("page", page);
        ctx.status(page.refused() ? 422 : 200);
        String html = render(template, all);
        ctx.html(page.refused() ? FieldFaults.marked(html, ctx.path(), page) : html);
    }

    /** The text of a template with its values, in the words of the page among them; a paper that is evidence stays in English. */
    public String render(String template, Map<String, Object> values) {
        return render(template, values, values.get("page") instanceof Page page ? page.words() : Words.PLAIN);
    }

    /** The text of a part of a page with its values, in the words of the screen that asks. */
    public String render(Context ctx, String template, Map<String, Object> values) {
        return render(template, values, speech.words(Held.of(remembered(ctx, HELD))));
    }

    private String render(String template, Map<String, Object> values, Words words) {
        boolean plain = words.plain() || ShopSpeech.evidence(template);
        TemplateOutput out = plain ? new StringOutput() : WordedOutput.in(words);
        engine.render(template + ".jte", values, out);
        return Characters.harmless(out.toString());
    }

    /**
     * Goes on to a page of this shop, as after an entry is kept; the one way in which anybody is led elsewhere.
     *
     * @param address where to; one that {@link #local} does not hold leads to the first page
     * @param said a word of what was kept; empty for none, and a long one is cut
     */
    public void on(Context ctx, String address, String said) {
        String to = local(address) ? address : "/";
        String word = said.isEmpty()
                ? ""
                : (to.contains("?") ? "&" : "?") + "said="
                        + java.net.URLEncoder.encode(
                                said.length() > LONGEST_WORD ? said.substring(0, LONGEST_WORD) + "…" : said,
                                java.nio.charset.StandardCharsets.UTF_8);
        int place = to.indexOf('#') < 0 ? to.length() : to.indexOf('#');
        ctx.redirect(to.substring(0, place) + word + to.substring(place), io.javalin.http.HttpStatus.SEE_OTHER);
    }

    /** True for an address within this shop: a path that fits into a header and no browser reads as another machine's name. */
    public static boolean local(String address) {
        boolean path = address.length() <= LONGEST_ADDRESS && address.startsWith("/") && !address.startsWith("//");
        return path && address.chars().allMatch(c -> c > ' ' && c < 0x7F && c != '\\');
    }
}
