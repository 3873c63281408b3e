package shimwright.bench.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** Against the JDK's own XML parser: what is fit for a text can be printed, and what is made harmless too. */
class CharactersTest {
    private static final int STEP = 37; // every character to U+2FFF, then samples

    private static boolean parses(DocumentBuilder parser, String text) throws IOException {
        try {
            String escaped = text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
            parser.parse(new InputSource(new StringReader("<a>" + escaped + "</a>")));
            return true;
        } catch (SAXException none) {
            return false;
        }
    }

    @Test
    void whatIsFitIsXmlAndWhatIsNotIsMadeSo() throws Exception {
        DocumentBuilder parser = DocumentBuilderFactory.newInstance().newDocumentBuilder();
        parser.setErrorHandler(new DefaultHandler());
        for (int c = 0; c <= Character.MAX_CODE_POINT; c += c < 0x3000 ? 1 : STEP) {
            String text = "a" + Character.toString(c) + "b";
            if (Characters.fit(c)) {
                assertThat(parses(parser, text)).as(Characters.name(c)).isTrue();
                assertThat(Characters.harmless(text)).isEqualTo(text);
            } else {
                assertThat(Characters.harmless(text)).as(Characters.name(c)).isEqualTo("a\uFFFDb");
            }
            if (!parses(parser, text)) {
                assertThat(Characters.fit(c)).as(Characters.name(c)).isFalse();
            }
        }
        assertThat(parses(parser, Characters.harmless("a\ud800b\udc00c\ufffe"))).isTrue();
    }

    @Test
    void whatABenchTypesIsFit() {
        // common practice, no source
        for (String text : new String[] {
            "0.24 ± 0,02 mm", "Ø52 ⌀ 12° 30′ 5″ µm", "Ж-12 Я-12 十二", "a\tb\r\nc", "\ud83d\ude00 e\u0301 \u200d"
        }) {
            assertThat(Characters.unfit(text)).as(text).isEmpty();
        }
    }
}
