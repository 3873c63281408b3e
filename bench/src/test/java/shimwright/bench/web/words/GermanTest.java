package shimwright.bench.web.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.registry.Topics;
import shimwright.mechanics.worksheet.Shape;
import shimwright.mechanics.worksheet.SheetField;
import shimwright.mechanics.worksheet.Worksheet;

/** The pages that can be read in German are read in German wholly: each sentence of their templates is in the catalogue. */
class GermanTest {
    private static final Path TEMPLATES = Path.of("target/generated-sources/jte/gg/jte/generated/precompiled");
    private static final Pattern SAID = Pattern.compile("jteOutput\\.writeContent\\(\"((?:[^\"\\\\]|\\\\.)*)\"\\)");
    private static final Pattern ASKED =
            Pattern.compile("\\b(?:said|inWords)\\((?:[a-z.]+\\([^)]*\\) \\? )?(\"[^\"]+\"(?: : \"[^\"]+\")?)");
    private static final Pattern TEXT = Pattern.compile("\"([^\"]+)\"");
    private static final Catalogue GERMAN = Catalogue.of("de");

    /** Evidence on paper, and what such a paper is made of: it shows the log and stays in English. */
    private static final Pattern PAPERS = Pattern.compile(
            "(?:record\\w+|orderpaper|quotepaper|invoicepaper|sendoutpaper|tagpaper|sheetpaper|paper|appendix|pair)");

    @Test
    void everySentenceOfThesePagesIsInTheCatalogue() throws IOException {
        Set<String> missing = new TreeSet<>();
        templates().forEach(template -> missing(template).forEach(sentence -> missing.add(template + ": " + sentence)));
        assertThat(missing).isEmpty();
    }

    /** What a worksheet is called, what it answers and what it asks for; much of what comes out stays in English. */
    @Test
    void everyWorksheetNamesItselfAndItsFields() {
        Set<String> missing = new TreeSet<>();
        Topics.all().forEach(topic -> missing.add(topic.title()));
        for (Worksheet<?, ?> sheet : Registry.all()) {
            missing.add(sheet.title());
            missing.add(sheet.doc());
            sheet.inputs().forEach(field -> meanings(field, missing));
        }
        assertThat(missing).hasSizeGreaterThan(700);
        missing.removeIf(GERMAN.entries()::containsKey);
        assertThat(missing).isEmpty();
    }

    private static void meanings(SheetField field, Set<String> into) {
        if (field.shape() == Shape.RECORD) {
            field.children().forEach(child -> meanings(child, into));
        } else {
            into.add(field.meaning());
        }
    }

    /** A script asks for its sentences by name. */
    @Test
    void everySentenceOfTheScriptsIsInTheCatalogue() throws IOException {
        Set<String> missing = new TreeSet<>();
        try (Stream<Path> scripts = Files.list(Path.of("src/main/resources/static"))) {
            scripts.filter(file -> file.toString().endsWith(".js")).forEach(file -> {
                Matcher said = ASKED.matcher(read(file));
                while (said.find()) {
                    for (Matcher one = TEXT.matcher(said.group(1)); one.find(); ) {
                        missing.add(one.group(1));
                    }
                }
            });
        }
        assertThat(missing).hasSizeGreaterThan(20);
        missing.removeIf(sentence -> Words.of("de").scripts().contains('"' + sentence + '"'));
        assertThat(missing).isEmpty();
    }

    private static List<String> templates() throws IOException {
        try (Stream<Path> all = Files.list(TEMPLATES)) {
            return all.map(file -> file.getFileName().toString())
                    .filter(name -> name.startsWith("Jte") && name.endsWith("Generated.java"))
                    .map(name -> name.substring("Jte".length(), name.length() - "Generated.java".length()))
                    .filter(name -> !PAPERS.matcher(name).matches())
                    .sorted()
                    .toList();
        }
    }

    private static Stream<String> missing(String template) {
        List<String> missing = new ArrayList<>();
        Markup.Place place = Markup.Place.BEGINNING;
        Matcher said = SAID.matcher(read(TEMPLATES.resolve("Jte" + template + "Generated.java")));
        while (said.find()) {
            Markup.Cut cut = Markup.cut(said.group(1).translateEscapes(), place);
            cut.pieces().stream()
                    .filter(piece ->
                            piece.words() && Catalogue.words(piece.text().replaceAll("&[#a-z0-9]+;", "")) > 0)
                    .map(piece -> Catalogue.key(piece.text()))
                    .filter(text -> !covered(text))
                    .forEach(missing::add);
            place = cut.end();
        }
        return missing.stream();
    }

    /** True where a text between two values or marks is a sentence of the catalogue or a part of one. */
    private static boolean covered(String text) {
        return GERMAN.entries().containsKey(text)
                || GERMAN.entries().keySet().stream().anyMatch(key -> key.contains("{") && key.contains(text));
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
