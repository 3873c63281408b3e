package shimwright.bench.web.kit;

import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import shimwright.bench.web.words.Words;
import shimwright.rebuild.job.StoreFailure;

/** In which words a screen is spoken to: its own where somebody chose them there, else those of the shop. */
final class ShopSpeech {
    /** The shop's fact that says so. */
    private static final String FACT = "words";

    /** Papers that teach or are filled in; the others are evidence, and their log is in English. */
    private static final Set<String> FOR_HANDS = Set.of("guidepaper", "benchsheetpaper");

    private final Supplier<Map<String, String>> facts;
    private volatile Words last = Words.PLAIN;

    ShopSpeech(Supplier<Map<String, String>> facts) {
        this.facts = facts;
    }

    /** The words of a screen; of a shop that cannot be read now, as they were last. */
    Words words(Held held) {
        if (!held.speech().isEmpty()) {
            return Words.of(held.speech());
        }
        try {
            last = Words.of(facts.get().getOrDefault(FACT, ""));
        } catch (StoreFailure unread) {
            // a page that says so is said in the words of the one before
            return last;
        }
        return last;
    }

    /** True for a paper that stays in the language of the log. */
    static boolean evidence(String template) {
        return template.endsWith("paper") && !FOR_HANDS.contains(template);
    }
}
