package shimwright.bench.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.guard.Entrance;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.bench.web.kit.Paper;
import shimwright.bench.web.pair.QrCode;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.WearLimit;

/** Labels for bags and trays, and the page that opens what was scanned. */
public final class TagPages {
    /** Labels of 70 by 37 mm on A4, three by eight; common practice, no source. */
    private static final int COLUMNS = 3;

    private static final int ROWS = 8;

    private final Desk desk;
    private final Door door;
    private final Paper paper;
    private final Entrance entrance;

    public TagPages(Desk desk, Door door, Paper paper, Entrance entrance) {
        this.desk = desk;
        this.door = door;
        this.paper = paper;
        this.entrance = entrance;
    }

    /**
     * What is known of what lies in a bag.
     *
     * @param off as it was taken off; empty for an item that was not
     * @param found what was seen or measured on it
     * @param judged what was decided
     * @param limits by which it is judged
     * @param steps that put it in
     * @param sent what was ordered or sent out of it
     */
    public record Scanned(
            TagLabel label,
            Optional<Entry.TakenOff> off,
            List<Job.Said<Entry.Found>> found,
            List<Job.Said<Entry.Judged>> judged,
            List<WearLimit> limits,
            List<Step> steps,
            List<Job.Said<Entry.Sent>> sent) {}

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get("/job/{job}/tags", ctx -> tags(ctx, List.of()));
        routes.get("/job/{job}/tags.pdf", this::pdf);
        routes.get("/tag", this::typed);
        routes.get("/tag/{job}/{key}", this::scanned);
    }

    private void tags(Context ctx, List<Refusal> faults) {
        Pages.bench(ctx, desk, door)
                .ifPresent(bench -> door.show(
                        ctx,
                        "tags",
                        door.page(ctx, "Labels", "strip", bench, faults, asked(ctx)),
                        Map.of(
                                "labels",
                                List.copyOf(TagLabel.all(bench).values()),
                                "anyOff",
                                TagLabel.all(bench).values().stream().anyMatch(TagLabel::cameOff),
                                "outside",
                                !entrance.address(ctx.port()).isEmpty())));
    }

    private Map<String, String> asked(Context ctx) {
        return new Form(ctx.queryParamMap(), door.system(ctx)).typed();
    }

    /** Where a code leads: to this shop as other devices find it, else as this one does. */
    private String shop(Context ctx) {
        String outside = entrance.address(ctx.port());
        return outside.isEmpty() ? ctx.scheme() + "://" + ctx.host() + "/" : outside;
    }

    private void pdf(Context ctx) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            List<TagLabel.Coded> labels = new ArrayList<>();
            Map<String, TagLabel> all = TagLabel.all(bench);
            ctx.queryParams("tag")
                    .forEach(key -> Optional.ofNullable(all.get(key))
                            .ifPresent(label -> labels.add(new TagLabel.Coded(
                                    label,
                                    new QrCode(
                                            label.address(shop(ctx), bench.job().id()))))));
            String used = Optional.ofNullable(ctx.queryParam("used")).orElse("").strip();
            List<Refusal> faults = new ArrayList<>();
            if (labels.isEmpty()) {
                faults.add(Refusal.of("tag", "nothing chosen", "Choose what gets a label"));
            }
            if (!used.matches("\\d{0,2}") || (!used.isEmpty() && Integer.parseInt(used) >= COLUMNS * ROWS)) {
                faults.add(Refusal.of(
                        "used", "\"" + used + "\" is no number of labels", "Type 0 to " + (COLUMNS * ROWS - 1)));
            }
            if (!faults.isEmpty()) {
                tags(ctx, faults);
                return;
            }
            boolean roll = "roll".equals(ctx.queryParam("paper"));
            int free = roll || used.isEmpty() ? 0 : Integer.parseInt(used);
            Page page = door.page(ctx, "Labels", "strip", bench);
            ctx.contentType("application/pdf");
            ctx.result(paper.pdf(door.render(
                    "tagpaper",
                    Map.of(
                            "page",
                            page,
                            "roll",
                            roll,
                            "sheets",
                            roll ? TagLabel.sheets(labels, 0, 1, 1) : TagLabel.sheets(labels, free, COLUMNS, ROWS)))));
        });
    }

    /** What a scanner that types like a keyboard wrote: the whole address, or its end. */
    private void typed(Context ctx) {
        String code = Optional.ofNullable(ctx.queryParam("code")).orElse("").strip();
        int at = code.lastIndexOf("tag/");
        String[] parts = (at < 0 ? code : code.substring(at + "tag/".length())).split("/", 2);
        if (parts.length == 2 && desk.bench(parts[0]).isPresent()) {
            door.on(ctx, "/tag/" + parts[0] + "/" + parts[1], "");
        } else {
            Pages.lost(ctx, door, "This is no label of this shop: " + (code.isEmpty() ? "nothing was scanned" : code));
        }
    }

    private void scanned(Context ctx) {
        Optional<JobOnBench> bench = Pages.bench(ctx, desk, door);
        if (bench.isEmpty()) {
            return;
        }
        Optional<TagLabel> label = TagLabel.of(bench.get(), ctx.pathParam("key"));
        if (label.isEmpty()) {
            Pages.lost(ctx, door, "This job has nothing under that label any more; it may have been struck.");
            return;
        }
        door.show(
                ctx,
                "tag",
                door.page(ctx, label.get().title(), "strip", bench.get()),
                Map.of("scanned", scanned(bench.get(), label.get())));
    }

    private static Scanned scanned(JobOnBench bench, TagLabel label) {
        Job job = bench.job();
        List<String> items = label.items();
        List<WearLimit> limits = bench.unit().type().wearLimits().stream()
                .filter(wear -> wear.items().stream().anyMatch(items::contains))
                .toList();
        List<String> ids = limits.stream().map(WearLimit::id).toList();
        return new Scanned(
                label,
                job.takenOff().stream()
                        .filter(off -> label.key().endsWith(off.id()))
                        .map(Job.Said::what)
                        .findFirst(),
                job.found().stream()
                        .filter(said -> ids.contains(said.what().limit()))
                        .toList(),
                job.judged().values().stream()
                        .filter(said -> ids.contains(said.what().limit()))
                        .toList(),
                limits,
                bench.order().steps().values().stream()
                        .filter(step -> step.installs().stream().anyMatch(items::contains)
                                || step.builds().stream().anyMatch(items::contains))
                        .toList(),
                job.sent().values().stream()
                        .filter(said -> said.what().items().stream().anyMatch(items::contains))
                        .toList());
    }
}
