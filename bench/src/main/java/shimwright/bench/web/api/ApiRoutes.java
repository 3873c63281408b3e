package shimwright.bench.web.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.bench.sheet.Cases;
import shimwright.bench.sheet.DrawOptions;
import shimwright.bench.sheet.OpenApi;
import shimwright.bench.sheet.PartLookup;
import shimwright.bench.sheet.SheetJson;
import shimwright.bench.web.kit.Door;
import shimwright.mechanics.measure.Sampling;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Worksheet;

/**
 * The door for programs: every worksheet as JSON, one case or many. Refused inputs are 422, what cannot be read is 400;
 * each time with the sentences a person would get.
 */
public final class ApiRoutes {
    public static final String ROOT = "/api";

    private static final int LARGEST = 4 * 1024 * 1024;
    private static final int DRAINED = 64 * 1024 * 1024;
    private static final String BODY = "body";
    private static final String LINES = "application/x-ndjson";

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get(ROOT + "/worksheets", ctx -> json(ctx, 200, SheetJson.list()));
        routes.get(ROOT + "/openapi.json", ctx -> json(ctx, 200, OpenApi.description()));
        routes.get(ROOT + "/worksheets/{name}", this::describe);
        routes.post(ROOT + "/worksheets/{name}", this::work);
        routes.get(ROOT + "/parts", ApiRoutes::parts);
    }

    private static void json(Context ctx, int status, Object value) {
        ctx.status(status);
        ctx.contentType("application/json; charset=utf-8");
        ctx.result(SheetJson.line(value));
    }

    /** Says in a sentence what is wrong, in the shape of a refusal. */
    public static void refuse(Context ctx, int status, String sheet, List<Refusal> refusals) {
        json(ctx, status, SheetJson.refusals(sheet, refusals, 0));
    }

    /** Answers with a refusal that has one fault. */
    public static void refuse(Context ctx, int status, String place, String fact, String hint) {
        refuse(ctx, status, "", List.of(Refusal.at(place, fact, hint)));
    }

    private static Optional<Worksheet<?, ?>> sheet(Context ctx) {
        String name = ctx.pathParam("name");
        Optional<Worksheet<?, ?>> found = Registry.find(name);
        if (found.isEmpty()) {
            refuse(ctx, 404, "", "there is no worksheet \"" + name + "\"", "GET " + ROOT + "/worksheets lists them");
        }
        return found;
    }

    private static @Nullable UnitSystem system(Context ctx) {
        String units = ctx.queryParam("units");
        if (units == null || units.equals("metric")) {
            return UnitSystem.METRIC;
        }
        if (units.equals("inch")) {
            return UnitSystem.INCH;
        }
        refuse(ctx, 400, "units", "\"" + units + "\" is not known", "Ask for units=inch or units=metric");
        return null;
    }

    private static void parts(Context ctx) {
        UnitSystem system = system(ctx);
        if (system == null) {
            return;
        }
        PartLookup asked = PartLookup.of(
                Optional.ofNullable(ctx.queryParam("stamp")).orElse(""),
                Optional.ofNullable(ctx.queryParam("sizes")).orElse(""),
                system);
        if (!asked.asked()) {
            refuse(ctx, 400, "stamp", "nothing asked", "Ask for stamp=6206 or sizes=25x52x15");
        } else if (asked.faults().isEmpty()) {
            json(ctx, 200, asked.json());
        } else {
            refuse(ctx, 422, "parts", asked.faults());
        }
    }

    private void describe(Context ctx) {
        UnitSystem system = system(ctx);
        if (system != null) {
            sheet(ctx).ifPresent(sheet -> json(ctx, 200, SheetJson.describe(sheet, system)));
        }
    }

    private void work(Context ctx) throws IOException {
        UnitSystem system = system(ctx);
        Optional<Worksheet<?, ?>> sheet = system == null ? Optional.empty() : sheet(ctx);
        if (system == null || sheet.isEmpty()) {
            return;
        }
        List<Refusal> undrawn = new ArrayList<>();
        Optional<Sampling> draws = DrawOptions.ADDRESS.waited(sheet.get(), Door.draws(ctx), undrawn);
        if (!undrawn.isEmpty()) {
            refuse(ctx, 422, sheet.get().name(), undrawn);
            return;
        }
        Work work = new Work(ctx, sheet.get(), system, draws);
        String type = ctx.contentType() == null ? "application/json" : ctx.contentType();
        String media = type.split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
        try {
            switch (media) {
                case "application/json" -> work.json();
                case "text/csv" -> work.csv();
                default ->
                    refuse(
                            ctx,
                            415,
                            BODY,
                            "\"" + media + "\" is not understood here",
                            "Send application/json or text/csv");
            }
        } catch (CharacterCodingException wrong) {
            work.stopped(400, List.of(Refusal.at(BODY, "is not text in UTF-8", "Save it as UTF-8")));
        } catch (TooLarge large) {
            drain(ctx);
            work.stopped(413, List.of(Refusal.at(BODY, large.words(), "Send fewer cases at a time")));
        }
    }

    /** Takes what is still on the way, within reason, so that the sender gets to read the answer. */
    private static void drain(Context ctx) throws IOException {
        InputStream rest = ctx.req().getInputStream();
        byte[] away = new byte[64 * 1024];
        int left = DRAINED;
        for (int got = rest.read(away); got >= 0 && left > 0; got = rest.read(away)) {
            left -= got;
        }
    }

    /** One request: answers go out as they come. */
    private record Work(Context ctx, Worksheet<?, ?> sheet, UnitSystem system, Optional<Sampling> draws, Lines out) {
        Work(Context ctx, Worksheet<?, ?> sheet, UnitSystem system, Optional<Sampling> draws) {
            this(ctx, sheet, system, draws, new Lines(ctx));
        }

        private Reader reader() throws IOException {
            if (ctx.contentLength() > LARGEST) {
                throw new TooLarge();
            }
            return new InputStreamReader(new Bounded(ctx.req().getInputStream()), StandardCharsets.UTF_8.newDecoder());
        }

        void json() throws IOException {
            Outcome<Cases.Read> read = Cases.json(reader(), BODY);
            if (!(read instanceof Outcome.Ok<Cases.Read> ok)) {
                refuse(ctx, 400, sheet.name(), read.refusals());
                return;
            }
            if (ok.value().many()) {
                ok.value().cases().forEach(this::line);
                return;
            }
            Outcome<Answer> answer = sheet.answer(ok.value().cases().get(0).given(), system, draws);
            if (answer.isOk()) {
                ApiRoutes.json(ctx, 200, SheetJson.answer(answer.orElseThrow(), 0));
            } else {
                refuse(ctx, 422, sheet.name(), answer.refusals());
            }
        }

        void csv() throws IOException {
            try {
                List<Refusal> unread = Cases.csv(reader(), BODY, this::line);
                if (!unread.isEmpty()) {
                    stopped(400, unread);
                }
            } catch (UncheckedIOException inside) {
                throw inside.getCause();
            }
        }

        private void line(Cases.Case one) {
            Outcome<Answer> answer = sheet.answer(one.given(), system, draws);
            out.write(
                    answer.isOk()
                            ? SheetJson.answer(answer.orElseThrow(), one.number())
                            : SheetJson.refusals(
                                    sheet.name(), SheetJson.placed(answer.refusals(), one.place()), one.number()));
        }

        /** As a status where nothing has gone out yet, else as the last line. */
        void stopped(int status, List<Refusal> why) {
            if (out.begun()) {
                out.write(SheetJson.refusals(sheet.name(), why, 0));
            } else {
                refuse(ctx, status, sheet.name(), why);
            }
        }
    }

    /** One JSON object a line, sent when it is ready. */
    private static final class Lines {
        private final Context ctx;
        private boolean begun;

        Lines(Context ctx) {
            this.ctx = ctx;
        }

        boolean begun() {
            return begun;
        }

        void write(Object value) {
            try {
                if (!begun) {
                    ctx.status(200);
                    ctx.contentType(LINES);
                    begun = true;
                }
                OutputStream out = ctx.outputStream();
                out.write((SheetJson.line(value) + "\n").getBytes(StandardCharsets.UTF_8));
            } catch (IOException gone) {
                throw new UncheckedIOException(gone);
            }
        }
    }

    private static final class TooLarge extends IOException {
        private static final long serialVersionUID = 1L;

        String words() {
            return "holds more than " + LARGEST / (1024 * 1024) + " MB";
        }
    }

    /** A stream that ends in a refusal after the largest body. */
    private static final class Bounded extends InputStream {
        private final InputStream from;
        private int left = LARGEST;

        Bounded(@Nullable InputStream from) {
            this.from = from == null ? new ByteArrayInputStream(new byte[0]) : from;
        }

        @Override
        public int read() throws IOException {
            int one = from.read();
            count(one < 0 ? 0 : 1);
            return one;
        }

        @Override
        public int read(byte[] into, int at, int most) throws IOException {
            int got = from.read(into, at, most);
            count(Math.max(0, got));
            return got;
        }

        private void count(int got) throws TooLarge {
            left -= got;
            if (left < 0) {
                throw new TooLarge();
            }
        }
    }
}
