package shimwright.bench.web.api;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shimwright.bench.sheet.Cases;
import shimwright.bench.sheet.SheetJson;
import shimwright.bench.web.kit.SheetWork;
import shimwright.mechanics.measure.Sampling;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Worksheet;

/** One request to a worksheet, with one case or many: answers go out as they come. */
final class CaseRequest {
    private static final int DRAINED = 64 * 1024 * 1024;
    private static final String BODY = "body";
    private static final String LINES = "application/x-ndjson";

    private final Context ctx;
    private final Worksheet<?, ?> sheet;
    private final UnitSystem system;
    private final Optional<Sampling> draws;
    private final SheetWork work;
    private final Lines out;

    CaseRequest(Context ctx, Worksheet<?, ?> sheet, UnitSystem system, Optional<Sampling> draws, SheetWork work) {
        this.ctx = ctx;
        this.sheet = sheet;
        this.system = system;
        this.draws = draws;
        this.work = work;
        this.out = new Lines(ctx);
    }

    /** Answers every case, or says why the body cannot be read: 400, too large 413, of another type 415. */
    void answer() throws IOException {
        String type = ctx.contentType() == null ? "application/json" : ctx.contentType();
        String media = type.split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
        try {
            switch (media) {
                case "application/json" -> json();
                case "text/csv" -> csv();
                default ->
                    ApiRoutes.refuse(
                            ctx,
                            415,
                            BODY,
                            "\"" + media + "\" is not understood here",
                            "Send application/json or text/csv");
            }
        } catch (CharacterCodingException wrong) {
            stopped(400, List.of(Refusal.at(BODY, "is not text in UTF-8", "Save it as UTF-8")));
        } catch (BoundedBody.TooLarge large) {
            drain();
            stopped(413, List.of(Refusal.at(BODY, large.words(), "Send fewer cases at a time")));
        }
    }

    /** Takes what is still on the way, within reason, so that the sender gets to read the answer. */
    private void drain() throws IOException {
        InputStream rest = ctx.req().getInputStream();
        byte[] away = new byte[64 * 1024];
        int left = DRAINED;
        for (int got = rest.read(away); got >= 0 && left > 0; got = rest.read(away)) {
            left -= got;
        }
    }

    private Reader reader() throws IOException {
        if (ctx.contentLength() > BoundedBody.LARGEST) {
            throw new BoundedBody.TooLarge();
        }
        return new InputStreamReader(new BoundedBody(ctx.req().getInputStream()), StandardCharsets.UTF_8.newDecoder());
    }

    private void json() throws IOException {
        Outcome<Cases.Read> read = Cases.json(reader(), BODY);
        if (!(read instanceof Outcome.Ok<Cases.Read> ok)) {
            ApiRoutes.refuse(ctx, 400, sheet.name(), read.refusals());
            return;
        }
        if (ok.value().many()) {
            ok.value().cases().forEach(this::line);
            return;
        }
        Outcome<Answer> answer = work.waited(sheet, ok.value().cases().get(0).given(), system, draws);
        if (answer.isOk()) {
            ApiRoutes.json(ctx, 200, SheetJson.answer(answer.orElseThrow(), 0));
        } else {
            ApiRoutes.refuse(ctx, 422, sheet.name(), answer.refusals());
        }
    }

    private void csv() throws IOException {
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
        Outcome<Answer> answer = work.waited(sheet, one.given(), system, draws);
        out.write(
                answer.isOk()
                        ? SheetJson.answer(answer.orElseThrow(), one.number())
                        : SheetJson.refusals(
                                sheet.name(), SheetJson.placed(answer.refusals(), one.place()), one.number()));
    }

    /** As a status where nothing has gone out yet, else as the last line. */
    private void stopped(int status, List<Refusal> why) {
        if (out.begun()) {
            out.write(SheetJson.refusals(sheet.name(), why, 0));
        } else {
            ApiRoutes.refuse(ctx, status, sheet.name(), why);
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
}
