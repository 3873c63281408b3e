package shimwright.rebuild.rules;

import java.util.List;
import java.util.Optional;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.UnitType.CheckKind;
import shimwright.rebuild.workbench.Workbench;

/** What forbids an entry about a hold point. */
final class HoldRules {
    private HoldRules() {}

    static List<Refusal> read(Workbench bench, Entry.CheckRead e) {
        Optional<Step> step = bench.step(e.step()).filter(s -> s.hold().equals(e.hold()));
        if (step.isEmpty() || e.hold().isBlank()) {
            return Rules.one(
                    "hold",
                    "hold point " + e.hold(),
                    "step " + e.step() + " has no such hold point",
                    "Go back to the build page");
        }
        Optional<Check> check = bench.unit().holdPoint(e.hold()).checks().stream()
                .filter(c -> c.id().equals(e.check()))
                .findFirst();
        if (check.isEmpty()) {
            return Rules.one(
                    "check", "hold point " + e.hold(), "it has no check " + e.check(), "Go back to the build page");
        }
        if (!check.get().clearance().isBlank()) {
            return Rules.one("check", check.get().what(), "it is a clearance", "Read and accept it on its own page");
        }
        if (!check.get().asked()) {
            return Rules.one(
                    "check",
                    check.get().what(),
                    "it follows from what is read elsewhere",
                    "Read that, or pass it with your reason");
        }
        boolean read = check.get().kind() == CheckKind.NONE || !e.values().isEmpty();
        return read && e.values().stream().allMatch(Double::isFinite)
                ? List.of()
                : Rules.one("values", check.get().what(), "a reading is missing or not a number", "Read it again");
    }

    static List<Refusal> overruled(Workbench bench, Entry.HoldOverruled e) {
        Optional<Step> step = bench.step(e.step()).filter(s -> s.hold().equals(e.hold()));
        if (step.isEmpty() || e.hold().isBlank()) {
            return Rules.one(
                    "hold",
                    "hold point " + e.hold(),
                    "step " + e.step() + " has no such hold point",
                    "Go back to the build page");
        }
        return Rules.reason(e.reason(), "Say why it may be passed; it stands on the record");
    }
}
