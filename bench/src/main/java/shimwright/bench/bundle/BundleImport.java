package shimwright.bench.bundle;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.bundle.UnitBundle.BundledPicture;
import shimwright.bench.desk.Desk;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.UnitActs;
import shimwright.rebuild.job.PictureStore;
import shimwright.rebuild.unit.begin.FirstUnit;
import shimwright.rebuild.unit.edit.UnitEdit;
import shimwright.rebuild.workbench.PinnedUnit;

/**
 * How a bundle is taken in.
 *
 * @param clash what is done where the shop has another file of that unit type
 * @param maker of the unit, where it comes in under another name
 * @param model the same
 * @param why in the person's words; may be empty
 */
public record BundleImport(Clash clash, String maker, String model, String why) {
    /** What becomes of a unit type that the shop has already. */
    public enum Clash {
        /** It is asked. */
        ASK,
        /** The file takes the place of the shop's, which stays in the history. */
        OVER,
        /** It comes in under another name, beside the shop's. */
        OTHER
    }

    /** True where the shop has another file of the unit type that a bundle brings, and nobody has said what is to become of it. */
    public boolean asks(Desk desk, BundleFile.Read read) {
        return clash == Clash.ASK
                && Optional.ofNullable(desk.shelf().units().get(read.unit().id()))
                        .filter(now ->
                                !now.hash().equals(PinnedUnit.hash(read.bundle().file())))
                        .isPresent();
    }

    /**
     * Keeps the pictures of a sound bundle, which no entry names yet, and makes the act that takes it in.
     *
     * @return refused where the shop has that unit type and nothing is said, or the other name is not free
     */
    public Outcome<UnitActs.ImportUnit> act(Desk desk, BundleFile.Read read) {
        if (asks(desk, read)) {
            return Outcome.refused(new Refusal(
                    "clash",
                    "unit type",
                    "this shop has another file of " + read.bundle().name(),
                    "Say whether it takes its place, or comes in under another name"));
        }
        String type =
                clash == Clash.OTHER ? FirstUnit.id(maker, model) : read.unit().id();
        List<Refusal> faults = new ArrayList<>(clash == Clash.OTHER ? naming(desk, type) : List.of());
        Outcome<String> text = clash == Clash.OTHER
                ? UnitEdit.text(read.unit(), new UnitEdit.CopyAs(maker, model))
                : Outcome.ok(new String(read.bundle().file(), StandardCharsets.UTF_8));
        faults.addAll(faults.isEmpty() ? text.refusals() : List.of());
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        Map<String, String> shows = new LinkedHashMap<>();
        Map<String, String> captions = new LinkedHashMap<>();
        for (BundledPicture picture : read.bundle().pictures()) {
            Outcome<PictureStore.Picture> kept = desk.pictures().keep("picture", picture.content());
            if (kept instanceof Outcome.Ok<PictureStore.Picture> ok) {
                shows.put(ok.value().hash(), picture.about());
                captions.put(ok.value().hash(), picture.caption());
            }
            faults.addAll(kept.refusals());
        }
        Outcome<String> manifest = desk.versions().keepManifest(read.manifest());
        faults.addAll(manifest.refusals());
        String before = Optional.ofNullable(desk.shelf().units().get(type))
                .map(PinnedUnit::hash)
                .orElse("");
        return faults.isEmpty()
                ? Outcome.ok(new UnitActs.ImportUnit(
                        type,
                        before,
                        text.orElseThrow(),
                        read.bundle().from(),
                        manifest.orElseThrow(),
                        shows,
                        captions,
                        why))
                : Outcome.refused(faults);
    }

    private List<Refusal> naming(Desk desk, String type) {
        List<Refusal> faults = new ArrayList<>();
        if (maker.isBlank()) {
            faults.add(Refusal.of("maker", "nothing typed", "Write who made it, or \"maker not known\""));
        }
        if (model.isBlank()) {
            faults.add(Refusal.of("model", "nothing typed", "Write what it is called, or what is cast on it"));
        }
        if (faults.isEmpty() && desk.shelf().type(type).isPresent()) {
            faults.add(
                    Refusal.of("model", "a unit file of that name is on the shelf already", "Call this one otherwise"));
        }
        return faults;
    }
}
