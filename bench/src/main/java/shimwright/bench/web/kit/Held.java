package shimwright.bench.web.kit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import shimwright.bench.web.words.Words;

/**
 * How a screen stands at the bench and is held, as the person at it chose.
 *
 * @param light "dark" or "bright"; empty leaves it to the device
 * @param left true for the left hand: what is pressed lies on the left
 * @param gloves true for targets that a glove hits
 * @param aloud true where each step is read aloud when it comes
 * @param silent true where no tone is given when a clock ends
 * @param awake true where the screen is kept on while a job is open
 * @param pedal key that a pedal presses, as browsers name it; empty for none
 * @param speech code of the words of its pages; empty for those of the shop
 */
public record Held(
        String light,
        boolean left,
        boolean gloves,
        boolean aloud,
        boolean silent,
        boolean awake,
        String pedal,
        String speech) {
    /** As every screen begins. */
    public static final Held USUAL = new Held("", false, false, false, false, false, "", "");

    private static final Set<String> LIGHTS = Set.of("dark", "bright");
    private static final String PEDAL = "pedal-";
    private static final String SPEECH = "words-";

    /** As kept in a cookie; words that are none of ours are passed over. */
    public static Held of(String kept) {
        List<String> words = Arrays.asList(kept.split("\\."));
        return new Held(
                words.stream().filter(LIGHTS::contains).findFirst().orElse(""),
                words.contains("left"),
                words.contains("gloves"),
                words.contains("aloud"),
                words.contains("silent"),
                words.contains("awake"),
                named(words, PEDAL, key -> key.matches("[A-Za-z0-9]{1,20}")),
                named(words, SPEECH, Words.codes()::contains));
    }

    private static String named(List<String> words, String name, Predicate<String> ours) {
        return words.stream()
                .filter(word -> word.startsWith(name))
                .map(word -> word.substring(name.length()))
                .filter(ours)
                .findFirst()
                .orElse("");
    }

    /** As a form says it. */
    static Held typed(Form form) {
        return of(String.join(
                ".",
                form.raw("light"),
                form.raw("hand"),
                form.raw("gloves"),
                form.raw("aloud"),
                form.raw("tone"),
                form.raw("awake"),
                PEDAL + form.raw("pedal").strip(),
                SPEECH + form.raw("speech")));
    }

    /** For a cookie, and as classes of the page. */
    public List<String> words() {
        List<String> words = new ArrayList<>();
        words.add(light);
        words.add(left ? "left" : "");
        words.add(gloves ? "gloves" : "");
        words.add(aloud ? "aloud" : "");
        words.add(silent ? "silent" : "");
        words.add(awake ? "awake" : "");
        words.removeIf(String::isEmpty);
        return words;
    }

    /** The text that {@link #of} reads. */
    public String kept() {
        List<String> words = new ArrayList<>(words());
        if (!pedal.isEmpty()) {
            words.add(PEDAL + pedal);
        }
        if (!speech.isEmpty()) {
            words.add(SPEECH + speech);
        }
        return String.join(".", words);
    }
}
