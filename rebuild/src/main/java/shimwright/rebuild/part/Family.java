package shimwright.rebuild.part;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** A family of standard parts: its table, its sizes in words, and how a bench tells one of it from another. */
public enum Family {
    DEEP_GROOVE(
            "deep groove ball bearing",
            "deep_groove",
            "(DEEP GROOVE )?(BALL )?" + Words.BEARING + "|DIN ?625(-1)?",
            "d_mm:bore, D_mm:outside, B_mm:width, r_s_min_mm:least chamfer, rows:rows",
            "d_mm D_mm B_mm"),
    ANGULAR_CONTACT(
            "angular contact ball bearing",
            "angular_contact",
            "(ANGULAR( CONTACT)? )?(BALL )?" + Words.BEARING + "|DIN ?628(-[13])?",
            "d_mm:bore, D_mm:outside, B_mm:width, r_s_min_mm:least chamfer, r1_s_min_mm:least chamfer of the open side, rows:rows",
            "d_mm D_mm B_mm"),
    CYLINDRICAL_ROLLER(
            "cylindrical roller bearing",
            "cylindrical_roller",
            "(CYLINDRICAL )?(ROLLER )?" + Words.BEARING + "|DIN ?5412(-1)?",
            "d_mm:bore, D_mm:outside, B_mm:width, F_mm:raceway of the inner ring, E_mm:raceway of the outer ring,"
                    + " r_s_min_mm:least chamfer, r1_s_min_mm:least chamfer of the loose ring",
            "d_mm D_mm B_mm"),
    TAPERED(
            "tapered roller bearing",
            "tapered",
            "(TAPER(ED)? )?(ROLLER )?" + Words.BEARING + "|TAPER(ED)?( ROLLERS?)?|DIN ?720",
            "d_mm:bore, D_mm:outside, T_mm:width over all, B_mm:width of the cone, C_mm:width of the cup,"
                    + " E_mm:small inside of the cup, contact_angle_deg:contact angle, r_s_min_mm:least chamfer of the cone,"
                    + " r1_s_min_mm:least chamfer of the cup",
            "d_mm D_mm T_mm|d_mm D_mm B_mm"),
    NEEDLE(
            "needle bearing, cage or inner ring",
            "needle",
            "(NEEDLE )?(ROLLER )?" + Words.BEARING
                    + "|(DRAWN CUP )?NEEDLES?( ROLLERS?| CAGES?)?|INNER RINGS?|DIN ?61[78](-1)?|DIN ?5405-1",
            "d_mm:bore of the inner ring, Fw_mm:inside the rollers, D_mm:outside, Ew_mm:outside the rollers, width_mm:width,"
                    + " r_s_min_mm:least chamfer",
            "Fw_mm D_mm width_mm|d_mm D_mm width_mm|d_mm Fw_mm width_mm|Fw_mm Ew_mm width_mm"),
    THRUST_NEEDLE(
            "thrust needle cage or washer",
            "thrust_needle",
            "(THRUST )?(NEEDLE )?(ROLLER )?(THRUST )?" + Words.BEARING
                    + "|THRUST( NEEDLES?| WASHERS?| CAGES?)?|WASHERS?|DIN ?5405(-[23])?",
            "d_mm:inside, D_mm:outside, thickness_mm:thickness",
            "d_mm D_mm thickness_mm"),
    THRUST_BALL(
            "thrust ball bearing",
            "thrust_ball",
            "(THRUST )?(BALL )?(THRUST )?" + Words.BEARING + "|THRUST|DIN ?711",
            "d_mm:bore of the shaft washer, D_mm:outside of the housing washer, T_mm:height, D1_mm:bore of the housing washer,"
                    + " d1_mm:outside of the shaft washer",
            "d_mm D_mm T_mm"),
    LIP_SEAL(
            "shaft seal",
            "lip_seals",
            "(ROTARY |RADIAL )?(OIL |LIP |SHAFT )*SEALS?|DIN ?3760( AS?)?|ISO ?6194(-1)?",
            "d_shaft_mm:shaft, D_bore_mm:bore of the housing, b_width_mm:width",
            "d_shaft_mm D_bore_mm b_width_mm"),
    O_RING(
            "O-ring",
            "orings",
            "O[ -]?RINGS?|OR(?= ?[0-9])|ISO ?3601(-1)?|AS ?568[A-D]?",
            "id_mm:inside, cs_mm:cord, id_tol_mm:allowed on the inside plus or minus, cs_tol_mm:allowed on the cord plus or minus",
            "id_mm cs_mm"),
    SHAFT_RING(
            "retaining ring for a shaft",
            "circlip_shaft",
            "(SHAFT |OUTSIDE |OUTER |EXTERNAL )?(C-?CLIPS?|CIRCLIPS?|SNAP RINGS?|RETAINING RINGS?|RINGS?)( FOR (A )?SHAFTS?)?|DIN ?471",
            "d1_mm:shaft, d3_free_mm:inside when free, " + Words.RING,
            "d1_mm s_mm|d3_free_mm s_mm|d2_groove_mm m_groove_width_min_mm"),
    BORE_RING(
            "retaining ring for a bore",
            "circlip_bore",
            "(BORE |INSIDE |INNER |INTERNAL )?(C-?CLIPS?|CIRCLIPS?|SNAP RINGS?|RETAINING RINGS?|RINGS?)( FOR (A )?BORES?)?|DIN ?472",
            "d1_mm:bore, d3_free_mm:outside when free, " + Words.RING,
            "d1_mm s_mm|d3_free_mm s_mm|d2_groove_mm m_groove_width_min_mm"),
    KEY(
            "parallel key",
            "keys",
            "(PARALLEL |FEATHER |SHAFT )?KEYS?|DIN ?6885(-1)?( ?-?[AB](?= ?[0-9]))?|ISO ?773",
            "b_mm:width, h_mm:height, shaft_over_mm:shafts over, shaft_to_mm:shafts up to, t1_shaft_mm:depth in the shaft,"
                    + " t2_hub_mm:depth in the hub, t_tol_plus_mm:allowed on the depths plus",
            "b_mm h_mm"),
    BALL("steel ball", "balls", "(STEEL |DETENT |BEARING )?BALLS?", "D_mm:diameter, mass_g:mass", "D_mm"),
    DOWEL(
            "dowel pin",
            "dowel_pins",
            "(DOWEL |PARALLEL )?PINS?|DOWELS?|ISO ?2338|DIN ?7(?![0-9])",
            "d_mm:diameter, chamfer_c_mm:chamfer, length_from_mm:lengths from, length_to_mm:lengths up to",
            "d_mm"),
    HEX_SCREW(
            "hexagon head screw",
            "hex_bolts",
            "(HEX(AGON)? )?(HEAD )?(BOLTS?|SCREWS?)|HEX(AGON)?( HEAD)?|THREADS?|DIN ?(93[13]|96[01])|ISO ?40(14|17)|ISO ?8(676|765)|DIN ?6921|EN ?1665|ISO ?4162",
            Words.THREAD
                    + ", AF_s_mm:across flats, head_k_mm:height of the head, corner_e_min_mm:over corners at least,"
                    + " flange_dc_mm:flange",
            "thread_d_mm pitch_mm|thread_d_mm AF_s_mm"),
    SOCKET_SCREW(
            "socket head screw",
            "socket_screws",
            "(ALLEN |SOCKET )?(HEAD )?(CAP )?(BOLTS?|SCREWS?)|ALLEN|SOCKET( HEAD)?|THREADS?|ISO ?4762|DIN ?912",
            Words.THREAD
                    + ", head_dk_max_mm:head, head_dk_max_knurled_mm:knurled head, head_k_max_mm:height of the head,"
                    + " key_s_mm:key, socket_depth_t_min_mm:depth of the socket at least",
            "thread_d_mm pitch_mm|thread_d_mm key_s_mm"),
    PLUG(
            "screw plug or pipe thread",
            "plugs",
            "((DRAIN|FILLER|LEVEL|SCREW|PIPE|OIL|MAGNETIC) )*PLUGS?|DIN ?910|DIN ?7604( A)?|DIN ?909|ISO ?228(-1)?|ISO ?7(-1)?(?= ?R)",
            Words.THREAD + ", minor_d1_mm:minor diameter, gauge_length_mm:gauge length, useful_thread_mm:useful thread,"
                    + " collar_d_mm:collar, thread_length_mm:length of thread, total_length_mm:length over all,"
                    + " head_k_mm:height of the head, key_s_mm:across flats, key_s_alt_mm:across flats of newer ones",
            "thread_d_mm pitch_mm|thread_d_mm key_s_mm"),
    SEALING_WASHER(
            "sealing washer",
            "sealing_washers",
            "((SEALING|COPPER|ALUMINIUM|DRAIN|CRUSH) )*WASHERS?|(SEALING|COPPER) RINGS?|DIN ?7603( ?-?A)?",
            "d_nominal_mm:for thread, d1_actual_mm:inside, d2_mm:outside, h_mm:thickness",
            "d_nominal_mm d2_mm h_mm|d1_actual_mm d2_mm h_mm"),
    SHIM_RING(
            "shim ring",
            "shim_rings",
            "SHIMS?( RINGS?| WASHERS?)?|DIN ?988|PS(?= ?[0-9])",
            "d_mm:inside, D_mm:outside, thickness_mm:thickness",
            "d_mm D_mm"),
    SPLINE(
            "involute spline",
            "splines_din5480",
            "(INVOLUTE )?SPLINES?|DIN ?5480(-[12])?|TEETH|Z ?=? ?(?=[0-9])",
            "d_B_mm:reference diameter, m_mm:module, z:teeth, x_shaft:profile shift of the shaft, d_mm:pitch diameter,"
                    + " d_b_mm:base diameter, shaft_tip_da1_mm:tip of the shaft, shaft_root_df1_cut_mm:root of the shaft when cut,"
                    + " hub_tip_da2_mm:tip of the hub, hub_root_df2_mm:root of the hub,"
                    + " space_e2_tooth_s1_mm:tooth of the shaft and space of the hub",
            "shaft_tip_da1_mm shaft_root_df1_cut_mm|hub_tip_da2_mm hub_root_df2_mm");

