package shimwright.bench.web.kit;

import io.javalin.http.Context;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.Act;

/** What pages share. */
public final class Pages {
    private Pages() {}

    /** The job of the address, or a plain page that says there is none. */
    public static Optional<JobOnBench> bench(Context ctx, Desk desk, Door door) {
        Optional<JobOnBench> bench = desk.bench(ctx.pathParam("job"));
        if (bench.isEmpty()) {
            lost(ctx, door, "There is no such job here, or its unit type is not on this shelf.");
        }
        return bench;
    }

    /** Shows the page again with what was refused and what was typed. */
    public interface Again {
        void show(Context ctx, List<Refusal> faults, Map<String, String> typed);
    }

    /** Where to go once an act is kept. */
    public interface Next {
        String after(Form form);
    }

    /** Reads the act that was typed, does it on the job, and goes on; what is refused is shown with what was typed. */
    public static void act(Context ctx, Desk desk, Door door, Class<? extends Act.OfJob> type, Again again, Next next) {
        if (bench(ctx, desk, door).isPresent()) {
            Form form = door.form(ctx);
            act(ctx, desk, door, form, ActReader.read(type, form), again, next);
        }
    }

    /** The same for an act that was read already; faults are in the form. */
    public static void act(Context ctx, Desk desk, Door door, Form form, Act.OfJob act, Again again, Next next) {
        String job = ctx.pathParam("job");
        if (!form.sound()) {
            List<Refusal> faults =
                    desk.amiss(job, act, form.faults(), door.signed(ctx, form).units());
            again.show(ctx, faults, form.typed());
            return;
        }
        Outcome<Desk.Done> done = desk.act(job, act, door.signed(ctx, form));
        if (done instanceof Outcome.Ok<Desk.Done> ok) {
            door.on(ctx, "/job/" + job + next.after(form), ok.value().said());
        } else {
            again.show(ctx, done.refusals(), form.typed());
        }
    }

    /** Reads an act on the shop, does it and goes on; the address remembers where somebody came from. */
    public static void act(
            Context ctx, Desk desk, Door door, Class<? extends Act.OfShop> type, Again again, String next) {
        Form form = door.form(ctx);
        Act.OfShop act = ActReader.read(type, form);
        if (!form.sound()) {
            again.show(ctx, form.faults(), form.typed());
            return;
        }
        Outcome<Desk.Done> done = desk.act(act, door.signed(ctx, form));
        if (done instanceof Outcome.Ok<Desk.Done> ok) {
            door.on(
                    ctx,
                    remembering(next, cameFrom(ctx, form.typed())),
                    ok.value().said());
        } else {
            again.show(ctx, done.refusals(), form.typed());
        }
    }

    /** Where a form came from within the job, as its field {@code page} says. */
    public static String back(Form form) {
        String page = form.raw("page");
        return page.matches("[a-z]+(/[A-Za-z0-9_%-]+)?(\\?limit=[A-Za-z0-9_-]+)?") ? "/" + page : "/build";
    }

    /** Where somebody came from and wants to go back to, as address or form say; empty for nowhere in this shop. */
    public static String cameFrom(Context ctx, Map<String, String> typed) {
        String asked = ctx.queryParam("back");
        String from = asked == null ? typed.getOrDefault("back", "") : asked;
        return Door.local(from) ? from : "";
    }

    /** An address that remembers where somebody came from. */
    public static String remembering(String address, String from) {
        return from.isEmpty() ? address : address + "?back=" + encoded(from);
    }

    /** A word of an address. */
    public static String encoded(String word) {
        return URLEncoder.encode(word, StandardCharsets.UTF_8);
    }

    /** A word that was put into an address; as it is where it never was one. */
    public static String decoded(String word) {
        try {
            return URLDecoder.decode(word, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException bent) {
            return word;
        }
    }

    /** A page that says in a sentence what is not here. */
    public static void lost(Context ctx, Door door, String sentence) {
        door.show(ctx, "lost", door.page(ctx, "Not here", "", null), Map.of("sentence", sentence));
        ctx.status(404);
    }
}
