package shimwright.mechanics.spring;

import java.util.List;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheets of this topic. */
public final class SpringSheets {
    public static final List<Worksheet<?, ?>> ALL = List.of(Springs.SHEET, SpringTester.SHEET);

    private SpringSheets() {}
}
