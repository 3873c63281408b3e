package shimwright.bench.web.plan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Pages;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.plan.blocking.Blocking;
import shimwright.rebuild.plan.learn.Learning;
import shimwright.rebuild.plan.learn.Question;
import shimwright.rebuild.plan.learn.RemovedParts;
import shimwright.rebuild.plan.learn.StepText;
import shimwright.rebuild.unit.model.Item;

/**
 * The strip-down turned round: yes-or-no questions relax the order seen, and what was learnt is written as steps of a unit
 * file. The answers stand in the address, so that nothing is lost by going back or closing the page.
 */
public final class LearnPages {
    /** Jobs of the same unit type whose strip-down is looked at, the newest. */
    private static final int OTHERS = 30;

    private final Desk desk;
    private final Door door;

    public LearnPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get("/job/{job}/learn", this::learn);
        routes.get("/job/{job}/learn/steps", this::steps);
    }

    /**
     * What is known after the answers given so far.
     *
     * @param answers y and n, in the order of the questions
     */
    private static Learning learnt(Desk desk, JobOnBench bench, String answers) {
        Learning learning = Learning.of(off(bench));
        for (Job other : desk.jobs(bench.job().opened().unitType(), OTHERS)) {
            if (!other.id().equals(bench.job().id())) {
                learning = learning.withOrder(seen(bench.job(), other));
            }
        }
        if (!bench.unit().type().section().scheme()) {
            learning = learning.withDrawing(Blocking.items(bench.unit(), Set.of()));
        }
        for (int i = 0; i < answers.length(); i++) {
            Optional<Question> next = learning.next();
            if (next.isPresent()) {
                learning = learning.answered(next.get(), answers.charAt(i) == 'y');
            }
        }
        return learning;
    }

    private static List<RemovedParts> off(Job job) {
        return RemovedParts.of(job.takenOff().stream().map(Job.Said::what).toList());
    }

    /** The strip-down of a job; an item that its unit has not, or has no longer, is left out of it. */
    private static List<RemovedParts> off(JobOnBench bench) {
        Set<String> known = bench.unit().type().items().stream().map(Item::id).collect(Collectors.toSet());
        return off(bench.job()).stream()
                .map(off -> new RemovedParts(
                        off.id(),
                        off.name(),
                        off.items().stream().filter(known::contains).toList()))
                .toList();
    }

    /** Another job's strip-down in the ids of this one, by the words under which things came off. */
    private static List<String> seen(Job job, Job other) {
        Map<String, String> ids = new LinkedHashMap<>();
        off(job).forEach(off -> ids.put(off.name(), off.id()));
        return off(other).stream()
                .map(off -> ids.getOrDefault(off.name(), ""))
                .filter(id -> !id.isEmpty())
                .toList();
    }

    private static String answers(Context ctx) {
        String given = ctx.queryParam("a");
        return given == null ? "" : given.replaceAll("[^yn]", "");
    }

    private void learn(Context ctx) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            String answers = answers(ctx);
            Learning learning = learnt(desk, bench, answers);
            Map<String, Object> more = new LinkedHashMap<>();
            more.put("learning", learning);
            more.put("question", learning.next().orElse(null));
            more.put("answers", answers);
            door.show(ctx, "learn", door.page(ctx, "From the strip-down", "strip", bench), more);
        });
    }

    private void steps(Context ctx) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Learning learning = learnt(desk, bench, answers(ctx));
            String station = bench.unit().type().stations().keySet().iterator().next();
            List<RemovedParts> laid = StepText.grouped(learning, off -> shaft(bench, off));
            ctx.contentType("text/plain; charset=utf-8");
            ctx.result("steps:\n" + StepText.yaml(learning, laid, "S", station));
        });
    }

    /** The shaft on which the first of the items sits, so that those of one shaft are written one after another. */
    private static String shaft(JobOnBench bench, RemovedParts off) {
        return off.items().isEmpty()
                ? ""
                : bench.unit().item(off.items().get(0)).shaft();
    }
}
