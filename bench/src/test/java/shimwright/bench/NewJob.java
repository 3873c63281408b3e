package shimwright.bench;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;

/** Opens a job as the page of a new job does. */
final class NewJob {
    private NewJob() {}

    /** Posts the form of a new job of the shipped unit, with more fields behind. */
    static HttpResponse<String> open(DemoBench bench, String number, String... more) {
        String type = bench.page("/new").select("a.job").attr("href");
        List<String> fields = new ArrayList<>(List.of("number", number, "owner", "somebody", "said", "it whines"));
        if (more.length == 0) {
            String variant = bench.page(type).select("[name=variant]").stream()
                    .map(e -> e.tagName().equals("select")
                            ? e.select("option[value~=.+]").attr("value")
                            : e.val())
                    .filter(v -> !v.isEmpty())
                    .findFirst()
                    .orElseThrow();
            fields.addAll(List.of("variant", variant, "because", "seen before"));
        }
        fields.addAll(List.of(more));
        return bench.post(type, fields.toArray(String[]::new));
    }
}
