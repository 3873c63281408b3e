package shimwright.bench.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.desk.SoFar;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Range;
import shimwright.rebuild.act.ComplaintActs;
import shimwright.rebuild.complaint.Advice;
import shimwright.rebuild.complaint.CauseTables;
import shimwright.rebuild.complaint.Hum;
import shimwright.rebuild.job.Job;

/** The complaint: what it does, what may be wrong, and what to look at first. */
public final class ComplaintPages {
    private static final String HERE = "/job/{job}/complaint";
    /** Jobs of the same unit type from which is learned, the newest. */
    private static final int EARLIER = 30;

    private final Desk desk;
    private final Door door;

    public ComplaintPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get(HERE, ctx -> complaint(ctx, List.of(), Map.of()));
        routes.post(
                HERE,
                ctx -> Pages.act(
                        ctx,
                        desk,
                        door,
                        ComplaintActs.SayComplaint.class,
                        this::complaint,
                        form -> "/complaint#looks"));
        routes.post(
                HERE + "/look",
                ctx -> Pages.act(
                        ctx, desk, door, ComplaintActs.LookAt.class, this::complaint, form -> "/complaint#looks"));
    }

    /** What the complaint of a job comes to, with what earlier jobs of its type teach. */
    private ComplaintView view(JobOnBench bench) {
        SoFar<Job> earlier = desk.jobsSoFar(bench.job().opened().unitType(), EARLIER);
        Advice advice = Advice.of(bench.unit(), bench.job(), earlier.values());
        return ComplaintView.of(CauseTables.shipped(), advice, bench, earlier.all());
    }

    void complaint(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Form asked = new Form(ctx.queryParamMap(), door.system(ctx));
            List<Hum> hums = hums(bench, asked);
            double heard = asked.raw("heard").isEmpty()
                    ? 0
                    : asked.quantity("heard", Kind.FREQUENCY, "what was heard", new Range(1, 20_000));
            List<Refusal> all = new ArrayList<>(faults);
            all.addAll(asked.faults());
            Map<String, String> again = new LinkedHashMap<>(asked.typed());
            again.putAll(typed);
            door.show(
                    ctx,
                    "complaint",
                    door.page(ctx, "What is wrong with it", "complaint", bench, all, again),
                    Map.of("view", view(bench), "hums", hums, "heard", heard));
        });
    }

    /** What each pair hums at, where a speed was asked for. */
    private static List<Hum> hums(JobOnBench bench, Form asked) {
        if (asked.raw("turning").isEmpty()) {
            return List.of();
        }
        double speed = asked.quantity("turning", Kind.ROTATION, "speed of the input shaft", new Range(1, 2_000));
        String in = asked.raw("in");
        if (!in.isEmpty()
                && bench.unit().type().gears().stream()
                        .noneMatch(pair -> pair.id().equals(in))) {
            asked.fault("in", "the gear that is in", "this unit has no " + in, "Choose one of those shown");
        }
        return asked.sound() ? Hum.of(bench.unit(), in, speed) : List.of();
    }
}
