package shimwright.mechanics.measure;

import org.hipparchus.util.FastMath;
import shimwright.mechanics.quantity.Uncertainty;

/** How an input may deviate from its estimate: symmetric about 0, in the SI unit of the input (JCGM 101:2008 6.4). */
public sealed interface Distribution {
    /** One deviation. */
    double draw(RandomStream stream);

    /** Standard deviation; positive infinity for a t of 2 degrees of freedom or fewer. */
    double deviation();

    /** Normal (6.4.7). */
    record Normal(double u) implements Distribution {
        @Override
        public double draw(RandomStream stream) {
            return u * stream.normal();
        }

        @Override
        public double deviation() {
            return u;
        }
    }

    /** Scaled t, u·t(ν), ν above 0: of a mean of few readings (6.4.9). */
    record ScaledT(double u, double nu) implements Distribution {
        @Override
        public double draw(RandomStream stream) {
            return u * stream.student(nu);
        }

        @Override
        public double deviation() {
            return nu > 2 ? Uncertainties.ofScaledT(u, nu) : Double.POSITIVE_INFINITY;
        }
    }

    /** Rectangular of half-width a (6.4.2). */
    record Rectangular(double a) implements Distribution {
        @Override
        public double draw(RandomStream stream) {
            return a * stream.symmetric();
        }

        @Override
        public double deviation() {
            return Uncertainties.rectangular(a);
        }
    }

    /** Rectangular of half-width a, each end itself rectangular within ±d, d at most a: curvilinear trapezoid (6.4.3). */
    record RoughRectangular(double a, double d) implements Distribution {
        @Override
        public double draw(RandomStream stream) {
            return (a + d * stream.symmetric()) * stream.symmetric();
        }

        @Override
        public double deviation() {
            return Math.sqrt(a * a / 3 + d * d / 9);
        }
    }

    /** Trapezoid of half-width a with a top of half-width β·a, β from 0 to 1 (6.4.4). */
    record Trapezoid(double a, double beta) implements Distribution {
        @Override
        public double draw(RandomStream stream) {
            return a * ((1 + beta) * stream.symmetric() + (1 - beta) * stream.symmetric()) / 2;
        }

        @Override
        public double deviation() {
            return Uncertainties.trapezoid(a, beta);
        }
    }

    /** Triangular of half-width a (6.4.5). */
    record Triangular(double a) implements Distribution {
        @Override
        public double draw(RandomStream stream) {
            double one = stream.uniform();
            return a * (one - stream.uniform());
        }

        @Override
        public double deviation() {
            return Uncertainties.triangular(a);
        }
    }

    /** U-shaped between −a and a, a·sin of any phase (6.4.6). */
    record Cyclic(double a) implements Distribution {
        @Override
        public double draw(RandomStream stream) {
            return a * FastMath.cos(Math.PI * stream.uniform());
        }

        @Override
        public double deviation() {
            return Uncertainties.cyclic(a);
        }
    }

    /** The distribution of an uncertainty as typed. */
    static Distribution of(Uncertainty uncertainty) {
        double a = uncertainty.u() * uncertainty.form().ends();
        return switch (uncertainty.form()) {
            case NORMAL ->
                Double.isInfinite(uncertainty.nu())
                        ? new Normal(uncertainty.u())
                        : new ScaledT(uncertainty.u(), uncertainty.nu());
            case RECTANGULAR -> new Rectangular(a);
            case TRIANGULAR -> new Triangular(a);
            case U_SHAPED -> new Cyclic(a);
        };
    }
}
