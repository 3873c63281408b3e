package shimwright.bench.picture.part;

import java.util.Map;
import shimwright.bench.picture.part.PartSize.Origin;
import shimwright.bench.picture.part.PartSize.Place;
import shimwright.rebuild.part.Family;
import shimwright.rebuild.part.StandardPart;

/** What the columns of the standard tables are on a drawing. */
final class StandardSizes {
    private static final Map<String, Place> COMMON = Map.ofEntries(
            Map.entry("d_mm", Place.INSIDE),
            Map.entry("D_mm", Place.OUTSIDE),
            Map.entry("B_mm", Place.WIDTH),
            Map.entry("width_mm", Place.WIDTH),
            Map.entry("thickness_mm", Place.WIDTH),
            Map.entry("rows", Place.ROWS),
            Map.entry("T_mm", Place.WIDTH),
            Map.entry("C_mm", Place.CUP_WIDTH),
            Map.entry("d_shaft_mm", Place.INSIDE),
            Map.entry("D_bore_mm", Place.OUTSIDE),
            Map.entry("b_width_mm", Place.WIDTH),
            Map.entry("id_mm", Place.INSIDE),
            Map.entry("cs_mm", Place.CORD),
            Map.entry("thread_d_mm", Place.THREAD),
            Map.entry("pitch_mm", Place.PITCH),
            Map.entry("AF_s_mm", Place.FLATS),
            Map.entry("head_k_mm", Place.HEAD_HEIGHT),
            Map.entry("head_k_max_mm", Place.HEAD_HEIGHT),
            Map.entry("head_dk_max_mm", Place.HEAD),
            Map.entry("collar_d_mm", Place.COLLAR),
            Map.entry("flange_dc_mm", Place.COLLAR),
            Map.entry("thread_length_mm", Place.LENGTH),
            Map.entry("useful_thread_mm", Place.LENGTH),
            Map.entry("d1_actual_mm", Place.INSIDE),
            Map.entry("d2_mm", Place.OUTSIDE));

    private StandardSizes() {}

    /** The form of a standard part. */
    static PartForm form(StandardPart part) {
        String name = part.designation();
        return switch (part.family()) {
            case DEEP_GROOVE -> PartForm.BALL_BEARING;
            case ANGULAR_CONTACT -> PartForm.ANGULAR_BEARING;
            case CYLINDRICAL_ROLLER -> PartForm.ROLLER_BEARING;
            case TAPERED -> PartForm.TAPER_BEARING;
            case NEEDLE -> needle(part);
            case THRUST_NEEDLE -> name.startsWith("AXK") ? PartForm.THRUST_NEEDLES : PartForm.RING;
            case THRUST_BALL -> PartForm.THRUST_BALL;
            case LIP_SEAL -> PartForm.LIP_SEAL;
            case O_RING -> PartForm.O_RING;
            case SHAFT_RING -> PartForm.SHAFT_RING;
            case BORE_RING -> PartForm.BORE_RING;
            case KEY -> PartForm.KEY;
            case BALL -> PartForm.BALL;
            case DOWEL -> PartForm.PIN;
            case HEX_SCREW -> PartForm.SCREW;
            case SOCKET_SCREW -> PartForm.SOCKET_SCREW;
            case PLUG -> PartForm.PLUG;
            case SEALING_WASHER -> PartForm.RING;
            case SHIM_RING -> PartForm.SHIM;
            case SPLINE -> PartForm.SPLINE;
        };
    }

    private static PartForm needle(StandardPart part) {
        if (part.size("Ew_mm").isPresent()) {
            return PartForm.NEEDLE_CAGE;
        }
        if (part.size("D_mm").isEmpty()) {
            return PartForm.RING;
        }
        return part.size("d_mm").isPresent() ? PartForm.NEEDLE_BEARING : PartForm.NEEDLE_BUSH;
    }

    /** Adds the sizes of a row that can be shown on a drawing. */
    static void add(PartSizes to, StandardPart part, Origin origin) {
        Map<String, Place> own = own(part);
        part.sizes().forEach(size -> {
            Place place = own.getOrDefault(size.column(), COMMON.get(size.column()));
            boolean pitchCircle =
                    part.family() == Family.SPLINE && size.column().equals("d_mm");
            if (place != null && !pitchCircle) {
                to.with(place, size.value(), origin);
            }
        });
    }

    /** Columns that mean something else in a family than elsewhere. */
    private static Map<String, Place> own(StandardPart part) {
        return switch (part.family()) {
            case TAPERED -> Map.of("B_mm", Place.CONE_WIDTH, "E_mm", Place.CUP_INSIDE);
            case CYLINDRICAL_ROLLER -> Map.of("F_mm", Place.INNER_RACEWAY, "E_mm", Place.OUTER_RACEWAY);
            case NEEDLE ->
                switch (needle(part)) {
                    case NEEDLE_CAGE -> Map.of("Fw_mm", Place.INSIDE, "Ew_mm", Place.OUTSIDE);
                    case RING -> Map.of("Fw_mm", Place.OUTSIDE);
                    case NEEDLE_BEARING -> Map.of("Fw_mm", Place.INNER_RACEWAY);
                    default -> Map.of("Fw_mm", Place.INSIDE);
                };
            case SHAFT_RING, BORE_RING ->
                Map.of(
                        "d1_mm", Place.FITS,
                        "s_mm", Place.WIDTH,
                        "d3_free_mm", part.family().name().startsWith("SHAFT") ? Place.INSIDE : Place.OUTSIDE,
                        "b_mm", Place.RING_WIDTH,
                        "a_max_mm", Place.LUG,
                        "d5_min_mm", Place.HOLE,
                        "d2_groove_mm", Place.GROOVE,
                        "m_groove_width_min_mm", Place.GROOVE_WIDTH);
            case KEY -> Map.of("b_mm", Place.WIDTH, "h_mm", Place.HEIGHT);
            case BALL -> Map.of("D_mm", Place.OUTSIDE);
            case DOWEL -> Map.of("d_mm", Place.OUTSIDE, "chamfer_c_mm", Place.CHAMFER);
            case SOCKET_SCREW -> Map.of("key_s_mm", Place.SOCKET);
            case PLUG -> Map.of("key_s_mm", Place.FLATS);
            case SEALING_WASHER -> Map.of("d_nominal_mm", Place.FITS, "h_mm", Place.WIDTH);
            case THRUST_BALL -> Map.of("D1_mm", Place.INNER_RACEWAY);
            case SPLINE ->
                Map.of(
                        "shaft_tip_da1_mm", Place.OUTSIDE,
                        "shaft_root_df1_cut_mm", Place.ROOT,
                        "z", Place.TEETH);
            default -> Map.of();
        };
    }
}
