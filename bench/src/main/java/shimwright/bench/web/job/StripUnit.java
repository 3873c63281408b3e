package shimwright.bench.web.job;

import io.javalin.http.Context;
import java.util.Objects;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.act.IntakeActs;
import shimwright.rebuild.unit.edit.UnitEdit;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.workbench.PinnedUnit;

/** What a strip-down says of its unit, put into the file of the shelf; the job goes with it. */
final class StripUnit {
    private final Desk desk;
    private final Door door;

    StripUnit(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    /** The file of the shelf, which a change goes into; the job's own where the shelf has none. */
    UnitType shelved(JobOnBench bench) {
        return desk.shelf()
                .type(bench.unit().type().id())
                .orElse(bench.bench().file().type());
    }

    /** Changes the file of the shelf and moves the job to it; refused with every problem that the change would bring. */
    Outcome<Desk.Done> put(Context ctx, Form form, JobOnBench bench, UnitEdit edit) {
        return put(ctx, form, bench, edit, bench.job().variant());
    }

    /** The same, and the job is of that variant from then on. */
    Outcome<Desk.Done> put(Context ctx, Form form, JobOnBench bench, UnitEdit edit, String variant) {
        String type = bench.unit().type().id();
        Desk.Signed signed = door.signed(ctx, form);
        return desk.versions()
                .change(type, signed, edit.words(), "", now -> UnitEdit.text(now, edit))
                .flatMap(now -> {
                    PinnedUnit pinned =
                            Objects.requireNonNull(desk.shelf().units().get(type), "it was laid there a moment ago");
                    String why = "at the bench it was found: " + edit.words();
                    return desk.act(
                            bench.job().id(),
                            new IntakeActs.MoveUnit(pinned.hash(), variant, why),
                            new Desk.Signed(signed.id() + "-job", signed.by(), signed.units(), signed.waited()));
                });
    }
}
