package shimwright.rebuild.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;

/** The invented unit that ships with the program, read once. */
public final class DemoUnit {
    private static final UnitType TYPE = read();

    public static final Unit A = TYPE.resolve("A");
    public static final Unit B = TYPE.resolve("B");

    private DemoUnit() {}

    public static UnitType type() {
        return TYPE;
    }

    /** Its file as it ships. */
    public static String text() {
        return text("/units/ambleholt-l5-74.yaml");
    }

    private static UnitType read() {
        return UnitFiles.read("ambleholt-l5-74.yaml", text()).outcome().orElseThrow();
    }

    /** The other invented unit: three shafts in line, an intermediate plate, one rail. */
    public static UnitType inLine() {
        return UnitFiles.read("hollinbridge-hb5.yaml", inLineText()).outcome().orElseThrow();
    }

    public static String inLineText() {
        return text("/units/hollinbridge-hb5.yaml");
    }

    /** Lines of a resource of the demo scenario, without blank ones and remarks. */
    static List<String> lines(String name) {
        return text("/shimwright/rebuild/demo/" + name)
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                .toList();
    }

    private static String text(String resource) {
        try (InputStream in = Objects.requireNonNull(DemoUnit.class.getResourceAsStream(resource), resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
