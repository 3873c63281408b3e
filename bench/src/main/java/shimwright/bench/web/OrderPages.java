package shimwright.bench.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.unit.model.Item;

/** What was ordered or sent out, what it holds up, and what was measured on it when it came. */
final class OrderPages {
    private final Desk desk;
    private final Door door;

    OrderPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    void routes(RoutesConfig routes) {
        routes.get("/job/{job}/orders", ctx -> orders(ctx, List.of(), Map.of()));
        routes.post("/job/{job}/orders", this::sent);
        routes.post("/job/{job}/orders/back", this::back);
    }

    private void orders(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Page page = door.page(ctx, "Orders", "orders", bench, faults, typed);
            Map<String, String> items = new TreeMap<>();
            bench.unit().type().items().forEach(item -> items.put(item.id(), item.name()));
            door.show(
                    ctx,
                    "orders",
                    page,
                    Map.of("items", items, "today", page.show().date(desk.now())));
        });
    }

    private void sent(Context ctx) {
        Pages.keep(
                ctx,
                desk,
                door,
                "Kept: the plan waits for it",
                (bench, form) -> new Entry.Sent(
                        form.needed("what", "what", "Say what was ordered or sent out"),
                        items(bench, form.raw("items")),
                        form.text("to", "to whom"),
                        due(form),
                        late(form),
                        form.text("note", "note")),
                this::orders,
                (entry, form) -> "/orders");
    }

    private void back(Context ctx) {
        Pages.keep(
                ctx,
                desk,
                door,
                "Kept",
                (bench, form) -> {
                    String good = form.raw("good");
                    if (!good.equals("yes") && !good.equals("no")) {
                        form.fault("verdict", "nothing chosen", "Say whether it may go in");
                    }
                    return new Entry.CameBack(
                            form.needed("sent", "order", "Load the page again"),
                            good.equals("yes"),
                            form.needed(
                                    "measured",
                                    "measured",
                                    "Say what you measured or looked at on it; what comes back is checked"));
                },
                this::orders,
                (entry, form) -> "/orders");
    }

    private static LocalDate due(Form form) {
        String hint = "Choose the day, or type it as 2026-12-24";
        String text = form.needed("due", "due", hint);
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException none) {
            if (!text.isEmpty()) {
                form.fault("due", "\"" + text + "\" is no day", hint);
            }
            return LocalDate.EPOCH;
        }
    }

    private static int late(Form form) {
        String text = form.raw("late");
        try {
            return text.isEmpty() ? 0 : Integer.parseInt(text);
        } catch (NumberFormatException letters) {
            form.fault(
                    "days late", "\"" + text + "\" is not a whole number", "Give the days it may well be late, or 0");
            return 0;
        }
    }

    /** Items by id or name; what the unit does not have stays as typed and is refused by name. */
    private static List<String> items(Desk.OnBench bench, String text) {
        return Arrays.stream(text.split("[,;\\n]+"))
                .map(String::strip)
                .filter(typed -> !typed.isEmpty())
                .map(typed -> bench.unit().type().items().stream()
                        .filter(item -> typed.equalsIgnoreCase(item.id()) || typed.equalsIgnoreCase(item.name()))
                        .map(Item::id)
                        .findFirst()
                        .orElse(typed))
                .distinct()
                .toList();
    }
}
