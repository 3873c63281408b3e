package shimwright.bench.web.record;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.picture.section.SectionDrawing;
import shimwright.bench.picture.section.SectionState;
import shimwright.bench.picture.section.SectionView;
import shimwright.bench.web.clearance.ReadingPlots;
import shimwright.bench.web.kit.Drawings;
import shimwright.bench.web.kit.MarkedPicture;
import shimwright.bench.web.kit.Show;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.working.Line;
import shimwright.mechanics.worksheet.SheetField;
import shimwright.mechanics.worksheet.Worksheet;
import shimwright.rebuild.clearance.EtchedDeviation;
import shimwright.rebuild.inspect.Identification;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.record.BeforeAndAfter;
import shimwright.rebuild.record.FrontPage;
import shimwright.rebuild.record.FrontPicture;
import shimwright.rebuild.record.HandBackRecord;
import shimwright.rebuild.record.HandBackRecord.HoldReading;
import shimwright.rebuild.record.HandBackRecord.Setting;
import shimwright.rebuild.record.History;
import shimwright.rebuild.record.PartsFitted;
import shimwright.rebuild.record.PlaceNames;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * The record as page and paper show it.
 *
 * @param data the record
 * @param front what its first page says
 * @param code the head with its signature, for a camera
 * @param fitted parts that are in the unit
 * @param names what short ids stand for
 * @param numbers of entries within the log of the job, by their ids
 * @param shown numbers of entries that stand in another part than the log
 * @param torques where torques come from
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
        FrontPage front,
        HeadCode code,
        List<PartsFitted> fitted,
        PlaceNames names,
        Map<String, Long> numbers,
        Set<Long> shown,
        TorqueSources torques,
        String told,
        String verdicts,
        List<Drawn> settings,
        List<StepHolds> holds,
        List<HistoryPart> history,
        List<RecordPicture> pictures,
        String signer) {

    /** Width in px for which a drawing is lettered that stands on paper as the narrower of two columns. */
    private static final double PAPER = 300;

    private static final double PAGE = 300;

    private static final double WHOLE = 330;

    /** A clearance with its pictures and the working kept when it was accepted. */
    public record Drawn(Setting setting, String drawing, String limits, List<Line> working) {}

    /** Hold points of one step. */
    public record StepHolds(String step, String todo, List<HoldReading> readings) {}

    /** What was kept in one part of the work. */
    public record HistoryPart(String title, List<HistoryDay> days) {}

    /** What was kept on one day. */
    public record HistoryDay(String day, List<History.Line> lines) {}

    static RecordView of(JobOnBench bench, Show show, List<RecordPicture> pictures, HeadCode code, boolean onPaper) {
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
                            ? drawing(
                                    bench.job(),
                                    EtchedDeviation.drawn(bench.unit(), bench.job()),
                                    state,
                                    "rec-" + id,
                                    show,
                                    onPaper ? 0 : PAGE)
                            : "",
                    accepted != null ? ReadingPlots.accepted(setting.clearance(), accepted.what(), show) : "",
                    working(setting)));
        }
        String told = Identification.of(
                        bench.unit().type(), bench.job().opened().tellTales())
                .say();
        Map<String, Long> numbers = numbers(bench.job());
        return new RecordView(
                data,
                FrontPage.of(data),
                code,
                PartsFitted.of(bench.unit(), bench.job()),
                PlaceNames.of(bench.unit()),
                numbers,
                shown(data, numbers),
                TorqueSources.of(data),
                told,
                verdicts(bench, data, show, onPaper),
                List.copyOf(drawn),
                holds(data),
                history(data.history(), show),
                pictures,
                signer(data.history()));
    }

    /** The unit by its verdicts, tinted and hatched as on the page of the inspection. */
    private static String verdicts(JobOnBench bench, HandBackRecord data, Show show, boolean onPaper) {
        return data.decisions().isEmpty()
                ? ""
                : drawing(
                        bench.job(),
                        bench.unit(),
                        Drawings.verdicts(bench.unit(), bench.job()),
                        "rec-verdicts",
                        show,
                        onPaper ? 0 : WHOLE);
    }

    /** A drawing in its width on the page; on paper with none. */
    private static String drawing(Job job, Unit unit, SectionState state, String id, Show show, double onPage) {
        return onPage > 0
                ? Drawings.of(job.id(), unit, state, id, show, onPage)
                : SectionDrawing.svg(
                        unit, state, id, SectionView.FULL.in(show.system()).forWidth(PAPER));
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

    /** A picture of the first page with what it is of. */
    public record InFront(RecordPicture picture, String label) {}

    /** The pictures of the first page. */
    public List<InFront> inFront() {
        return FrontPicture.of(data.job(), data.unit()).stream()
                .map(one -> new InFront(pictures.get(one.place() - 1), one.label()))
                .toList();
    }

    /** What a reading found before it came apart; empty where it was not read. */
    public Optional<BeforeAndAfter> asFound(Setting setting) {
        return data.asFound().stream()
                .filter(row -> row.reading().again().equals(setting.clearance().id()))
                .filter(row ->
                        row.reading().kind() == Kind.LENGTH && row.value().isPresent())
                .findFirst();
    }

    /** The number of a reading within the log of its job; empty where it was not read. */
    public String number(HoldReading reading) {
        Said<Entry.CheckRead> read = reading.read();
        return read == null ? "" : String.valueOf(numbers.getOrDefault(read.id(), 0L));
    }

    /** True for an entry that stands with its number in another part, and needs no line of its own. */
    public boolean elsewhere(History.Line line) {
        return shown.contains(line.number());
    }

    /** The number of each entry within the log of its job, by its id. */
    private static Map<String, Long> numbers(Job job) {
        Map<String, Long> numbers = new HashMap<>();
        job.entries().forEach(kept -> numbers.put(kept.draft().id(), kept.streamNumber()));
        return Map.copyOf(numbers);
    }

    private static Set<Long> shown(HandBackRecord data, Map<String, Long> numbers) {
        Set<Long> shown = new HashSet<>();
        for (HoldReading reading :
                Stream.concat(data.holds().stream(), data.proofs().stream()).toList()) {
            Said<Entry.CheckRead> read = reading.read();
            if (read != null) {
                shown.add(numbers.getOrDefault(read.id(), 0L));
            }
        }
        return Set.copyOf(shown);
    }

    /** A mark that leads to a part of the evidence. */
    public record Bookmark(String id, String title) {}

    /** The parts that this record has, as the reader of a file finds them beside its pages. */
    public List<Bookmark> bookmarks() {
        List<Bookmark> marks = new ArrayList<>();
        mark(marks, true, "whatitis", "What it is");
        mark(marks, true, "found", "Found and decided");
        mark(marks, !data.asFound().isEmpty(), "asfound", "As found, and now");
        mark(marks, !fitted.isEmpty(), "fitted", "Parts fitted");
        mark(marks, !data.job().sent().isEmpty(), "sent", "Ordered and sent out");
        mark(marks, true, "set", "A: how each clearance was set");
        mark(marks, !data.torques().isEmpty(), "tightened", "Tightened");
        mark(marks, true, "proof", "Proof");
        mark(marks, true, "overruled", "Overruled");
        mark(marks, !data.notes().isEmpty(), "notes", "Notes");
        mark(marks, !data.pictures().isEmpty(), "pictures", "Pictures");
        mark(marks, !holds.isEmpty(), "holds", "B: hold points");
        mark(marks, true, "log", "C: everything that was kept");
        mark(marks, !data.job().worked().isEmpty(), "sheets", "D: worked out");
        mark(marks, true, "whole", "This record is whole");
        return List.copyOf(marks);
    }

    private static void mark(List<Bookmark> marks, boolean there, String id, String title) {
        if (there) {
            marks.add(new Bookmark(id, title));
        }
    }

    /** What a note is about, in words. */
    public String about(String about) {
        String rest = about.substring(about.indexOf(' ') + 1);
        if (about.startsWith("clearance ")) {
            return names.clearance(rest);
        }
        String words = about.startsWith("item ")
                ? MarkedPicture.about(data.unit(), "part " + rest)
                : MarkedPicture.about(data.unit(), about);
        return words.isEmpty() ? "the job" : words;
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
