package shimwright.bench.web.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** What a template says is said in other words; what is a value is left, and safe. */
class WordedOutputTest {
    private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");

    private static WordedOutput german() {
        return WordedOutput.in(Words.of("de"));
    }

    @Test
    void aSentenceWithAValueIsSaidWholeAndByItsNumber() {
        for (Map.Entry<Integer, String> said :
                Map.of(1, "<p>1 loses Teil.</p>", 7, "<p>7 lose Teile.</p>").entrySet()) {
            WordedOutput out = german();
            out.writeContent("<p>");
            out.setContext("p", null);
            out.writeUserContent(said.getKey());
            out.writeContent(" loose pieces.</p>");
            assertThat(out.toString()).isEqualTo(said.getValue());
        }
    }

    @Test
    void aValueIsLeftWhereItCouldHaveBeenTypedAndIsNoMark() {
        WordedOutput out = german();
        out.writeContent("<input value=\"");
        out.setContext("input", "value");
        out.writeUserContent("Set and accepted. Go on with the build.");
        out.writeContent("\" placeholder=\"count\"><p>");
        out.setContext("p", null);
        out.writeUserContent("Done");
        out.writeContent("</p><p>");
        out.setContext("p", null);
        out.writeUserContent("<b>{0}</b>");
        out.writeContent("</p><b>");
        out.setContext("b", null);
        out.writeUserContent(new Ours("Done"));
        out.writeContent("</b>");
        assertThat(out.toString())
                .isEqualTo("<input value=\"Set and accepted. Go on with the build.\" placeholder=\"Anzahl\">"
                        + "<p>Done</p><p>&lt;b&gt;{0}&lt;/b&gt;</p><b>Getan</b>");
    }

    @Test
    void whatIsNotInTheCatalogueSaysThatItIsEnglish() {
        WordedOutput out = german();
        out.writeContent(
                "<p>No such words here</p><option value=\"a\">No such words here</option><textarea>Done</textarea>");
        assertThat(out.toString())
                .isEqualTo("<p><span lang=\"en\">No such words here</span></p>"
                        + "<option value=\"a\">No such words here</option><textarea>Done</textarea>");
    }

    @Test
    void wordsOfTheTradeAreThoseOfOneShoreWholeAndWithTheirCapitals() {
        assertThat(Usage.UK.said("Snap rings of the countershaft, Color gray; a wrenching metrestick"))
                .isEqualTo("Circlips of the layshaft, Colour grey; a wrenching metrestick");
        assertThat(Usage.US.said("Spanner, paraffin, end float, circlip, tyre, centre, bush; bushing"))
                .isEqualTo("Wrench, kerosene, end play, snap ring, tire, center, bushing; bushing");
    }

    @Test
    void aSentenceOfTheProgramIsKnownWithItsValues() {
        Words german = Words.of("de");
        assertThat(german.value(
                        "Settled: the last 3 rounds count. Fit a + b, 0.40 mm: 0.050 mm expected, 97.5 % sure to lie"
                                + " within 0.020 mm to 0.080 mm."))
                .isEqualTo(
                        "Gesetzt: die letzten 3 Durchgänge zählen. Einbauen a + b, 0.40 mm: 0.050 mm erwartet, 97.5 % sicher"
                                + " innerhalb von 0.020 mm bis 0.080 mm.");
        assertThat(german.value("3 Nov 2026, 09:05")).isEqualTo("03.11.2026, 09:05");
        assertThat(german.value("seen on 3 Nov 2026")).isEqualTo("seen on 3 Nov 2026");
        assertThat(german.value("the fork was bent")).isEqualTo("the fork was bent");
        assertThat(Words.of("no such").plain()).isTrue();
    }

    /** A note of many short pieces is left as it was typed, and at once: looking for places within places doubled with each colon. */
    @Test
    @Timeout(value = 20, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void aTextOfManyColonsIsLeftAtOnce() {
        for (String piece : List.of("a: ", "Note: ", "job number: ", "job number: x. ", "a: b. ", "a; b: c. ")) {
            String typed = (piece.repeat(40) + "the fork was bent").strip();
            assertThat(Words.of("de").value(typed)).endsWith("the fork was bent");
            assertThat(Words.of("de").ours(typed)).endsWith("the fork was bent");
        }
    }

    @Test
    void everyEntryOfTheCatalogueIsSaidAndHasItsValues() {
        Catalogue.of("de").entries().forEach((key, forms) -> {
            assertThat(forms).as(key).hasSizeBetween(1, 2);
            forms.forEach(form -> assertThat(places(form)).as(key).isEqualTo(places(key)));
        });
    }

    private static List<String> places(String text) {
        Matcher place = PLACE.matcher(text);
        return place.results().map(found -> found.group(1)).sorted().distinct().toList();
    }
}
