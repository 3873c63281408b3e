package shimwright.compare;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import shimwright.rebuild.plan.crew.Activity;
import shimwright.rebuild.plan.crew.Link;
import shimwright.rebuild.plan.crew.Project;
import shimwright.rebuild.plan.crew.Resource;

/** Public scheduling instances as files: PSPLIB single mode (.sm) and ProGen/max (.sch). */
final class ProjectFile {
    private ProjectFile() {}

    static Project read(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file, StandardCharsets.US_ASCII);
        return file.toString().endsWith(".sm") ? single(lines) : lagged(lines);
    }

    /** PSPLIB, single mode: successors, then durations and needs, then capacities. */
    private static Project single(List<String> lines) {
        Map<Integer, Activity> activities = new LinkedHashMap<>();
        for (int[] row : rows(lines, "REQUESTS/DURATIONS", 3)) {
            activities.put(row[0], activity(row[0], row[2], Arrays.copyOfRange(row, 3, row.length)));
        }
        List<Link> links = new ArrayList<>();
        for (int[] row : rows(lines, "PRECEDENCE RELATIONS", 2)) {
            for (int k = 3; k < row.length; k++) {
                links.add(Link.after(Objects.requireNonNull(activities.get(row[0])), "" + row[k], 0, ""));
            }
        }
        return new Project(
                resources(rows(lines, "RESOURCEAVAILABILITIES", 2).get(0)), List.copyOf(activities.values()), links);
    }

    private static List<int[]> rows(List<String> lines, String heading, int skipped) {
        int at = 0;
        while (!lines.get(at).startsWith(heading)) {
            at++;
        }
        List<int[]> rows = new ArrayList<>();
        for (at += skipped; !lines.get(at).startsWith("***"); at++) {
            rows.add(numbers(lines.get(at)));
        }
        return rows;
    }

    private static int[] numbers(String line) {
        return Arrays.stream(line.replaceAll("[\\[\\]]", " ").trim().split("\\s+"))
                .mapToInt(Integer::parseInt)
                .toArray();
    }

    private static Activity activity(int id, int duration, int[] needs) {
        Map<String, Integer> held = new LinkedHashMap<>();
        for (int r = 0; r < needs.length; r++) {
            if (needs[r] > 0) {
                held.put("R" + r, needs[r]);
            }
        }
        return new Activity("" + id, "", duration, held);
    }

    private static List<Resource> resources(int[] capacities) {
        List<Resource> resources = new ArrayList<>();
        for (int r = 0; r < capacities.length; r++) {
            resources.add(new Resource("R" + r, "R" + r, capacities[r]));
        }
        return resources;
    }

    /** ProGen/max: successors with the lags between starts, then durations and needs, then capacities. */
    private static Project lagged(List<String> lines) {
        int n = numbers(lines.get(0))[0] + 2;
        List<Activity> activities = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            int[] row = numbers(lines.get(1 + n + i));
            activities.add(activity(row[0], row[2], Arrays.copyOfRange(row, 3, row.length)));
            int[] after = numbers(lines.get(1 + i));
            for (int k = 0; k < after[2]; k++) {
                links.add(new Link("" + after[0], "" + after[3 + k], after[3 + after[2] + k], ""));
            }
        }
        return new Project(resources(numbers(lines.get(1 + 2 * n))), activities, links);
    }
}
