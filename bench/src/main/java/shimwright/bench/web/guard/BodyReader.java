package shimwright.bench.web.guard;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.io.content.ByteBufferContentSource;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.NanoTime;
import org.eclipse.jetty.util.thread.Scheduler;
import org.jspecify.annotations.Nullable;
import shimwright.bench.web.pair.Asker;
import shimwright.mechanics.outcome.Refusal;

/**
 * Takes a body in whole before a page is asked, without a thread waiting for it and without a file: a body that stalls
 * holds up nobody, one that is too large or unreadable is answered with a sentence, and a program that is killed leaves
 * nothing behind.
 */
final class BodyReader extends Handler.Wrapper {
    private static final int FIRST = 1024;
    private static final long LOOK_MS = 2_000;

    private final AtomicLong underWay = new AtomicLong();

    BodyReader(@Nullable Handler next) {
        super(next);
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        boolean chunked = request.getHeaders().contains(HttpHeader.TRANSFER_ENCODING);
        if (request.getLength() <= 0 && !chunked) {
            return super.handle(request, response, callback);
        }
        new Transfer(request, response, callback).begin();
        return true;
    }

    /** What a request may bring, by its kind. */
    private static long limit(Request request) {
        Asker asker = Asker.of(request);
        if (asker == null) {
            return RequestLimits.STRANGER;
        }
        String type = request.getHeaders().get(HttpHeader.CONTENT_TYPE);
        String media = type == null ? "" : type.toLowerCase(Locale.ROOT);
        if (media.startsWith("multipart/form-data") || media.startsWith("application/zip")) {
            return RequestLimits.UPLOAD;
        }
        return media.startsWith("application/x-www-form-urlencoded") ? RequestLimits.FORM : RequestLimits.API;
    }

    private static String size(long bytes) {
        return bytes < 1024 * 1024 ? bytes / 1024 + " kB" : bytes / (1024 * 1024) + " MB";
    }

    /** One body on its way. Only one thread at a time runs {@link #take}; the clock may end it from another. */
    private final class Transfer {
        private final Request request;
        private final Response response;
        private final Callback callback;
        private final boolean json;
        private final long limit;
        private final long begun = NanoTime.now();
        private final AtomicBoolean ended = new AtomicBoolean();
        private final AtomicLong seen = new AtomicLong();
        private final AtomicLong counted = new AtomicLong();
        private volatile Scheduler.@Nullable Task clock;
        private @Nullable ByteArrayOutputStream body = new ByteArrayOutputStream(FIRST);
        private @Nullable Refusal tooMuch;

        Transfer(Request request, Response response, Callback callback) {
            this.request = request;
            this.response = response;
            this.callback = callback;
            this.json = RequestHead.of(request).byProgram();
            this.limit = limit(request);
        }

        void begin() {
            if (request.getLength() > limit) {
                over(limit);
                if (request.getLength() > RequestLimits.DRAINED) {
                    end(413);
                    return;
                }
            }
            look();
            take();
        }

        private void look() {
            clock = request.getComponents().getScheduler().schedule(this::tooSlow, LOOK_MS, TimeUnit.MILLISECONDS);
        }

        private void tooSlow() {
            long seconds = TimeUnit.NANOSECONDS.toSeconds(NanoTime.since(begun));
            long counts = seconds - RequestLimits.GRACE.toSeconds();
            if (ended.get()) {
                return;
            }
            if (counts > 0 && seen.get() < counts * RequestLimits.SPEED) {
                tooMuch = Refusal.at("body", "it did not arrive", "Send it again");
                end(408);
            } else {
                look();
            }
        }

        private void take() {
            while (!ended.get()) {
                Content.Chunk chunk = request.read();
                if (chunk == null) {
                    request.demand(this::take);
                    return;
                }
                if (Content.Chunk.isFailure(chunk)) {
                    tooMuch = Refusal.at("body", "it cannot be read or broke off", "Send it again");
                    end(400);
                    return;
                }
                boolean last = chunk.isLast();
                keep(chunk.getByteBuffer());
                chunk.release();
                if (last || seen.get() > RequestLimits.DRAINED) {
                    if (tooMuch != null) {
                        end(413);
                    } else {
                        handOn();
                    }
                    return;
                }
            }
        }

        private void keep(ByteBuffer part) {
            long now = seen.addAndGet(part.remaining());
            ByteArrayOutputStream into = body;
            if (now > limit) {
                over(limit);
            } else if (into != null) {
                if (now > RequestLimits.SMALL && !counts(part.remaining())) {
                    over(RequestLimits.underWay());
                    return;
                }
                byte[] bytes = new byte[part.remaining()];
                part.get(bytes);
                into.write(bytes, 0, bytes.length);
            }
        }

        private boolean counts(int more) {
            if (underWay.addAndGet(more) > RequestLimits.underWay()) {
                underWay.addAndGet(-more);
                return false;
            }
            counted.addAndGet(more);
            return true;
        }

        private void over(long most) {
            body = null;
            underWay.addAndGet(-counted.getAndSet(0));
            if (tooMuch == null) {
                tooMuch = Refusal.at(
                        "body",
                        "what was sent is larger than " + size(most) + ", the most there is room for here",
                        "Send less at a time");
            }
        }

        private void handOn() {
            byte[] whole = body == null ? new byte[0] : body.toByteArray();
            body = null;
            if (!finish()) {
                return;
            }
            Callback after = Callback.from(callback, () -> underWay.addAndGet(-counted.getAndSet(0)));
            try {
                if (!BodyReader.super.handle(new Whole(request, whole), response, after)) {
                    Response.writeError(request, response, after, 404);
                }
            } catch (Exception | StackOverflowError | OutOfMemoryError broken) {
                Response.writeError(request, response, after, broken);
            }
        }

        private boolean finish() {
            Scheduler.Task task = clock;
            if (task != null) {
                task.cancel();
            }
            return ended.compareAndSet(false, true);
        }

        private void end(int status) {
            body = null;
            Refusal why = tooMuch;
            if (finish() && why != null) {
                underWay.addAndGet(-counted.getAndSet(0));
                response.getHeaders().put(HttpHeader.CONNECTION, "close");
                RefusalAnswers.write(response, callback, json, status, List.of(why));
            }
        }
    }

    /** A request whose body has come in. */
    private static final class Whole extends Request.Wrapper {
        private final ByteBufferContentSource content;
        private final long length;

        Whole(Request request, byte[] body) {
            super(request);
            content = new ByteBufferContentSource(ByteBuffer.wrap(body));
            length = body.length;
        }

        @Override
        public long getLength() {
            return length;
        }

        @Override
        public Content.Chunk read() {
            return content.read();
        }

        @Override
        public void demand(Runnable ready) {
            content.demand(ready);
        }

        @Override
        public void fail(Throwable failure) {
            content.fail(failure);
        }

        @Override
        public boolean consumeAvailable() {
            for (Content.Chunk chunk = content.read(); chunk != null; chunk = content.read()) {
                chunk.release();
                if (chunk.isLast()) {
                    return true;
                }
            }
            return true;
        }
    }
}
