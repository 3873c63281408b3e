package shimwright.trial;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shimwright.bench.Main;

/**
 * What a step that nobody planned costs: posted over HTTP to a job that was just opened, the page it leads to read, in milliseconds of a core of
 * everything in the process but the thread that makes plans better and the compilers. In turns a step is done out of order and
 * undone again. Argument: how often.
 */
public final class SurpriseCost {
    private static final String JOB = "/job/job-v-0999";
    /** Times that warm up and are not told. */
    private static final int FIRST = 40;

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private SurpriseCost() {}

    /** Runs it. */
    public static void main(String[] args) throws IOException, InterruptedException {
        PrintStream out = System.out;
        String shop = demo();
        post(shop + intake(shop), "entry=surprise&number=V-0999&owner=a&said=b&variant=A&because=c");
        out.println("from " + shop + ", " + ahead(shop) + " steps ahead");
        List<Double> posts = new ArrayList<>();
        List<Double> pages = new ArrayList<>();
        int times = Integer.parseInt(args[0]);
        for (int k = 0; k < FIRST + times; k++) {
            String act = k % 2 == 0 ? "/jumped" : "/undo";
            Map<Long, Long> before = spent();
            String to = post(shop + JOB + act, "entry=surprise-" + k + "&step=Q01&reason=" + word("it lay there"));
            Map<Long, Long> between = spent();
            get(shop + to);
            Map<Long, Long> after = spent();
            if (k >= FIRST) {
                posts.add(ms(before, between));
                pages.add(ms(between, after));
            }
            settled(shop);
        }
        out.printf(Locale.ROOT, "post: %s%npage: %s%n", figures(posts), figures(pages));
        System.exit(0);
    }

    private static String demo() throws IOException {
        Path folder = Files.createTempDirectory("surprise");
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream out = System.out;
        System.setOut(new PrintStream(said, true, StandardCharsets.UTF_8));
        Main.main(new String[] {"demo", "--data", folder.resolve("demo").toString(), "--port", "0", "--no-browser"});
        System.setOut(out);
        Matcher url = Pattern.compile("http://\\S+:\\d+").matcher(said.toString(StandardCharsets.UTF_8));
        if (!url.find()) {
            throw new IOException("the demo did not start: " + said.toString(StandardCharsets.UTF_8));
        }
        return url.group();
    }

    private static int ahead(String shop) throws IOException, InterruptedException {
        String page = get(shop + JOB + "/plan");
        Matcher done = Pattern.compile("(\\d+) of (\\d+) steps done").matcher(page);
        return done.find() ? Integer.parseInt(done.group(2)) - Integer.parseInt(done.group(1)) : -1;
    }

    /** Waits until no better plan is looked for. */
    private static void settled(String shop) throws IOException, InterruptedException {
        while (get(shop + JOB + "/plan").contains("data-again")) {
            LockSupport.parkNanos(1_000_000);
        }
    }

    private static String word(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static String post(String url, String form) throws IOException, InterruptedException {
        HttpResponse<String> answer = CLIENT.send(
                HttpRequest.newBuilder(URI.create(url))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString(form))
                        .build(),
                BodyHandlers.ofString());
        return answer.headers()
                .firstValue("Location")
                .orElseThrow(() -> new IOException("refused with " + answer.statusCode() + ": " + answer.body()));
    }

    /** Where the first unit type on the shelf is taken in. */
    private static String intake(String shop) throws IOException, InterruptedException {
        Matcher first = Pattern.compile("href=\"(/new/[^\"]+)\"").matcher(get(shop + "/new"));
        if (!first.find()) {
            throw new IOException("no unit type is on the shelf");
        }
        return first.group(1);
    }

    private static String get(String url) throws IOException, InterruptedException {
        return CLIENT.send(HttpRequest.newBuilder(URI.create(url)).build(), BodyHandlers.ofString())
                .body();
    }

    /** Nanoseconds by thread. */
    private static Map<Long, Long> spent() {
        Map<Long, Long> spent = new HashMap<>();
        for (long id : THREADS.getAllThreadIds()) {
            var info = THREADS.getThreadInfo(id);
            if (info != null && !info.getThreadName().equals("makes plans better")) {
                spent.put(id, Math.max(0, THREADS.getThreadCpuTime(id)));
            }
        }
        return spent;
    }

    private static double ms(Map<Long, Long> before, Map<Long, Long> after) {
        long sum = 0;
        for (Map.Entry<Long, Long> one : after.entrySet()) {
            sum += Math.max(0, one.getValue() - Objects.requireNonNullElse(before.get(one.getKey()), 0L));
        }
        return sum / 1e6;
    }

    private static String figures(List<Double> times) {
        List<Double> sorted = times.stream().sorted().toList();
        return String.format(
                Locale.ROOT,
                "%.1f ms in the middle, %.1f at 99 %%, %.1f at most, of %d",
                sorted.get(sorted.size() / 2),
                sorted.get((int) (sorted.size() * 0.99)),
                sorted.get(sorted.size() - 1),
                sorted.size());
    }
}
