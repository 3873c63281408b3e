package shimwright.rebuild.inspect;

import shimwright.rebuild.job.Shop;

/**
 * What a gauge may be wrong by, in the SI unit of what it reads. Half-widths are taken as rectangular (JCGM 100:2008
 * 4.3.7), the step as a reading rounded to it (F.2.2.1).
 *
 * @param name for the sentence
 * @param step graduation it is read to, 0 or more
 * @param errorLimit half-width, 0 or more
 * @param repeatability standard deviation of one reading, 0 where it is not known
 */
public record GaugeError(String name, double step, double errorLimit, double repeatability) {
    private static final double RESOLUTION = Math.sqrt(12);
    private static final double RECTANGLE = Math.sqrt(3);

    public GaugeError {
        if (!(step >= 0 && errorLimit >= 0 && repeatability >= 0)) {
            throw new IllegalArgumentException(name + ": " + step + ", " + errorLimit + ", " + repeatability);
        }
    }

    /** What a gauge of the shop may be wrong by. */
    public static GaugeError of(Shop.Gauge gauge) {
        return new GaugeError(gauge.name(), gauge.step(), gauge.errorLimit(), gauge.repeatability());
    }

    /** Standard uncertainty of the mean of n readings: what differs from reading to reading shrinks, the error stays. */
    public double ofMean(int n) {
        return Math.hypot(scatter() / Math.sqrt(n), errorLimit / RECTANGLE);
    }

    /** Standard uncertainty of a difference of two near readings, in which the error of the gauge cancels. */
    double ofRange() {
        return Math.sqrt(2) * scatter();
    }

    /** Standard uncertainty of a difference of two means read far apart, in which it does not. */
    double ofDifference(int n, int m) {
        return Math.hypot(ofMean(n), ofMean(m));
    }

    private double scatter() {
        return Math.hypot(step / RESOLUTION, repeatability);
    }
}
