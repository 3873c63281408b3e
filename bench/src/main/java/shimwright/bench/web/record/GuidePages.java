package shimwright.bench.web.record;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.bench.web.kit.Paper;

/** A guide for others, made from a job: on screen and on paper, with what is left out by choice. */
public final class GuidePages {
    private static final String OUT = "out-";

    private final Desk desk;
    private final Door door;
    private final Paper paper;

    public GuidePages(Desk desk, Door door, Paper paper) {
        this.desk = desk;
        this.door = door;
        this.paper = paper;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get(
                "/job/{job}/guide",
                ctx -> Pages.bench(ctx, desk, door).ifPresent(bench -> show(ctx, bench, Optional.empty())));
        routes.get(
                "/job/{job}/guide.pdf",
                ctx -> Pages.bench(ctx, desk, door).ifPresent(bench -> print(ctx, bench, Optional.empty())));
        routes.post("/job/{job}/guide", this::chosen);
    }

    private void chosen(Context ctx) {
        Form form = door.form(ctx);
        Set<String> left = form.names().stream()
                .filter(name -> name.startsWith(OUT))
                .map(name -> name.substring(OUT.length()))
                .collect(Collectors.toSet());
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            if (form.has("paper")) {
                print(ctx, bench, Optional.of(left));
            } else {
                show(ctx, bench, Optional.of(left));
            }
        });
    }

    private void show(Context ctx, JobOnBench bench, Optional<Set<String>> left) {
        door.show(
                ctx,
                "guide",
                door.page(ctx, "Guide", "record", bench),
                Map.of("view", GuideView.of(desk, bench, left, false)));
    }

    private void print(Context ctx, JobOnBench bench, Optional<Set<String>> left) {
        Page page = door.page(ctx, "Guide", "record", bench);
        ctx.contentType("application/pdf");
        ctx.header(
                "Content-Disposition",
                "inline; filename=\"guide-" + bench.unit().type().id() + ".pdf\"");
        ctx.result(paper.pdf(
                door.render("guidepaper", Map.of("page", page, "view", GuideView.of(desk, bench, left, true)))));
    }
}
