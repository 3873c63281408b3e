package shimwright.bench.web.sheet;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import shimwright.bench.sheet.DrawOptions;
import shimwright.bench.sheet.SheetSearch;
import shimwright.bench.sheet.UnitWords;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.bench.web.kit.Paper;
import shimwright.bench.web.kit.SheetWork;
import shimwright.bench.web.kit.Show;
import shimwright.mechanics.measure.Sampling;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.registry.Topics;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Shape;
import shimwright.mechanics.worksheet.SheetField;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheets: a list to search, and a form, an answer and a paper for each. The address holds the whole case. */
public final class SheetPages {
    private static final String UNITS = "units";
    private static final int LONGEST = 20_000;

    private final Door door;
    private final Paper paper;
    private final SheetWork work;

    public SheetPages(Door door, Paper paper, SheetWork work) {
        this.door = door;
        this.paper = paper;
        this.work = work;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get("/sheets", this::list);
        routes.get("/sheets/{name}.pdf", this::pdf);
        routes.get("/sheets/{name}", this::sheet);
    }

    /** Where answers come from; empty while one is still worked out. */
    interface Answers {
        Optional<Outcome<Answer>> of(
                Worksheet<?, ?> sheet, Map<String, ?> given, UnitSystem system, Optional<Sampling> draws);
    }

    private void list(Context ctx) {
        String asked = Optional.ofNullable(ctx.queryParam("q")).orElse("").strip();
        List<Worksheet<?, ?>> found = SheetSearch.find(asked);
        List<Topics.Topic> topics = new ArrayList<>();
        if (asked.isEmpty()) {
            topics.addAll(Topics.all());
        } else if (!found.isEmpty()) {
            topics.add(new Topics.Topic("found", found.size() == 1 ? "Found" : "Found, the nearest first", found));
        }
        Page page = door.page(ctx, "Worksheets", "", null);
        door.show(ctx, "sheets", page, Map.of("topics", topics, "asked", asked));
    }

    private void sheet(Context ctx) {
        read(ctx, work::answer).ifPresent(view -> {
            Page page = door.page(ctx, view.sheet().title(), "", null);
            door.show(ctx, "sheet", page, Map.of("view", view));
            ctx.status(view.faults() > 0 ? 422 : 200);
        });
    }

    private void pdf(Context ctx) {
        Optional<SheetView> view =
                read(ctx, (sheet, given, system, draws) -> Optional.of(work.waited(sheet, given, system, draws)));
        if (view.isEmpty()) {
            return;
        }
        if (view.get().answer() == null) {
            door.on(
                    ctx,
                    "/sheets/" + view.get().sheet().name() + "?" + view.get().query(),
                    "");
            return;
        }
        Page page = door.page(ctx, view.get().sheet().title(), "", null);
        byte[] pdf = paper.pdf(door.render(
                "sheetpaper", Map.of("page", page, "view", view.get().onPaper())));
        ctx.contentType("application/pdf");
        ctx.header(
                "Content-Disposition",
                "inline; filename=\"" + view.get().sheet().name() + ".pdf\"");
        ctx.result(pdf);
    }

    /** The sheet of the address with what was typed; empty, and a page that says so, where there is none. */
    private Optional<SheetView> read(Context ctx, Answers answers) {
        Worksheet<?, ?> sheet = Registry.find(ctx.pathParam("name")).orElse(null);
        if (sheet == null) {
            Pages.lost(ctx, door, "There is no such worksheet here.");
            return Optional.empty();
        }
        return Optional.of(read(
                answers, sheet, ctx.queryParamMap(), Door.draws(ctx), new Show(door.system(ctx), door.zone()), null));
    }

