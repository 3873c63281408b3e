package shimwright.bench.web;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Kept;

/** What pages share. */
final class Pages {
    private Pages() {}

    /** The job of the address, or a plain page that says there is none. */
    static Optional<Desk.OnBench> bench(Context ctx, Desk desk, Door door) {
        Optional<Desk.OnBench> bench = desk.bench(ctx.pathParam("job"));
        if (bench.isEmpty()) {
            lost(ctx, door, "There is no such job here, or its unit type is not on this shelf.");
        }
        return bench;
    }

    /** Makes an entry of a form; faults go into the form. */
    interface Make {
        Entry.OfJob entry(Desk.OnBench bench, Form form);
    }

    /** Shows the page again with what was refused and what was typed. */
    interface Again {
        void show(Context ctx, List<Refusal> faults, Map<String, String> typed);
    }

    /** Where to go once an entry is kept. */
    interface Next {
        String after(Entry.OfJob entry, Form form);
    }

    /** Reads the form, keeps the entry that it makes, and goes on; what is refused is shown with what was typed. */
    static void keep(Context ctx, Desk desk, Door door, String said, Make make, Again again, Next next) {
        Optional<Desk.OnBench> bench = bench(ctx, desk, door);
        if (bench.isEmpty()) {
            return;
        }
        Form form = door.form(ctx);
        Entry.OfJob entry = make.entry(bench.get(), form);
        String job = "/job/" + bench.get().job().id();
        if (!form.sound() && kept(bench.get(), form)) {
            door.on(ctx, job + next.after(entry, form), said);
            return;
        }
        if (!form.sound()) {
            again.show(ctx, form.faults(), form.typed());
            return;
        }
        Outcome<Kept> kept =
                desk.keep(bench.get().job().id(), bench.get().unit(), door.entryId(form), door.who(ctx), entry);
        if (kept.isOk()) {
            door.on(ctx, job + next.after(entry, form), said);
        } else {
            again.show(ctx, kept.refusals(), form.typed());
        }
    }

    /** True where the entry that this form makes is kept already: the answer was lost on the way and it came again. */
    static boolean kept(Desk.OnBench bench, Form form) {
        String id = form.raw("entry");
        return bench.job().entries().stream().anyMatch(kept -> kept.draft().id().equals(id));
    }

    /** A page that says in a sentence what is not here. */
    static void lost(Context ctx, Door door, String sentence) {
        door.show(ctx, "lost", door.page(ctx, "Not here", "", null), Map.of("sentence", sentence));
        ctx.status(404);
    }
}
