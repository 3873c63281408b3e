package shimwright.bench.web.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.picture.section.SectionDrawing;
import shimwright.bench.picture.section.SectionState;
import shimwright.bench.picture.section.SectionView;
import shimwright.bench.web.clearance.ReadingPlots;
import shimwright.bench.web.kit.Show;
import shimwright.mechanics.working.Line;
import shimwright.rebuild.clearance.EtchedDeviation;
import shimwright.rebuild.inspect.Identification;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.record.HandBackRecord;
import shimwright.rebuild.record.HandBackRecord.HoldReading;
import shimwright.rebuild.record.HandBackRecord.Setting;

/**
 * The record as page and paper show it.
 *
 * @param data the record
 * @param told how the variant was told
 * @param settings clearances with their drawings
 */
public record RecordView(HandBackRecord data, String told, List<Drawn> settings) {

    /** Width of a drawing in px: A4 between the margins of paper.jte is 178 mm, 672 px. */
    private static final double PAPER = 660;

    /** A clearance with its pictures and the working kept when it was accepted. */
    public record Drawn(Setting setting, String drawing, String limits, List<Line> working) {}

    static RecordView of(JobOnBench bench, Show show) {
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
        return new RecordView(data, told, List.copyOf(drawn));
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
}