    private final String words;
    private final String table;
    private final Pattern spoken;

    @SuppressWarnings("ImmutableEnumChecker") // made once and handed out unmodifiable, in the order of the words
    private final Map<String, String> sizes;

    @SuppressWarnings("ImmutableEnumChecker") // lists that nobody can change
    private final List<List<String>> measured;

    Family(String words, String table, String spoken, String sizes, String measured) {
        this.words = words;
        this.table = "parts/" + table + ".csv";
        this.spoken = Pattern.compile("(^|[^A-Z0-9])(" + spoken + ")(?![A-Z])");
        Map<String, String> named = new LinkedHashMap<>();
        for (String size : sizes.split(",")) {
            String[] pair = size.strip().split(":", 2);
            named.put(pair[0], pair[1]);
        }
        this.sizes = Collections.unmodifiableMap(named);
        this.measured = Arrays.stream(measured.split("\\|"))
                .map(way -> List.of(way.split(" ")))
                .toList();
    }

    /** What a person calls one of it. */
    public String words() {
        return words;
    }

    /** The table of it below the reference tables. */
    String table() {
        return table;
    }

    /** The words, in capitals, by which a person says that it is one of this family. */
    Pattern spoken() {
        return spoken;
    }

    /** Its sizes by column of the table, in words. */
    Map<String, String> sizes() {
        return sizes;
    }

