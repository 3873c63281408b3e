package shimwright.bench.picture.part;

import java.util.Optional;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.part.StandardPart;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * A part alone on a small sheet of {@value #WIDTH} pixels, which can be read on a phone: half section above the axis and the face
 * beside it for what is round, an outline for what is not. A number stands there only where the unit file, the part's name or the
 * standard has it, and the sheet says which; whatever is drawn without its sizes is marked as not to scale.
 */
public final class PartPicture {
    /** Width of the sheet, pixels. */
    public static final int WIDTH = 336;

    private PartPicture() {}

    /**
     * The picture of an item.
     *
     * @param step the step that it is shown at, whose fasteners tell how many bolt holes it has; empty for whichever step brings it in
     * @param prefix of the picture's ids
     */
    public static String of(Unit unit, Item item, Optional<Step> step, String prefix, UnitSystem units) {
        return draw(PartSubject.of(unit, item, step), prefix, units);
    }

    /** The picture of a fastener. */
    public static String of(Unit unit, Fastener fastener, String prefix, UnitSystem units) {
        return draw(PartSubject.of(unit, fastener), prefix, units);
    }

    /** The picture of a standard part. */
    public static String of(StandardPart part, String prefix, UnitSystem units) {
        return draw(PartSubject.of(part), prefix, units);
    }

    private static String draw(PartSubject subject, String prefix, UnitSystem units) {
        return new PartSheet(subject, drawing(subject), units).draw(prefix);
    }

    static PartDrawing drawing(PartSubject subject) {
        RollingDrawings rolling = new RollingDrawings(subject);
        RingDrawings rings = new RingDrawings(subject);
        ScrewDrawings screws = new ScrewDrawings(subject);
        ToothedDrawings toothed = new ToothedDrawings(subject);
        OutlineDrawings outlines = new OutlineDrawings(subject);
        return switch (subject.form()) {
            case BALL_BEARING -> rolling.ball();
            case ANGULAR_BEARING -> rolling.angular();
            case ROLLER_BEARING -> rolling.roller();
            case TAPER_BEARING -> rolling.taper();
            case TAPER_CONE -> rolling.taperRing(false);
            case TAPER_CUP -> rolling.taperRing(true);
            case NEEDLE_CAGE -> rolling.needles(false, false);
            case NEEDLE_BUSH -> rolling.needles(true, false);
            case NEEDLE_BEARING -> rolling.needles(true, true);
            case THRUST_NEEDLES -> rolling.thrustNeedles();
            case THRUST_BALL -> rolling.thrustBall();
            case LIP_SEAL -> rings.seal();
            case O_RING -> rings.oRing();
            case SHAFT_RING -> rings.retaining(false);
            case BORE_RING -> rings.retaining(true);
            case RING -> rings.ring();
            case SHIM -> rings.shim();
            case TURNED -> rings.turned();
            case NUT -> screws.nut();
            case PLUG -> screws.plug();
            case BALL -> screws.ball();
            case PIN -> screws.pin();
            case SPRING_PIN -> screws.springPin();
            case KEY -> screws.key();
            case SCREW -> screws.screw(false);
            case SOCKET_SCREW -> screws.screw(true);
            case GEAR -> toothed.gear();
            case BEVEL_GEAR -> toothed.bevel();
            case HUB -> toothed.hub();
            case SLIDING_SLEEVE -> toothed.slidingSleeve();
            case BLOCKER_RING -> toothed.blockerRing();
            case SPLINE -> toothed.spline();
            case SHAFT -> toothed.shaft();
            default -> outline(outlines, subject.form());
        };
    }

    private static PartDrawing outline(OutlineDrawings outlines, PartForm form) {
        return switch (form) {
            case FLANGE -> outlines.flange();
            case TUBE -> outlines.tube();
            case FORK -> outlines.fork();
            case RAIL -> outlines.rail();
            case LEVER -> outlines.lever();
            case HOUSING -> outlines.housing();
            case PLATE -> outlines.plate();
            case SPRING -> outlines.spring();
            case DETENT -> outlines.detent();
            case HUB_KEYS -> outlines.hubKeys();
            case SWITCH -> outlines.electric();
            case BREATHER -> outlines.breather();
            case MAGNET -> outlines.magnet();
            case UNKNOWN -> outlines.unknown();
            default -> throw new IllegalStateException("no outline of " + form);
        };
    }
}
