package shimwright.bench.web.shop;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.Lessons;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Range;
import shimwright.rebuild.learn.FigureRow;
import shimwright.rebuild.learn.StockAdvice;
import shimwright.rebuild.unit.model.UnitType;

/** What shows over the jobs of a type: their readings in a row with the limits of a chart, and what the drawer should hold for them; with what is known of part numbers. */
public final class OverJobsPages {
    private final Desk desk;
    private final Door door;

    public OverJobsPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        new NumberPages(desk, door).routes(routes);
        routes.get("/overjobs/{type}", this::readings);
        routes.get("/overjobs/{type}/drawer", this::drawer);
    }

    private Optional<UnitType> type(Context ctx) {
        Optional<UnitType> type = desk.shelf().type(ctx.pathParam("type"));
        if (type.isEmpty()) {
            Pages.lost(ctx, door, "There is no such unit type on this shelf.");
        }
        return type;
    }

    private void readings(Context ctx) {
        type(ctx).ifPresent(type -> {
            Page page = door.page(ctx, "Over the jobs", "", null);
            String asked = ctx.queryParam("of");
            String of = asked == null ? "" : asked;
            Lessons lessons = desk.lessons(type.id());
            List<FigureRow> trends = FigureRow.of(type, lessons.taught().figures());
            Map<String, Object> more = new LinkedHashMap<>();
            more.put("type", type);
            more.put("all", lessons.all());
            more.put("view", OverJobsView.of(of.isEmpty() ? trends : FigureRow.about(trends, of), of, page.show()));
            more.put("back", Pages.cameFrom(ctx, Map.of()));
            door.show(ctx, "overjobs", page, more);
        });
    }

    /** A number that may be left open: 0 then. */
    private static double number(Form form, String name, String place, Range range) {
        return form.raw(name).isEmpty() ? 0 : form.quantity(name, Kind.NUMBER, place, range);
    }

    private void drawer(Context ctx) {
        type(ctx).ifPresent(type -> {
            Form form = new Form(ctx.queryParamMap(), door.system(ctx));
            int jobs = (int) Math.round(number(form, "jobs", "boxes until the next delivery", new Range(1, 50)));
            double sure = number(form, "sure", "how sure", new Range(50, 99.9)) / 100;
            double step = form.raw("step").isEmpty()
                    ? StockAdvice.STEP
                    : form.quantity("step", Kind.LENGTH, "step between sizes", new Range(1e-6, 1e-3));
            Lessons lessons = desk.lessons(type.id());
            Page page = door.page(ctx, "What the drawer should hold", "", null, form.faults(), form.typed());
            Map<String, Object> more = new LinkedHashMap<>();
            more.put("type", type);
            more.put("all", lessons.all());
            more.put(
                    "places",
                    StockAdvice.of(
                            type, lessons.taught().wished(), desk.shop(), new StockAdvice.Asked(jobs, sure, step)));
            more.put("step", step);
            more.put("back", Pages.cameFrom(ctx, Map.of()));
            door.show(ctx, "stock", page, more);
        });
    }
}
