package shimwright.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.HttpURLConnection;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * What a person keeps first in an evening, done once in the demo shop when the program is built: the classes that a first Done needs are
 * learned by it.
 */
final class FirstEntries {
    private static final String JOB = "job/job-v-0093/";

    /** Each the address within the job, then names and values by turns. */
    private static final List<List<String>> ENTRIES = List.of(
            List.of("note", "text", "first", "step", "E02"),
            List.of("overrule", "step", "E02", "hold", "H30", "reason", "by hand"),
            List.of("done", "step", "E02"),
            List.of("undo", "step", "E02", "reason", "once more"),
            List.of("cannot", "step", "E02", "reason", "the stand is taken"),
            List.of("clearance/c/trial", "phase", "trial", "in-sI", "d52-10"),
            List.of("clearance/c/round", "phase", "trial", "v1", "0.24", "v2", "0.32"),
            List.of("inspect/pieces", "form", "read-C03", "limit", "C03", "values-ring_1", "0.95"),
            List.of(
                    "judge",
                    "form",
                    "judge-C03",
                    "limit",
                    "C03",
                    "what",
                    "ring",
                    "pieces",
                    "ring_1",
                    "decision",
                    "reuse",
                    "reason",
                    "as new"),
            List.of("orders", "what", "seal", "to", "shop", "due", "2030-01-01", "check", "size", "late", "0"),
            List.of("clock", "step", "E02", "clock", "oven", "minutes", "20"),
            List.of("complaint", "symptoms", "Y1", "answers-kind", "whine", "answers-gear", "one"),
            List.of("strip", "gone", "baffle", "inTheWay", "last"),
            List.of("leftout", "step", "X07", "reason", "as agreed"),
            List.of("takenup", "step", "X07", "reason", "after all"),
            List.of(
                    "sheet",
                    "about",
                    "joint head-cone",
                    "step",
                    "T01",
                    "sheet",
                    "interference",
                    "given-bore",
                    "49.95 mm",
                    "given-diameter",
                    "50.02 mm",
                    "given-hubOutside",
                    "58 mm",
                    "given-shaftBore",
                    "0 mm",
                    "given-length",
                    "40 mm",
                    "given-hub.material",
                    "steel",
                    "given-shaft.material",
                    "steel",
                    "given-hub.expansion",
                    "11.5 µm/(m·K)",
                    "given-shaft.expansion",
                    "11.5 µm/(m·K)"));

    private FirstEntries() {}

    /**
     * Sends them to a server of our own and reads the page that comes after each.
     *
     * @return what was refused; nothing in the demo as it is
     */
    static List<String> keep(String server) throws IOException {
        List<String> refused = new ArrayList<>();
        for (int at = 0; at < ENTRIES.size(); at++) {
            List<String> entry = ENTRIES.get(at);
            List<String> pairs = new ArrayList<>(List.of("entry=first-" + at));
            for (int field = 1; field < entry.size(); field += 2) {
                pairs.add(entry.get(field) + "=" + URLEncoder.encode(entry.get(field + 1), StandardCharsets.UTF_8));
            }
            if (!post(URI.create(server + JOB + entry.get(0)), String.join("&", pairs))) {
                refused.add(entry.get(0));
            }
        }
        return List.copyOf(refused);
    }

    private static boolean post(URI to, String form) throws IOException {
        if (!(to.toURL().openConnection() instanceof HttpURLConnection sending)) {
            throw new IllegalStateException(to + " is no page");
        }
        sending.setDoOutput(true);
        try (OutputStream body = sending.getOutputStream()) {
            body.write(form.getBytes(StandardCharsets.UTF_8));
        }
        boolean kept = sending.getResponseCode() < HttpURLConnection.HTTP_BAD_REQUEST;
        try (InputStream page = kept ? sending.getInputStream() : sending.getErrorStream()) {
            page.transferTo(OutputStream.nullOutputStream());
        }
        return kept;
    }
}
