package shimwright.mechanics.study;

import java.util.List;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheets of this topic. */
public final class StudySheets {
    /** All of them. */
    public static final List<Worksheet<?, ?>> ALL = List.of(GaugeStudy.SHEET, ToleranceLoop.SHEET);

    private StudySheets() {}
}
