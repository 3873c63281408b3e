package shimwright.bench.web.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The words of a page in one language and usage. A page is made in English; what its template says and the sentences that the
 * program is known to say are put into the other words as it is written. What somebody typed and what a unit's file says are
 * values and stay as they are, but where a whole value is such a sentence of three words or more.
 */
public final class Words {
    /** As the program says it. */
    public static final Words PLAIN = new Words("en", null, null);

    private static final Map<String, Words> MADE = new ConcurrentHashMap<>();
    private static final List<String> CODES = List.of("en", "en-GB", "en-US", "de");
    private static final Map<String, String> NAMES = Map.of(
            "en", "English, as written",
            "en-GB", "English, as in the UK",
            "en-US", "English, as in the US",
            "de", "Deutsch");
    private static final Pattern SENTENCES = Pattern.compile("(?<=[.?!]) ");
    private static final Pattern COLON = Pattern.compile(": ");
    private static final Pattern CLAUSES = Pattern.compile("(?<=[:;]) ");

    /** A sentence with values that has fewer words of its own would be found in many a text. */
    private static final int FEWEST_OF_OURS = 2;

    /** What is said of a place names so many places within each other; each more would double the work for a text that is not known. */
    private static final int MOST_PLACES = 4;

    /** Values, and words of the program, come again on each page of a job; so many of each are remembered. */
    private static final int MOST_VALUES = 4000;

    private static final int LONGEST_VALUE = 400;

    private final String language;
    private final @Nullable Catalogue catalogue;
    private final @Nullable Usage usage;
    private final String scripts;
    private final Map<Markup.Place, Map<String, Markup.Cut>> cuts = new ConcurrentHashMap<>();
    private final Map<String, String> pieces = new ConcurrentHashMap<>();
    private final Map<String, String> marked = new ConcurrentHashMap<>();
    private final Map<String, String> values = new ConcurrentHashMap<>();
    private final Map<String, String> own = new ConcurrentHashMap<>();

    private Words(String language, @Nullable Catalogue catalogue, @Nullable Usage usage) {
        this.language = language;
        this.catalogue = catalogue;
        this.usage = usage;
        this.scripts = catalogue == null || usage != null ? "" : catalogue.scripts();
    }

    /** What can be chosen, as a page's language is named (BCP 47). */
    public static List<String> codes() {
        return CODES;
    }

    /** A choice as it names itself; the code where it is none of ours. */
    public static String name(String code) {
        return NAMES.getOrDefault(code, code);
    }

    /** The words of a code; those of the program for one that is none of ours. */
    public static Words of(String code) {
        return CODES.contains(code) && !code.equals("en") ? MADE.computeIfAbsent(code, Words::make) : PLAIN;
    }

    private static Words make(String code) {
        return switch (code) {
            case "en-GB" -> new Words(code, Catalogue.of("de"), Usage.UK);
            case "en-US" -> new Words(code, Catalogue.of("de"), Usage.US);
            default -> new Words(code, Catalogue.of(code), null);
        };
    }

    /** The language as a page names it. */
    public String language() {
        return language;
    }

    /** True where a page stays as the program made it. */
    public boolean plain() {
        return catalogue == null;
    }

    /** True where sentences are said in another language than English. */
    boolean foreign() {
        return catalogue != null && usage == null;
    }

    /** A text of a template, cut once for all pages. */
    Markup.Cut cut(String text, Markup.Place from) {
        Map<String, Markup.Cut> here = cuts.computeIfAbsent(from, none -> new ConcurrentHashMap<>());
        Markup.Cut known = here.get(text);
        if (known == null) {
            known = Markup.cut(text, from);
            here.put(text, known);
        }
        return known;
    }

    /**
     * What a template says between two marks.
     *
     * @param key with places for values
     * @param values as they are
     * @param shown as they go into the page
     * @return in these words; empty where it is not known
     */
    Optional<String> whole(String key, List<String> values, List<String> shown) {
        return foreign() && catalogue != null ? catalogue.said(key, values, shown) : Optional.empty();
    }

    /** A word or sentence of the program itself. */
    public String ours(String text) {
        if (catalogue == null) {
            return text;
        }
        return usage != null ? usage.said(text) : remembered(own, text, 0);
    }

    /** A value: a sentence that the program is known to say, or left as it is. */
    String value(String text) {
        if (catalogue == null || text.length() < Catalogue.FEWEST_WORDS * 2 || text.indexOf(' ') < 0) {
            return text;
        }
        if (foreign() && Days.is(text)) {
            return Days.german(text);
        }
        return remembered(values, text, Catalogue.FEWEST_WORDS);
    }

    private String remembered(Map<String, String> memory, String text, int fewest) {
        String known = memory.get(text);
        if (known == null) {
            known = said(text, fewest).orElse(text);
            if (memory.size() >= MOST_VALUES) {
                memory.clear();
            }
            if (text.length() <= LONGEST_VALUE) {
                memory.put(text, known);
            }
        }
        return known;
    }