    /** The ways in which one of it is measured at the bench: columns of what a caliper reads together. */
    List<List<String>> measured() {
        return measured;
    }

    /** True where a length may stand behind the call-out. */
    boolean hasLength() {
        return switch (this) {
            case KEY, DOWEL, HEX_SCREW, SOCKET_SCREW -> true;
            default -> false;
        };
    }

    /** True for bearings, whose stamps carry letters behind the number. */
    boolean isBearing() {
        return switch (this) {
            case DEEP_GROOVE, ANGULAR_CONTACT, CYLINDRICAL_ROLLER, TAPERED, NEEDLE, THRUST_NEEDLE, THRUST_BALL -> true;
            default -> false;
        };
    }

    private static final class Words {
        private static final String BEARING = "(BEARINGS?|BRGS?)";
        private static final String RING =
                "s_mm:thickness, s_tol_minus_mm:allowed on the thickness, d2_groove_mm:groove,"
                        + " d2_tol_plus_mm:allowed on the groove plus, d2_tol_minus_mm:allowed on the groove minus,"
                        + " m_groove_width_min_mm:least width of the groove, n_min_mm:least distance to the edge,"
                        + " b_mm:width of the ring, a_max_mm:lug at most, d5_min_mm:hole of the lug, d4_clear_mm:room it needs";
        private static final String THREAD = "thread_d_mm:thread, pitch_mm:pitch, tpi:threads an inch,"
                + " pitch_dia_d2_mm:pitch diameter, minor_dia_D1_mm:minor diameter, stress_area_mm2:stress area";

        private Words() {}
    }
}
