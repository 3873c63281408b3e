package shimwright.bench.web.shop;

import io.javalin.http.Context;
import java.util.List;
import java.util.Objects;
import shimwright.bench.desk.Desk;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.IntakeActs;
import shimwright.rebuild.unit.edit.UnitEdit;
import shimwright.rebuild.workbench.PinnedUnit;

/** A change of a unit file of the shelf as it comes from a form; the job from which one comes goes with it. */
final class UnitChange {
    private final Desk desk;
    private final Door door;

    UnitChange(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    /** Keeps the change; the faults that stand against it, none where it is kept. */
    List<Refusal> keep(Form form, String type, UnitEdit edit, Context ctx) {
        return desk.versions()
                .change(type, door.signed(ctx, form), edit.words(), form.raw("why"), now -> UnitEdit.text(now, edit))
                .refusals();
    }

    /**
     * The job from which one comes goes with the file of the shelf, and the page says what became of both.
     *
     * @param page of the unit type on which one goes on; empty for its first
     */
    void follow(Context ctx, Form form, String type, String words, String page) {
        String said = "Kept: " + words;
        String job = form.raw("job");
        if (!job.isEmpty()) {
            Outcome<Desk.Done> moved = moved(ctx, form, job, type, words);
            said = said
                    + (moved.isOk()
                            ? ". The job stands on the changed file"
                            : ". The job stays on the file it had: "
                                    + moved.refusals().get(0).sentence());
        }
        door.on(ctx, "/units/type/" + type + page + (job.isEmpty() ? "" : "?job=" + Pages.encoded(job)), said);
    }

    private Outcome<Desk.Done> moved(Context ctx, Form form, String job, String type, String words) {
        PinnedUnit now = Objects.requireNonNull(desk.shelf().units().get(type), "it was laid there a moment ago");
        Desk.Signed signed = door.signed(ctx, form);
        Desk.Signed own = new Desk.Signed(signed.id() + "-job", signed.by(), signed.units(), signed.waited());
        return desk.bench(job)
                .map(bench -> desk.act(
                        job,
                        new IntakeActs.MoveUnit(
                                now.hash(), bench.job().variant(), "at the bench it was found: " + words),
                        own))
                .orElseGet(() -> Outcome.refused(Refusal.of("job", "there is no job " + job, "Go back to the shop")));
    }
}
