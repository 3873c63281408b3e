package shimwright.bench.web.kit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import shimwright.bench.text.Characters;
import shimwright.bench.web.words.Words;
import shimwright.mechanics.outcome.Refusal;

/** A refused page says each fault also at the field that it speaks of, in the form that was sent. */
final class FieldFaults {
    private static final Pattern ENTRY = Pattern.compile("(\\w+)\\[(\\d+)]");
    private static final String FIELDS = "input:not([type=hidden]), select, textarea";

    private FieldFaults() {}

    /**
     * The page with its faults at their fields; a fault whose field is not on it stands at its top alone.
     *
     * @param html as the template made it
     * @param path where the form was sent
     * @param said the page: what was sent, all its faults and its words
     */
    static String marked(String html, String path, Page said) {
        List<Refusal> faults = said.faults();
        if (faults.stream().allMatch(fault -> fault.key().isEmpty())) {
            return html;
        }
        Document page = Jsoup.parse(html);
        page.outputSettings().prettyPrint(false);
        for (int i = 0; i < faults.size(); i++) {
            Refusal fault = faults.get(i);
            String id = "fault-" + (i + 1);
            field(page, path, said.typed(), fault.key()).ifPresent(field -> mark(field, id, fault, said.words()));
        }
        return Characters.harmless(page.outerHtml());
    }

    private static Optional<Element> field(Document page, String path, Map<String, String> typed, String key) {
        List<Element> sent = page.select("form").stream()
                .filter(form -> form.attr("action").equals(path))
                .filter(form -> asked(form, typed))
                .toList();
        return names(key)
                .flatMap(name -> sent.stream()
                        .flatMap(form -> form.select(FIELDS).stream())
                        .filter(field -> field.attr("name").equals(name)))
                .findFirst();
    }

    /** The names that the field of a key may have: {@code v[0]} is {@code v1}, {@code in.sI} is {@code in-sI}. */
    private static Stream<String> names(String key) {
        Matcher entry = ENTRY.matcher(key);
        if (entry.matches()) {
            return Stream.of(entry.group(1) + (Integer.parseInt(entry.group(2)) + 1), entry.group(1));
        }
        return Stream.of(key, key.replace('.', '-'), key + "1").filter(name -> !name.isEmpty());
    }

    /** Whether what is hidden in a form is what was sent: forms alike but for that are told apart. */
    private static boolean asked(Element form, Map<String, String> typed) {
        return form.select("input[type=hidden]").stream()
                .filter(hidden -> !hidden.attr("name").equals("entry"))
                .allMatch(hidden ->
                        typed.getOrDefault(hidden.attr("name"), hidden.val()).equals(hidden.val()));
    }

    private static void mark(Element field, String id, Refusal fault, Words said) {
        boolean first = !field.hasAttr("aria-invalid");
        String described = first ? "" : field.attr("aria-describedby") + " ";
        field.attr("aria-invalid", "true").attr("aria-describedby", described + id);
        Element words = new Element("small").addClass("fault").id(id);
        words.text("✗ " + said.ours(Refusal.at("", fault.fact(), fault.hint()).sentence()));
        Element behind = field;
        for (Element next = field.nextElementSibling();
                next != null && next.hasClass("fault");
                next = next.nextElementSibling()) {
            behind = next;
        }
        behind.after(words);
    }
}
