package shimwright.bench.web.sheet;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.sheet.PartLookup;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Page;

/** Which standard part it is, by what is stamped on it or by what a caliper reads. The address holds what was asked. */
public final class PartPages {
    private final Door door;

    public PartPages(Door door) {
        this.door = door;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get("/parts", this::parts);
    }

    private void parts(Context ctx) {
        PartLookup asked = PartLookup.of(typed(ctx, "stamp"), typed(ctx, "sizes"), door.system(ctx));
        Page page = door.page(ctx, "Standard parts", "", null, List.of(), Map.of());
        door.show(ctx, "parts", page, Map.of("asked", asked));
    }

    private static String typed(Context ctx, String name) {
        return Optional.ofNullable(ctx.queryParam(name)).orElse("").strip();
    }
}
