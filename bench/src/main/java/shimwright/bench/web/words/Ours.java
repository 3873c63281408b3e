package shimwright.bench.web.words;

import gg.jte.Content;
import gg.jte.TemplateOutput;

/**
 * A word of the program's own in the place of a value: it is said in the language of the page, which a value is not.
 *
 * @param text as the program has it
 */
public record Ours(String text) implements Content {
    @Override
    public void writeTo(TemplateOutput output) {
        output.writeUserContent(text);
    }
}
