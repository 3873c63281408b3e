package shimwright.mechanics.fit;

/**
 * A race in a sleeve in a boss, three rings pressed into each other, or a race in a boss alone. Diametral lengths in metres,
 * pressures in Pa; interference positive. The seat is the sleeve bore as measured after the sleeve was fitted.
 *
 * @param boss around the sleeve, or around the race when there is none
 * @param sleeve between them; not looked at when there is none
 * @param race innermost ring
 * @param joint interference of sleeve and boss at 20 °C; 0 when there is no sleeve
 */
record CompoundCylinder(Cylinder boss, Cylinder sleeve, Cylinder race, double joint) {

    /** Pressures between boss and sleeve, and between sleeve (or boss) and race. */
    record Pressures(double joint, double seat) {}

    static CompoundCylinder plain(Cylinder boss, Cylinder race) {
        return new CompoundCylinder(boss, race, race, 0);
    }

    boolean hasSleeve() {
        return joint > 0;
    }

    /** Joint pressure of the sleeve without the race at an interference. */
    double jointPressure(double interference) {
        return Math.max(0, interference) / (boss.boreOpens() + sleeve.outsideShrinks());
    }

    /** By how much the sleeve bore stands open against its fitted state when the joint has less interference. */
    double opens(double jointNow) {
        return hasSleeve() ? sleeve.boreCloses() * (jointPressure(joint) - jointPressure(jointNow)) : 0;
    }

    /**
     * Both pressures, by the two conditions that the surfaces meet; a surface that would have to pull stands free.
     *
     * @param jointNow interference of sleeve and boss now
     * @param seatNow interference of race and seat now, as if the sleeve had not opened
     */
    Pressures pressures(double jointNow, double seatNow) {
        if (!hasSleeve()) {
            return new Pressures(0, Math.max(0, seatNow) / (boss.boreOpens() + race.outsideShrinks()));
        }
        double free = seatNow - sleeve.boreCloses() * jointPressure(joint);
        double a = boss.boreOpens() + sleeve.outsideShrinks();
        double b = -sleeve.outsideGrows();
        double c = -sleeve.boreCloses();
        double d = sleeve.boreOpens() + race.outsideShrinks();
        double determinant = a * d - b * c;
        double outer = (jointNow * d - b * free) / determinant;
        double inner = (a * free - c * jointNow) / determinant;
        if (outer >= 0 && inner >= 0) {
            return new Pressures(outer, inner);
        }
        double alone = jointPressure(jointNow);
        boolean raceStandsFree = free + sleeve.boreCloses() * alone <= 0;
        return raceStandsFree ? new Pressures(alone, 0) : new Pressures(0, free / d);
    }

    /** Hoop stress of the boss at its bore. */
    double bossHoop(Pressures p) {
        return Cylinder.hoopUnderInside(hasSleeve() ? p.joint() : p.seat(), boss.inner(), boss.outer(), boss.inner());
    }

    /** Hoop stress of the race at its bore; compression is negative. */
    double raceHoop(Pressures p) {
        return Cylinder.hoopUnderOutside(p.seat(), race.inner(), race.outer(), race.inner());
    }
}
