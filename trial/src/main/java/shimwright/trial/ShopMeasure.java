package shimwright.trial;

import com.sun.net.httpserver.HttpServer;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a shop costs, of the program in a process of its own with the launcher's options: {@code start DATA…}, {@code post
 * DATA JOB}, {@code load DATA BENCHES A_SECOND SECONDS}. Processor time beside wall time, since others may use the machine. With {@code -Dshimwright.launcher=./shimwright} it is started as a
 * person starts it, with the archive of classes that the launcher made.
 */
public final class ShopMeasure {
    private static final Pattern AT = Pattern.compile("Shimwright is at (http://127\\.0\\.0\\.1:\\d+)/");
    private static final int POSTS = 100;
    private static final int PAGES_A_POST = 4;
    private static final int BARE_BYTES = 30_000;

    private final HttpClient client = HttpClient.newHttpClient();

    private ShopMeasure() {}

    /** The program that is measured. */
    private record Program(Process process, String url) implements AutoCloseable {
        Duration cpu() {
            return process.toHandle().info().totalCpuDuration().orElseThrow();
        }

        /** A line of the kernel's account of the process, MB. */
        long megabytes(String line) throws IOException {
            return Files.readAllLines(Path.of("/proc/" + process.pid() + "/status")).stream()
                            .filter(text -> text.startsWith(line + ":"))
                            .mapToLong(text -> Long.parseLong(text.replaceAll("\\D", "")))
                            .findFirst()
                            .orElse(0)
                    / 1024;
        }

        @Override
        public void close() {
            process.destroy();
            process.onExit().join();
        }
    }

    /** Runs a measurement. */
    public static void main(String[] args) throws IOException, InterruptedException {
        ShopMeasure measure = new ShopMeasure();
        switch (args[0]) {
            case "start" -> {
                for (String data : List.of(args).subList(1, args.length)) {
                    measure.start(Path.of(data));
                }
            }
            case "post" -> measure.post(Path.of(args[1]), args[2]);
            case "load" ->
                measure.load(
                        Path.of(args[1]),
                        Integer.parseInt(args[2]),
                        Double.parseDouble(args[3]),
                        Integer.parseInt(args[4]));
            case "bare" -> bare();
            default -> throw new IllegalArgumentException(args[0]);
        }
        System.exit(0);
    }

    private static List<String> java(String main) {
        List<String> command = new ArrayList<>();
        command.add(System.getProperty("java.home") + "/bin/java");
        command.addAll(List.of("-Xms24m", "-Xmx256m", "-XX:+UseSerialGC", "-XX:MinHeapFreeRatio=20"));
        command.addAll(
                List.of("-XX:MaxHeapFreeRatio=40", "-XX:MaxNewSize=12m", "-XX:TieredStopAtLevel=1", "-Xshare:auto"));
        command.add("-Dshimwright.build=" + ShopGrowth.BUILD);
        command.addAll(List.of("-cp", System.getProperty("java.class.path")));
        command.add(main);
        return command;
    }

    private static Program program(List<String> command) throws IOException {
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        BufferedReader said =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        for (String line = said.readLine(); line != null; line = said.readLine()) {
            Matcher at = AT.matcher(line);
            if (at.find()) {
                return new Program(process, at.group(1));
            }
        }
        throw new IOException("it did not start");
    }

    private static Program serving(Path data) throws IOException {
        List<String> serve = List.of(
                "serve",
                "--data",
                data.toString(),
                "--port",
                "0",
                "--no-browser",
                "--owner",
                ShopGrowth.owner(data).root().toString());
        String launcher = System.getProperty("shimwright.launcher", "");
        List<String> command = new ArrayList<>(launcher.isEmpty() ? java("shimwright.bench.Main") : List.of(launcher));
        command.addAll(serve);
        return program(command);
    }

