package shimwright.bench.web;

import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;

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
