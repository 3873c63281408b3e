package shimwright.bench.web.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.picture.section.SectionDrawing;
import shimwright.bench.picture.section.SectionState;
import shimwright.bench.picture.section.SectionView;
import shimwright.bench.web.clearance.ReadingPlots;
import shimwright.bench.web.kit.Drawings;
import shimwright.bench.web.kit.Show;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.working.Line;
import shimwright.mechanics.worksheet.SheetField;
import shimwright.mechanics.worksheet.Worksheet;
import shimwright.rebuild.clearance.EtchedDeviation;
import shimwright.rebuild.inspect.Identification;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.record.HandBackRecord;
import shimwright.rebuild.record.HandBackRecord.HoldReading;
import shimwright.rebuild.record.HandBackRecord.Setting;
import shimwright.rebuild.record.History;
import shimwright.rebuild.unit.model.Step;

/**
 * The record as page and paper show it.
 *
 * @param data the record
 * @param told how the variant was told
 * @param verdicts the section with each part by its verdict; empty where nothing was looked at
 * @param settings clearances with their drawings
 * @param holds hold points that were read, by step
 * @param history everything that was kept, by part of the work and day
 * @param pictures those of the job, in order
 * @param signer who kept most of it, said once
 */
public record RecordView(
        HandBackRecord data,
        String told,
        String verdicts,
        List<Drawn> settings,
        List<StepHolds> holds,
        List<HistoryPart> history,
        List<RecordPicture> pictures,
        String signer) {

    /**
     * Width of a drawing in px: A4 between the margins of paper.jte is 178 mm, 672 px, and what was accepted is drawn beside
     * it, so that a clearance with its figures and working stands on one page.
     */
    private static final double PAPER = 345;

    private static final double WHOLE = 660;

    /** A clearance with its pictures and the working kept when it was accepted. */
    public record Drawn(Setting setting, String drawing, String limits, List<Line> working) {
        /** The pieces that are in for it, by place. */
        public String pieces() {
            return setting.chosen().stream()
                    .map(said -> said.what().position() + ": "
                            + said.what().pieces().stream()
                                    .map(piece -> piece.piece())
                                    .collect(Collectors.joining(" + ")))
                    .collect(Collectors.joining("; "));
        }
    }

    /** Hold points of one step. */
    public record StepHolds(String step, String todo, List<HoldReading> readings) {}

    /** What was kept in one part of the work. */
    public record HistoryPart(String title, List<HistoryDay> days) {}

    /** What was kept on one day. */
    public record HistoryDay(String day, List<History.Line> lines) {}

    static RecordView of(JobOnBench bench, Show show, List<RecordPicture> pictures) {
        HandBackRecord data = HandBackRecord.of(bench.job(), bench.unit());
        Set<String> fitted = bench.unit().itemsIn(bench.job().stepsDone());
        List<Drawn> drawn = new ArrayList<>();
        for (Setting setting : data.clearances()) {
            String id = setting.clearance().id();
            Said<Entry.ClearanceAccepted> accepted = setting.accepted();
            SectionState state = SectionState.EMPTY.withFitted(fitted).withClearance(id);
            drawn.add(new Drawn(
                    setting,
                    accepted != null
                            ? SectionDrawing.svg(
                                    EtchedDeviation.drawn(bench.unit(), bench.job()),
                                    state,
                                    "rec-" + id,
                                    SectionView.FULL.in(show.system()).forWidth(PAPER))
                            : "",
                    accepted != null ? ReadingPlots.accepted(setting.clearance(), accepted.what(), show) : "",
                    working(setting)));
        }
        String told = Identification.of(
                        bench.unit().type(), bench.job().opened().tellTales())
                .say();
        return new RecordView(
                data,
                told,
                verdicts(bench, data, show),
                List.copyOf(drawn),
                holds(data),
                history(data.history(), show),
                pictures,
                signer(data.history()));
    }

    /** The unit by its verdicts, tinted and hatched as on the page of the inspection. */
    private static String verdicts(JobOnBench bench, HandBackRecord data, Show show) {
        return data.decisions().isEmpty()
                ? ""
                : SectionDrawing.svg(
                        bench.unit(),
                        Drawings.verdicts(bench.unit(), bench.job()),
                        "rec-verdicts",
                        SectionView.FULL.in(show.system()).forWidth(WHOLE));
    }

    private static List<StepHolds> holds(HandBackRecord data) {
        Map<String, List<HoldReading>> bySteps = data.holds().stream()
                .collect(Collectors.groupingBy(HoldReading::step, LinkedHashMap::new, Collectors.toList()));
        return bySteps.entrySet().stream()
                .map(entry -> new StepHolds(
                        entry.getKey(),
                        data.unit().findStep(entry.getKey()).map(Step::todo).orElse(""),
                        entry.getValue()))
                .toList();
    }

    private static List<HistoryPart> history(List<History.Line> lines, Show show) {
        List<HistoryPart> parts = new ArrayList<>();
        for (History.Part part : History.Part.values()) {
            Map<String, List<History.Line>> days = lines.stream()
                    .filter(line -> line.part() == part)
                    .collect(Collectors.groupingBy(
                            line -> show.day(line.at()), LinkedHashMap::new, Collectors.toList()));
            if (!days.isEmpty()) {
                parts.add(new HistoryPart(
                        title(part),
                        days.entrySet().stream()
                                .map(day -> new HistoryDay(day.getKey(), day.getValue()))
                                .toList()));
            }
        }
        return List.copyOf(parts);
    }

    private static String title(History.Part part) {
        return switch (part) {
            case COMING_IN -> "Coming in and taking apart";
            case INSPECTION -> "Inspection and orders";
            case BUILD -> "Build, hold points and notes";
            case CLEARANCES -> "Clearances";
            case HANDING_BACK -> "Handing back";
        };
    }

    /** Who kept most of the entries. */
    private static String signer(List<History.Line> lines) {
        return lines.stream()
                .collect(Collectors.groupingBy(History.Line::by, LinkedHashMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse("");
    }

    private static List<Line> working(Setting setting) {
        List<Line> lines = new ArrayList<>();
        setting.chosen().stream()
                .filter(said ->
                        said.what().clearance().equals(setting.clearance().id()))
                .map(said -> said.what().working())
                .forEach(lines::addAll);
        Said<Entry.ClearanceAccepted> accepted = setting.accepted();
        if (accepted != null) {
            lines.addAll(accepted.what().working());
        }
        return List.copyOf(lines);
    }

    static List<HoldReading> proofs(JobOnBench bench) {
        return HandBackRecord.of(bench.job(), bench.unit()).proofs();
    }

    /** A worksheet's name as it is read. */
    public static String sheetName(String sheet) {
        return sheet.replace('-', ' ');
    }

    /** What was typed in several lines, in one. */
    public static String oneLine(String typed) {
        return typed.replace("\n", "; ");
    }

    /** An input of a worksheet in words; its key where this program has it no more. */
    public static String input(String sheet, String key) {
        List<String> words = new ArrayList<>();
        List<SheetField> fields = Registry.find(sheet).map(Worksheet::inputs).orElse(List.of());
        for (String part : key.split("[.]")) {
            Optional<SheetField> field =
                    fields.stream().filter(one -> one.name().equals(part)).findFirst();
            words.add(field.map(SheetField::label).orElse(part));
            fields = field.map(SheetField::children).orElse(List.of());
        }
        return String.join(", ", words);
    }
}
