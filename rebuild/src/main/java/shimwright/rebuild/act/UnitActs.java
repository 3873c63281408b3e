package shimwright.rebuild.act;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.UnitPicture;
import shimwright.rebuild.unit.edit.FileChanges;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.workbench.PinnedUnit;

/** The shop's unit files: one is changed, put there, or put back as it was; pictures that go with it come in and go out. */
public final class UnitActs {
    /** The longest unit file that comes through a form, in characters. */
    private static final int LONGEST = 190_000;

    private UnitActs() {}

    /** The file of a unit type becomes another text, which is read with all checks first. */
    @MakesEntries({Entry.UnitChanged.class, Entry.UnitPictured.class})
    public record ChangeUnit(
            @ActInput(value = "unit type", missing = "Say of which unit type")
            String type,

            @ActInput("hash of the file that is changed; empty where the shop has none of that type")
            String before,

            @ActInput(value = "unit file", missing = "Send the text of the whole file", longest = LONGEST)
            String text,

            @ActInput(value = "what is changed", missing = "Say what is changed")
            String what,

            @ActInput("why it is changed") String why)
            implements LaysFile {
        @Override
        public Outcome<ActResult> on(ActContext around) {
            return changed(this, before, what, why, around).map(change -> {
                List<Entry> entries = new ArrayList<>(List.of(change));
                List<UnitPicture> now = around.floor().shop().unitPictures(type);
                around.floor()
                        .shop()
                        .unitPicturesWith(type, change.after())
                        .filter(then -> !then.equals(now))
                        .ifPresent(then -> entries.add(new Entry.UnitPictured(type, then, "", "", what)));
                return new ActResult(JobLog.SHOP, entries, "Kept: " + what);
            });
        }
    }

    /**
     * A unit file comes from another shop with its pictures, which are kept already. Where the shop has the very file, the
     * pictures alone come in.
     */
    @MakesEntries({Entry.UnitChanged.class, Entry.UnitPictured.class})
    public record ImportUnit(
            @ActInput(value = "unit type", missing = "Say of which unit type")
            String type,

            @ActInput("hash of the file that it takes the place of; empty where the shop has none of that type")
            String before,

            @ActInput(value = "unit file", missing = "Send the text of the whole file", longest = LONGEST)
            String text,

            @ActInput("what the other shop calls itself") String from,

            @ActInput("hash of what the other shop said of it, which is kept")
            String manifest,

            @ActInput("by the hash of each picture: item ID, step ID or unit")
            Map<String, String> pictures,

            @ActInput("by the hash of each picture: its caption")
            Map<String, String> captions,

            @ActInput("why it is taken in") String why)
            implements LaysFile {
        @Override
        public Outcome<ActResult> on(ActContext around) {
            List<Entry> entries = new ArrayList<>();
            String what = from.isBlank() ? "from another shop" : "from " + from;
            if (!before.isEmpty() && before.equals(PinnedUnit.hash(text.getBytes(StandardCharsets.UTF_8)))) {
                if (around.floor()
                        .unit(type)
                        .filter(now -> now.hash().equals(before))
                        .isEmpty()) {
                    return changedMeanwhile();
                }
            } else {
                Outcome<Entry.UnitChanged> changed = changed(this, before, what, why, around);
                if (!changed.isOk()) {
                    return Outcome.refused(changed.refusals());
                }
                entries.add(changed.orElseThrow());
            }
            List<Refusal> faults = places();
            List<UnitPicture> was = around.floor().shop().unitPictures(type);
            List<UnitPicture> now = with(was);
            if (now.size() > was.size()) {
                entries.add(new Entry.UnitPictured(type, now, manifest, from, why));
            }
            if (faults.isEmpty() && entries.isEmpty()) {
                faults.add(Refusal.of("pictures", "this shop has all of it already", "Nothing is to be done"));
            }
            return faults.isEmpty()
                    ? Outcome.ok(new ActResult(JobLog.SHOP, entries, "Kept: " + what))
                    : Outcome.refused(faults);
        }

        /** Pictures of parts and steps that the file does not have. */
        private List<Refusal> places() {
            Set<String> places = new HashSet<>(Set.of(UnitPicture.UNIT));
            UnitFiles.read(type + ".yaml", text).outcome().map(unit -> {
                unit.items().forEach(item -> places.add(UnitPicture.item(item.id())));
                unit.steps().forEach(step -> places.add(UnitPicture.step(step.id())));
                return unit;
            });
            List<Refusal> faults = new ArrayList<>();
            pictures.forEach((hash, about) -> {
                if (!places.contains(about)) {
                    faults.add(new Refusal(
                            "pictures",
                            "picture",
                            "it is said to show \"" + about + "\", which the unit file does not have",
                            "Say an item or step of the file, or unit"));
                }
            });
            return faults;
        }

        private List<UnitPicture> with(List<UnitPicture> was) {
            List<UnitPicture> now = new ArrayList<>(was);
            pictures.forEach((hash, about) -> {
                boolean there = was.stream()
                        .anyMatch(
                                one -> one.picture().equals(hash) && one.about().equals(about));
                if (!there) {
                    now.add(new UnitPicture(hash, about, captions.getOrDefault(hash, ""), from));
                }
            });
            return List.copyOf(now);
        }
    }

    /** Pictures do not go with a unit type any more; a file of before brings those that went with it. */
    @MakesEntries(Entry.UnitPictured.class)
    public record DropUnitPictures(
            @ActInput(value = "unit type", missing = "Say of which unit type")
            String type,

            @ActInput(value = "hash of each picture", missing = "Say which")
            List<String> pictures,

            @ActInput("why") String why)
            implements Act.OfShop {
        @Override
        public Outcome<ActResult> on(ActContext around) {
            List<UnitPicture> left = around.floor().shop().unitPictures(type).stream()
                    .filter(one -> !pictures.contains(one.picture()))
                    .toList();
            return Outcome.ok(new ActResult(
                    JobLog.SHOP, List.of(new Entry.UnitPictured(type, left, "", "", why)), "Out of the unit again"));
        }
    }

    private static Outcome<Entry.UnitChanged> changed(
            LaysFile act, String before, String what, String why, ActContext around) {
        byte[] content = act.text().getBytes(StandardCharsets.UTF_8);
        Outcome<UnitType> read = UnitFiles.read(act.type() + ".yaml", content).outcome();
        if (!(read instanceof Outcome.Ok<UnitType> ok)) {
            return Outcome.refused(read.refusals());
        }
        if (!ok.value().id().equals(act.type())) {
            return Outcome.refused(new Refusal(
                    "type", "unit type", "the file is one of " + ok.value().id(), "Say the type that the file says"));
        }
        Optional<PinnedUnit> now = around.floor().unit(act.type());
        if (!before.equals(now.map(PinnedUnit::hash).orElse(""))) {
            return changedMeanwhile();
        }
        List<String> changes =
                now.map(unit -> FileChanges.of(unit.type(), ok.value())).orElse(List.of());
        return Outcome.ok(new Entry.UnitChanged(act.type(), before, PinnedUnit.hash(content), what, changes, why));
    }

    private static <T> Outcome<T> changedMeanwhile() {
        return Outcome.refused(new Refusal(
                "before", "unit file", "it was changed meanwhile", "Load the page again, and look what was changed"));
    }
}
