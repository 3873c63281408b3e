package shimwright.rebuild.record;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * What must not go out with words of a job: whose box it is, where it comes from, and the vehicle it was in. A text that holds
 * any of that is kept back whole; a word of the unit file is cut out.
 */
public final class Discretion {
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}'’-]*");
    /** Letters and digits mixed, or a row of digits, as plates and vehicle numbers have them. */
    private static final Pattern PLATE =
            Pattern.compile("\\b(?=[A-Z0-9-]*[A-Z])(?=[A-Z0-9-]*[0-9])[A-Z0-9][A-Z0-9-]{4,}\\b|\\b\\d{6,}\\b"
                    + "|\\b[A-Z]{1,3}[ -]?\\d{1,4}[ -]?[A-Z]{1,3}\\b");

    private static final String CUT = "…";
    private static final int SHORTEST = 3;
    private static final int LONG_NUMBER = 4;
    private static final int RUN = 4;
    private static final Set<String> COMMON = Set.of(
            "the",
            "and",
            "for",
            "from",
            "with",
            "his",
            "her",
            "our",
            "van",
            "car",
            "bus",
            "truck",
            "box",
            "owner",
            "customer",
            "gearbox",
            "shop",
            "office",
            "road",
            "street",
            "somebody",
            "unknown",
            "said",
            "not",
            "new",
            "old");

    private final Set<String> names;
    private final Set<String> phrases;
    private final Set<String> runs;
    private final Set<String> trade;
    private final Set<String> numbers;

    private Discretion(
            Set<String> names, Set<String> phrases, Set<String> runs, Set<String> trade, Set<String> numbers) {
        this.names = names;
        this.phrases = phrases;
        this.runs = runs;
        this.trade = trade;
        this.numbers = numbers;
    }

    /**
     * What is kept back.
     *
     * @param owners what stands as owner on any job: names, places, vehicles, distances
     * @param said what owners said
     * @param jobs numbers of jobs
     * @param people who signed entries
     * @param unit whose own words are those of the trade
     */
    public static Discretion of(
            Collection<String> owners,
            Collection<String> said,
            Collection<String> jobs,
            Collection<String> people,
            Unit unit) {
        Set<String> names = new HashSet<>();
        Set<String> phrases = new LinkedHashSet<>();
        owners.forEach(owner -> {
            Stream.of(owner.split("[,;\n]")).forEach(part -> whole(phrases, part));
            words(owner).stream().filter(Discretion::telling).forEach(names::add);
        });
        people.stream().filter(Discretion::named).forEach(person -> {
            whole(phrases, person);
            words(person).stream().filter(Discretion::telling).forEach(names::add);
        });
        jobs.forEach(job -> whole(phrases, job));
        Set<String> runs = new HashSet<>();
        for (String sentence : said) {
            List<String> all = words(sentence);
            for (int i = 0; i + RUN <= all.size(); i++) {
                runs.add(String.join(" ", all.subList(i, i + RUN)));
            }
            if (all.size() > 1 && all.size() < RUN) {
                phrases.add(sentence.strip());
            }
        }
        return new Discretion(names, phrases, runs, trade(unit), numbers(unit));
    }

    /** Why a text must stay in the shop, in words; empty where nothing is seen in it. */
    public Optional<String> against(String text) {
        String low = spaced(text);
        for (String phrase : phrases) {
            if (low.contains(spaced(phrase))) {
                return Optional.of("it holds “" + phrase + "”");
            }
        }
        Matcher word = WORD.matcher(text);
        while (word.find()) {
            if (isPrivate(text, word)) {
                return Optional.of("it holds “" + word.group() + "”");
            }
        }
        List<String> all = words(text);
        for (int i = 0; i + RUN <= all.size(); i++) {
            if (runs.contains(String.join(" ", all.subList(i, i + RUN)))) {
                return Optional.of("it says what the owner said");
            }
        }
        Matcher plate = PLATE.matcher(text);
        while (plate.find()) {
            if (!numbers.contains(plate.group().toLowerCase(Locale.ROOT))) {
                return Optional.of("“" + plate.group() + "” may be a plate or a vehicle number");
            }
        }
        return Optional.empty();
    }

    /** Why somebody should look at a text before it goes out, where nothing stands against it: a capital within a sentence. */
    public boolean doubtful(String text) {
        Matcher word = WORD.matcher(text);
        while (word.find()) {
            String low = word.group().toLowerCase(Locale.ROOT);
            boolean begins = begins(text, word.start());
            if (Character.isUpperCase(word.group().charAt(0))
                    && !begins
                    && !trade.contains(low)
                    && !numbers.contains(low)
                    && word.group().length() >= SHORTEST) {
                return true;
            }
        }
        return false;
    }

    /** A text of the unit file without what is private in it. */
    public String cut(String text) {
        String cut = text;
        for (String phrase : phrases) {
            cut = Pattern.compile(
                            "(?<![\\p{L}\\p{N}])" + Pattern.quote(phrase) + "(?![\\p{L}\\p{N}])",
                            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)
                    .matcher(cut)
                    .replaceAll(CUT);
        }
        StringBuilder out = new StringBuilder();
        Matcher word = WORD.matcher(cut);
        while (word.find()) {
            word.appendReplacement(out, Matcher.quoteReplacement(isPrivate(cut, word) ? CUT : word.group()));
        }
        return word.appendTail(out).toString();
    }

    /** A word of an owner; one that is also a word of the trade only where it is written as a name. */
    private boolean isPrivate(String text, Matcher word) {
        String low = word.group().toLowerCase(Locale.ROOT);
        if (!names.contains(low)) {
            return false;
        }
        return !trade.contains(low) || (Character.isUpperCase(word.group().charAt(0)) && !begins(text, word.start()));
    }

    private static boolean begins(String text, int at) {
        String before = text.substring(0, at).stripTrailing();
        return before.isEmpty() || ".!?:;“\"".indexOf(before.charAt(before.length() - 1)) >= 0;
    }

    private static boolean telling(String word) {
        boolean letters = word.chars().anyMatch(Character::isLetter);
        return word.length() >= (letters ? SHORTEST : LONG_NUMBER) && !COMMON.contains(word);
    }

    /** True where somebody signs with a name and not as the bench. */
    private static boolean named(String person) {
        return person.chars().anyMatch(Character::isUpperCase);
    }

    /** Several words together, or a number as jobs have it; a single word is a name and looked at as one. */
    private static void whole(Set<String> phrases, String text) {
        boolean telling = words(text).size() > 1 || text.chars().anyMatch(Character::isDigit);
        if (telling && text.strip().length() >= SHORTEST) {
            phrases.add(text.strip());
        }
    }

    private static String spaced(String text) {
        return " " + String.join(" ", words(text)) + " ";
    }

    private static List<String> words(String text) {
        return WORD.matcher(text.toLowerCase(Locale.ROOT))
                .results()
                .map(MatchResult::group)
                .toList();
    }

    /** Words that the unit file writes small: a name is written large. */
    private static Set<String> trade(Unit unit) {
        Set<String> trade = new HashSet<>();
        for (Item item : unit.type().items()) {
            small(trade, item.name());
        }
        for (Step step : unit.type().steps()) {
            small(trade, step.todo());
            small(trade, step.trap());
            small(trade, step.route());
        }
        unit.type().clearances().forEach(clearance -> small(trade, clearance.name()));
        unit.type().tools().values().forEach(tool -> small(trade, tool));
        return trade;
    }

    private static void small(Set<String> trade, String text) {
        Matcher word = WORD.matcher(text);
        while (word.find()) {
            if (word.group().equals(word.group().toLowerCase(Locale.ROOT))) {
                trade.add(word.group());
            }
        }
    }

    /** Part numbers, threads and marks of the unit, which look like a plate and are none. */
    private static Set<String> numbers(Unit unit) {
        Set<String> numbers = new HashSet<>();
        unit.type().items().forEach(item -> numbers.add(item.part().toLowerCase(Locale.ROOT)));
        unit.type().items().forEach(item -> numbers.add(item.id().toLowerCase(Locale.ROOT)));
        unit.type().fasteners().forEach(one -> numbers.addAll(words(one.thread())));
        unit.type().steps().forEach(step -> numbers.add(step.id().toLowerCase(Locale.ROOT)));
        unit.type().bearings().forEach(one -> numbers.addAll(words(one.toString())));
        numbers.addAll(words(unit.variantName() + " " + unit.type().model()));
        return numbers;
    }
}