    /**
     * A sheet with what an address says.
     *
     * @param answers where its answer comes from
     * @param asked inputs by key, the units they were typed under, and how it is to be drawn
     * @param job what of a job it is worked out for; null for none
     */
    static SheetView read(
            Answers answers,
            Worksheet<?, ?> sheet,
            Map<String, List<String>> asked,
            DrawOptions.Typed draws,
            Show show,
            @Nullable SheetInJob job) {
        UnitSystem system = show.system();
        Map<String, String> typed = new LinkedHashMap<>();
        List<Refusal> faults = new ArrayList<>();
        asked.forEach((key, values) -> take(key, values, typed, faults));
        spread(sheet, typed);
        String units = typed.remove(UNITS);
        DrawOptions.ADDRESS.names().forEach(typed::remove);
        UnitSystem meant =
                units == null || units.isBlank() ? system : units.equals("inch") ? UnitSystem.INCH : UnitSystem.METRIC;
        boolean any = !typed.isEmpty();
        Map<String, String> here = meant == system ? typed : UnitWords.carried(sheet, typed, meant);
        Optional<Outcome<Answer>> outcome = Optional.empty();
        boolean waiting = false;
        if (any && faults.isEmpty()) {
            Optional<Sampling> sampling = DrawOptions.ADDRESS.waited(sheet, draws, faults);
            outcome = answers.of(sheet, here, system, sampling);
            outcome.ifPresent(found -> faults.addAll(found.refusals()));
            waiting = outcome.isEmpty() && faults.isEmpty();
        }
        Answer answer = faults.isEmpty() ? outcome.map(Outcome::orElseThrow).orElse(null) : null;
        return view(sheet, here, draws, faults, answer, waiting, show, job);
    }

    private static void take(String key, List<String> values, Map<String, String> typed, List<Refusal> faults) {
        String text = String.join("\n", values).replace("\r", "");
        if (text.length() > LONGEST) {
            faults.add(Refusal.of(key, "the text has " + text.length() + " characters", "Keep it under " + LONGEST));
        } else if (!text.isBlank()) {
            typed.put(key, text);
        }
    }

    /** A record typed in one line goes into its own fields. */
    private static void spread(Worksheet<?, ?> sheet, Map<String, String> typed) {
        for (SheetField field : sheet.inputs()) {
            if (field.shape() == Shape.RECORD && typed.containsKey(field.name())) {
                field.parts(typed.get(field.name()))
                        .forEach((part, text) -> typed.putIfAbsent(field.name() + "." + part, text));
                typed.remove(field.name());
            }
        }
    }

    private static SheetView view(
            Worksheet<?, ?> sheet,
            Map<String, String> typed,
            DrawOptions.Typed draws,
            List<Refusal> faults,
            @Nullable Answer answer,
            boolean waiting,
            Show show,
            @Nullable SheetInJob job) {
        List<FormField> slots = FormField.of(sheet, typed, faults, show.system());
        return new SheetView(
                sheet,
                Topics.title(sheet),
                slots,
                draws,
                !typed.isEmpty(),
                answer,
                waiting,
                FormField.elsewhere(slots, faults),
                faults.size(),
                answer == null ? List.of() : SheetPictures.of(answer, SheetPictures.SCREEN),
                query(drawn(typed, draws), show.system()),
                query(sheet.example(), UnitSystem.METRIC),
                job == null ? null : job.carrying(UnitWords.carried(sheet, typed, show.system())));
    }

    private static Map<String, String> drawn(Map<String, String> typed, DrawOptions.Typed draws) {
        Map<String, String> all = new LinkedHashMap<>(typed);
        all.put(DrawOptions.ADDRESS.count(), draws.count());
        all.put(DrawOptions.ADDRESS.seed(), draws.seed());
        all.put(DrawOptions.ADDRESS.coverage(), draws.coverage());
        all.values().removeIf(String::isBlank);
        return all;
    }

    private static String query(Map<String, String> typed, UnitSystem system) {
        Map<String, String> all = new LinkedHashMap<>(typed);
        all.put(UNITS, system == UnitSystem.INCH ? "inch" : "metric");
        return all.entrySet().stream()
                .map(entry -> coded(entry.getKey()) + "=" + coded(entry.getValue()))
                .collect(Collectors.joining("&"));
    }

    private static String coded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