    private int ask(String address, String body) throws IOException, InterruptedException {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create(address)).timeout(Duration.ofMinutes(2));
        if (!body.isEmpty()) {
            request.header("Content-Type", "application/x-www-form-urlencoded")
                    .POST(HttpRequest.BodyPublishers.ofString(body));
        }
        return client.send(request.build(), HttpResponse.BodyHandlers.ofByteArray())
                .statusCode();
    }

    /** From the start of the process to its first page, and what it holds in memory then and a little later. */
    private void start(Path data) throws IOException, InterruptedException {
        for (int run = 0; run < 3; run++) {
            long begun = System.nanoTime();
            try (Program program = serving(data)) {
                int status = ask(program.url() + "/", "");
                double wall = (System.nanoTime() - begun) / 1e9;
                Duration cpu = program.cpu();
                for (int i = 0; i < 20; i++) {
                    ask(program.url() + "/", "");
                }
                System.out.printf(
                        "%s: %d after %.2f s, %.2f s of a core; %d MB resident, %d at most%n",
                        data,
                        status,
                        wall,
                        cpu.toMillis() / 1e3,
                        program.megabytes("VmRSS"),
                        program.megabytes("VmHWM"));
            }
        }
    }

    /** What one note costs on a job, after as many to warm up. */
    private void post(Path data, String job) throws IOException, InterruptedException {
        try (Program program = serving(data)) {
            String run = "post-" + System.nanoTime() + "-";
            for (int round = 0; round < 3; round++) {
                Duration before = program.cpu();
                long begun = System.nanoTime();
                for (int i = 0; i < POSTS; i++) {
                    int status = ask(
                            program.url() + "/job/" + job + "/note",
                            "text=measured&step=&entry=" + run + round + "-" + i);
                    if (status != 303) {
                        throw new IOException("a post was answered with " + status);
                    }
                }
                System.out.printf(
                        "%s %s: a post %.1f ms of a core, %.1f ms; %d MB resident%n",
                        data,
                        job,
                        program.cpu().minus(before).toMillis() / (double) POSTS,
                        (System.nanoTime() - begun) / 1e6 / POSTS,
                        program.megabytes("VmRSS"));
            }
        }
    }

    /** Many benches at once, each on its job, beside a bare server that is asked at the same times. */
    @SuppressWarnings("FutureReturnValueIgnored") // what fails is counted where it is timed
    private void load(Path data, int benches, double aSecond, int seconds) throws IOException, InterruptedException {
        try (Program program = serving(data);
                Program bare = program(bareCommand())) {
            List<Double> pages = Collections.synchronizedList(new ArrayList<>());
            List<Double> posts = Collections.synchronizedList(new ArrayList<>());
            List<Double> nothing = Collections.synchronizedList(new ArrayList<>());
            AtomicInteger failed = new AtomicInteger();
            String run = "load-" + System.nanoTime() + "-";
            int jobs = jobs(program);
            for (int bench = 0; bench < benches; bench++) {
                ask(program.url() + "/job/job-g-" + (jobs - bench % jobs) + "/build", "");
            }
            Duration before = program.cpu();
            ScheduledExecutorService pool = Executors.newScheduledThreadPool(benches);
            int asked = (int) Math.round(aSecond * seconds);
            for (int i = 0; i < asked; i++) {
                String job = program.url() + "/job/job-g-" + (jobs - i % benches % jobs);
                boolean post = i % (PAGES_A_POST + 1) == 0;
                String body = post ? "text=measured&step=&entry=" + run + i : "";
                long at = Math.round(i / aSecond * 1e9);
                pool.schedule(
                        () -> {
                            timed(job + (post ? "/note" : "/build"), body, post ? posts : pages, failed);
                            timed(bare.url() + "/", "", nothing, failed);
                        },
                        at,
                        TimeUnit.NANOSECONDS);
            }
            pool.shutdown();
            pool.awaitTermination(seconds * 3L, TimeUnit.SECONDS);
            double each = program.cpu().minus(before).toMillis() / (double) asked;
            System.out.printf(
                    "%d benches, %.1f requests a second, %d s: %.1f ms of a core each, %d failed, %d MB resident%n",
                    benches, aSecond, seconds, each, failed.get(), program.megabytes("VmRSS"));
            say("page", pages, nothing);
            say("post", posts, nothing);
            say("bare", nothing, nothing);
        }
    }

    private static List<String> bareCommand() {
        List<String> command = java(ShopMeasure.class.getName());
        command.add("bare");
        return command;
    }

    /** How many jobs the shop has. */
    private int jobs(Program program) throws IOException, InterruptedException {
        String all = client.send(
                        HttpRequest.newBuilder(URI.create(program.url() + "/api/jobs"))
                                .build(),
                        HttpResponse.BodyHandlers.ofString())
                .body();
        return all.split("\"job\":").length - 1;
    }

    private void timed(String address, String body, List<Double> times, AtomicInteger failed) {
        long begun = System.nanoTime();
        try {
            int status = ask(address, body);
            if (status != 200 && status != 303) {
                failed.incrementAndGet();
            }
        } catch (IOException | InterruptedException broken) {
            failed.incrementAndGet();
        }
        times.add((System.nanoTime() - begun) / 1e6);
    }

    private static void say(String what, List<Double> times, List<Double> bare) {
        System.out.printf(
                "%s: p50 %.1f ms, p99 %.1f ms (%d); %.1f and %.1f times the bare server%n",
                what,
                at(times, 0.5),
                at(times, 0.99),
                times.size(),
                at(times, 0.5) / at(bare, 0.5),
                at(times, 0.99) / at(bare, 0.99));
    }

    private static double at(List<Double> times, double share) {
        List<Double> sorted = new ArrayList<>(times);
        Collections.sort(sorted);
        return sorted.get((int) Math.min(sorted.size() - 1, Math.floor(share * sorted.size())));
    }

    /** A server that always gives the same page. */
    private static void bare() throws IOException, InterruptedException {
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 256);
        byte[] page = "x".repeat(BARE_BYTES).getBytes(StandardCharsets.US_ASCII);
        server.createContext("/", exchange -> {
            exchange.sendResponseHeaders(200, page.length);
            exchange.getResponseBody().write(page);
            exchange.close();
        });
        server.setExecutor(Executors.newFixedThreadPool(8));
        server.start();
        System.out.println(
                "Shimwright is at http://127.0.0.1:" + server.getAddress().getPort() + "/");
        Thread.currentThread().join();
    }
}
