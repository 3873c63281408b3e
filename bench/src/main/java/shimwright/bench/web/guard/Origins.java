package shimwright.bench.web.guard;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import shimwright.mechanics.outcome.Refusal;

/**
 * Where a request came from. A browser says it by Origin (Fetch Standard, section 3.2) and Sec-Fetch-Site (Fetch Metadata
 * Request Headers, section 2.3); what changes something must come from a page of this shop. A program that is no browser
 * sends neither.
 */
final class Origins {
    private static final Set<String> HERE = Set.of("same-origin", "none");

    private Origins() {}

    static Optional<Refusal> refusal(RequestHead asked) {
        String site = asked.header("Sec-Fetch-Site").toLowerCase(Locale.ROOT);
        if (asked.looks()) {
            boolean link = asked.header("Sec-Fetch-Mode").equalsIgnoreCase("navigate")
                    && asked.header("Sec-Fetch-Dest").equalsIgnoreCase("document");
            boolean foreign = !site.isEmpty() && !HERE.contains(site);
            return foreign && !link ? Optional.of(elsewhere()) : Optional.empty();
        }
        if (!site.isEmpty() && !HERE.contains(site)) {
            return Optional.of(elsewhere());
        }
        if (asked.has("Origin")) {
            return asked.header("Origin").toLowerCase(Locale.ROOT).equals(asked.origin())
                    ? Optional.empty()
                    : Optional.of(elsewhere());
        }
        // an old browser that sends neither still says which page the form stood on
        String page = asked.header("Referer").toLowerCase(Locale.ROOT);
        boolean ours = page.isEmpty() || page.equals(asked.origin()) || page.startsWith(asked.origin() + "/");
        return ours ? Optional.empty() : Optional.of(elsewhere());
    }

    private static Refusal elsewhere() {
        return Refusal.at(
                "page",
                "this was sent by a page that is not of this shop, and nothing was kept",
                "Do it on the shop's own page");
    }
}
