package shimwright.bench.web.job;

import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.picture.photo.Thumbnail;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Pages;
import shimwright.rebuild.job.PictureStore;

/** Kept pictures made small for a page, one at a time, the last few remembered. */
final class SmallPictures {
    private static final int SIDE = 240;
    private static final int REMEMBERED = 200;

    private final PictureStore pictures;
    private final Door door;
    private final Map<String, byte[]> small = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, byte[]> eldest) {
            return size() > REMEMBERED;
        }
    };

    SmallPictures(PictureStore pictures, Door door) {
        this.pictures = pictures;
        this.door = door;
    }

    /** Answers with the small picture; with the picture itself where it cannot be made small. */
    void show(Context ctx) {
        String hash = ctx.pathParam("hash");
        Optional<byte[]> jpeg = hash.matches("[0-9a-f]{64}") ? of(hash) : Optional.empty();
        if (jpeg.isEmpty()) {
            door.on(ctx, "/picture/" + Pages.encoded(hash), "");
            return;
        }
        ctx.contentType("image/jpeg");
        ctx.header("Cache-Control", "private, max-age=31536000, immutable");
        ctx.result(jpeg.get());
    }

    /** Under one lock, so that many large pictures on a page are in memory one after the other. */
    private synchronized Optional<byte[]> of(String hash) {
        byte[] known = small.get(hash);
        if (known != null) {
            return Optional.of(known);
        }
        Optional<byte[]> made = pictures.find(hash).flatMap(content -> Thumbnail.of(content, SIDE));
        made.ifPresent(jpeg -> small.put(hash, jpeg));
        return made;
    }
}
