package shimwright.bench.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.picture.photo.Thumbnail;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.MarkedPicture;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.PictureActs;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job.Said;

/** One picture of a job large, to draw on it. */
public final class MarkPages {
    private static final double WIDE = 900;

    private final Desk desk;
    private final Door door;

    MarkPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    /** Lays the addresses of these pages. */
    void routes(RoutesConfig routes) {
        routes.get("/job/{job}/picture/{number}", ctx -> picture(ctx, List.of(), Map.of()));
        routes.post(
                "/job/{job}/picture/{number}",
                ctx -> Pages.act(ctx, desk, door, PictureActs.MarkPicture.class, this::picture, form -> page(ctx)));
    }

    /** Back to what the picture is about. */
    private String page(Context ctx) {
        return desk.bench(ctx.pathParam("job"))
                .flatMap(bench -> find(bench, ctx.pathParam("number")))
                .map(said -> MarkedPicture.page(said.what().about()))
                .orElse("/record");
    }

    private static Optional<Said<Entry.PictureAdded>> find(JobOnBench bench, String number) {
        return bench.job().pictures().values().stream()
                .flatMap(List::stream)
                .filter(said -> Long.toString(said.number()).equals(number))
                .findFirst();
    }

    /** The page of a picture; which one the address says, or after a strike the field {@code page}. */
    void picture(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            String number = ctx.pathParamMap()
                    .getOrDefault("number", typed.getOrDefault("page", "").replace("picture/", ""));
            Optional<Said<Entry.PictureAdded>> said = find(bench, number);
            OptionalDouble tall = said.flatMap(
                            one -> desk.pictures().find(one.what().picture()))
                    .map(Thumbnail::tall)
                    .orElse(OptionalDouble.empty());
            if (said.isEmpty() || tall.isEmpty()) {
                Pages.lost(
                        ctx, door, "There is no such picture in this job; it may have been struck, or it is damaged.");
                return;
            }
            Page page = door.page(ctx, "Picture", "", bench, faults, typed);
            Map<String, Object> more = new LinkedHashMap<>();
            more.put("picture", MarkedPicture.of(bench.job(), bench.unit(), said.get(), WIDE));
            more.put("tall", String.format(Locale.ROOT, "%.5f", tall.getAsDouble()));
            more.put("drawn", bench.job().marksOn(said.get()));
            door.show(ctx, "marks", page, more);
        });
    }
}
