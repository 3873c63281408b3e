package shimwright.rebuild.act;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.unit.edit.FileChanges;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.workbench.PinnedUnit;

/** The shop's unit files: one is changed, put there, or put back as it was. */
public final class UnitActs {
    /** The longest unit file that comes through a form, in characters. */
    private static final int LONGEST = 190_000;

    private UnitActs() {}

    /** The file of a unit type becomes another text, which is read with all checks first. */
    @MakesEntries(Entry.UnitChanged.class)
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
            implements Act.OfShop {
        @Override
        public Outcome<ActResult> on(ActContext around) {
            byte[] content = text.getBytes(StandardCharsets.UTF_8);
            Outcome<UnitType> read = UnitFiles.read(type + ".yaml", content).outcome();
            if (!(read instanceof Outcome.Ok<UnitType> ok)) {
                return Outcome.refused(read.refusals());
            }
            if (!ok.value().id().equals(type)) {
                return Outcome.refused(new Refusal(
                        "type",
                        "unit type",
                        "the file is one of " + ok.value().id(),
                        "Say the type that the file says"));
            }
            Optional<PinnedUnit> now = around.floor().unit(type);
            if (!before.equals(now.map(PinnedUnit::hash).orElse(""))) {
                return Outcome.refused(new Refusal(
                        "before",
                        "unit file",
                        "it was changed meanwhile",
                        "Load the page again, and look what was changed"));
            }
            List<String> changes =
                    now.map(unit -> FileChanges.of(unit.type(), ok.value())).orElse(List.of());
            return Outcome.ok(new ActResult(
                    JobLog.SHOP,
                    List.of(new Entry.UnitChanged(type, before, PinnedUnit.hash(content), what, changes, why)),
                    "Kept: " + what));
        }
    }
}