    private Optional<String> said(String text, int fewest) {
        return sentence(text, fewest)
                .or(() -> parts(SENTENCES, text, part -> sentence(part, fewest).or(() -> clauses(part, fewest))));
    }

    /** A sentence of several clauses: none is said in other words than the rest of it. */
    private Optional<String> clauses(String sentence, int fewest) {
        List<String> said = new ArrayList<>();
        for (String clause : CLAUSES.split(sentence)) {
            Optional<String> here = sentence(clause, fewest);
            if (here.isEmpty() && Catalogue.words(clause) > 0) {
                return Optional.empty();
            }
            said.add(here.orElse(clause));
        }
        return said.size() > 1 ? Optional.of(String.join(" ", said)) : Optional.empty();
    }

    /** A text of several parts, each in these words where it is known; empty where none is. */
    private static Optional<String> parts(Pattern apart, String text, Function<String, Optional<String>> known) {
        List<String> said = new ArrayList<>();
        boolean any = false;
        for (String part : apart.split(text)) {
            Optional<String> here = known.apply(part);
            any |= here.isPresent();
            said.add(here.orElse(part));
        }
        return any ? Optional.of(String.join(" ", said)) : Optional.empty();
    }

    private Optional<String> sentence(String text, int fewest) {
        if (catalogue == null) {
            return Optional.empty();
        }
        String key = Catalogue.key(text);
        if (catalogue.entries().containsKey(key) && Catalogue.words(key) >= fewest) {
            return usage == null ? catalogue.said(key, List.of(), List.of()) : Optional.of(usage.said(text));
        }
        return headed(catalogue, key, fewest)
                .or(() -> placed(catalogue, key, fewest))
                .or(() -> catalogue
                        .match(key, Math.max(fewest, FEWEST_OF_OURS))
                        .flatMap(match -> filled(catalogue, match)));
    }

    /** A sentence that stands with a capital here and without one in the catalogue, as the name of a field does. */
    private Optional<String> headed(Catalogue known, String text, int fewest) {
        if (text.isEmpty() || usage != null || Catalogue.words(text) < fewest) {
            return Optional.empty();
        }
        String name = Character.toLowerCase(text.charAt(0)) + text.substring(1);
        return known.entries().containsKey(name)
                ? known.said(name, List.of(), List.of())
                        .map(said -> Character.toUpperCase(said.charAt(0)) + said.substring(1))
                : Optional.empty();
    }

    /** What is said of a place: "job number: nothing typed." */
    private Optional<String> placed(Catalogue known, String text, int fewest) {
        int colon = text.indexOf(": ");
        if (usage != null || colon < 0 || COLON.matcher(text).results().count() > MOST_PLACES) {
            return Optional.empty();
        }
        Optional<String> place = known.said(text.substring(0, colon + 1), List.of(), List.of())
                .or(() -> known.said(text.substring(0, colon), List.of(), List.of())
                        .map(said -> said + ":"));
        if (place.isEmpty()) {
            return place;
        }
        String rest = text.substring(colon + 2);
        Optional<String> fact = said(rest, fewest);
        return fact.isEmpty() && Catalogue.words(rest) > 0 ? fact : place.map(said -> said + " " + fact.orElse(rest));
    }

    /** A sentence with its values in the other words; a value that is such a sentence itself is one there as well. */
    private Optional<String> filled(Catalogue known, Catalogue.Match match) {
        List<String> values = match.values().stream().map(this::value).toList();
        if (usage == null) {
            return known.said(match.key(), match.values(), values);
        }
        String text = usage.said(match.key());
        for (int i = 0; i < values.size(); i++) {
            text = text.replace("{" + i + "}", values.get(i));
        }
        return Optional.of(text);
    }

    /** What the scripts of a page say, as a JSON object of sentences and their forms; empty where they speak as they are. */
    public String scripts() {
        return scripts;
    }

    /**
     * What a template says between two marks or values; worked out once, for templates are few.
     *
     * @param text as it stands there
     * @param takesMarks true where what is left in English may get a mark that says so
     */
    String piece(String text, boolean takesMarks) {
        return (takesMarks ? marked : pieces).computeIfAbsent(text, some -> saidPiece(some, takesMarks));
    }

    private String saidPiece(String text, boolean takesMarks) {
        if (usage != null) {
            return usage.said(text);
        }
        String bare = text.strip();
        if (Catalogue.words(bare) == 0 || catalogue == null) {
            return text;
        }
        String said = catalogue
                .said(Catalogue.key(bare), List.of(), List.of())
                .orElse(takesMarks && Catalogue.words(bare) > 1 ? "<span lang=\"en\">" + bare + "</span>" : bare);
        int from = text.indexOf(bare);
        return text.substring(0, from) + said + text.substring(from + bare.length());
    }
}
