package shimwright.bench.web.guard;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Refusal;

/** What is said where the web server itself finds a fault, before or behind the pages: a sentence, and no trace. */
final class Errors extends ErrorHandler {

    @Override
    protected void generateResponse(
            Request request,
            Response response,
            int status,
            @Nullable String message,
            @Nullable Throwable cause,
            Callback callback) {
        boolean memory = Memory.ranOut(cause);
        RefusalAnswers.write(
                response,
                callback,
                RequestHead.of(request).byProgram(),
                memory ? Memory.STATUS : status,
                List.of(memory ? Memory.TOO_LITTLE : refusal(status)));
    }

    @Override
    public boolean errorPageForMethod(String method) {
        return true;
    }

    @Override
    @SuppressWarnings(
            "removal") // what the server calls for a request that it cannot parse; nothing takes its place yet
    public ByteBuffer badMessageError(int status, @Nullable String reason, HttpFields.Mutable fields) {
        RefusalAnswers.headers(fields);
        fields.put(HttpHeader.CONTENT_TYPE, RefusalAnswers.type(false));
        return ByteBuffer.wrap(
                RefusalAnswers.body(false, List.of(refusal(status))).getBytes(StandardCharsets.UTF_8));
    }

    private static Refusal refusal(int status) {
        return switch (status) {
            case 404 -> Refusal.at("address", "there is nothing here", "Go back to the shop");
            case 408 -> Refusal.at("request", "it did not arrive in time", "Send it again");
            case 413 -> Refusal.at("body", "what was sent is too large", "Send less at a time");
            case 414, 431 ->
                Refusal.at(
                        "request",
                        "its address and headers are larger than " + RequestLimits.HEADERS / 1024 + " kB",
                        "Send less; if it stays so, let the browser forget the cookies of this address");
            default ->
                status < 500
                        ? Refusal.at("request", "it cannot be read", "Go back to the shop and try again")
                        : Refusal.at(
                                "program",
                                "it has a fault here; nothing that was kept is lost",
                                "Go back, and tell who looks after it");
        };
    }
}
