package screedbook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Heat in cells against heat that can be written down: figures are computed from the formula that each test names
 * (Carslaw and Jaeger 1959, Incropera and DeWitt; the formulas from memory), but the contact temperature, whose formula
 * was read.
 */
class ConductionTest {
    private static final SurfaceLoss NONE = new SurfaceLoss(0, 0, 0, 0, 0);
    private static final double ALPHA = 1.21 / (2243.0 * 921);

    private static Conduction block(int n, double width, Stuff stuff, double start, SurfaceLoss loss) {
        return layers(n, stuff, start, 0, stuff, start, width, loss);
    }

    private static Conduction layers(
            int first, Stuff one, double hot, int then, Stuff two, double cold, double width, SurfaceLoss loss) {
        int n = first + then;
        double[] widths = new double[n];
        double[] start = new double[n];
        Stuff[] stuff = new Stuff[n];
        Arrays.fill(widths, width);
        for (int i = 0; i < n; i++) {
            start[i] = i < first ? hot : cold;
            stuff[i] = i < first ? one : two;
        }
        return new Conduction(widths, stuff, start, loss);
    }

    private static void run(Conduction heat, double seconds) {
        while (heat.seconds() < seconds - 1e-9) {
            heat.step(Math.min(MatCooling.next(heat.seconds()), seconds - heat.seconds()));
        }
    }

    /** {@code T = (e1 T1 + e2 T2) / (e1 + e2)} (thermal effusivity, absoluteastronomy.com, read); figures computed. */
    @ParameterizedTest
    @CsvSource({"1.21, 2243, 921, 80.00", "2.0, 2100, 900, 72.79", "1.72, 2300, 880, 74.22"})
    void twoBodiesMeetAtTheirContactTemperature(double k, double rho, double cp, double expected) {
        Stuff base = new Stuff(k, rho, cp);
        double formula = (Stuff.HOT_MIX.effusivity() * 150 + base.effusivity() * 10)
                / (Stuff.HOT_MIX.effusivity() + base.effusivity());
        assertThat(formula).isEqualTo(expected, within(0.005));

        int half = 200;
        Conduction heat = layers(half, Stuff.HOT_MIX, 150, half, base, 10, 0.0025, NONE);
        run(heat, 600);
        double up = 2 * Stuff.HOT_MIX.k() / 0.0025;
        double down = 2 * k / 0.0025;
        double contact = (up * heat.cell(half - 1) + down * heat.cell(half)) / (up + down);
        assertThat(contact).isEqualTo(expected, within(0.02));
    }

    /** {@code T = Tb + (Tm - Tb)/2 [erf((a-x)/2s) + erf((a+x)/2s)]}, Carslaw and Jaeger 2.2; an insulated top. */
    @ParameterizedTest
    @CsvSource({"300, 148.929, 80.0", "900, 132.6973, 79.855", "3600, 88.2128, 71.3486"})
    void aLiftThatLosesNothingUpwardsCoolsAsASlabInItsOwnMaterial(double seconds, double top, double joint) {
        double s = Math.sqrt(ALPHA * seconds);
        assertThat(10 + 140 * Erf.erf(0.05 / (2 * s))).isEqualTo(top, within(0.0005));

        Conduction heat = layers(40, Stuff.HOT_MIX, 150, 760, Stuff.HOT_MIX, 10, 0.00125, NONE);
        run(heat, seconds);
        assertThat(heat.surface()).isEqualTo(top, within(0.04));
        assertThat((heat.cell(39) + heat.cell(40)) / 2).isEqualTo(joint, within(0.04));
    }

    /** Half space with sudden convection: {@code T = Ta + (Ti - Ta) [erf(x/2s) + E(x)]}. */
    @Test
    void theSurfaceOfAHalfSpaceFollowsTheTextbook() {
        Conduction heat = block(800, 0.00125, Stuff.HOT_MIX, 150, new SurfaceLoss(30, 10, 0, 0, 0));
        run(heat, 1800);
        double hs = 30 / 1.21 * Math.sqrt(ALPHA * 1800);
        double exact = 10 + 140 * Math.exp(hs * hs) * Erf.erfc(hs);
        assertThat(heat.surface()).isEqualTo(exact, within(0.01));
    }

    /** Plane wall, insulated back, Bi = 1: the series of thirty terms, as worked out from {@code z tan z = Bi}. */
    @ParameterizedTest
    @CsvSource({"0.2, 0.95064, 0.64339, 0.8516", "0.5, 0.77253, 0.50452, 0.6811", "1.0, 0.53386, 0.34818, 0.4704"})
    void aPlaneWallCoolsAsItsSeriesSays(double fourier, double back, double surface, double mean) {
        double thick = 0.05;
        int n = 80;
        SurfaceLoss loss = new SurfaceLoss(Stuff.HOT_MIX.k() / thick, 0, 0, 0, 0);
        Conduction heat = block(n, thick / n, Stuff.HOT_MIX, 1, loss);
        run(heat, fourier * thick * thick / ALPHA);
        assertThat(heat.cell(n - 1)).isEqualTo(back, within(0.0005));
        assertThat(heat.surface()).isEqualTo(surface, within(0.0005));
        assertThat(heat.mean(n)).isEqualTo(mean, within(0.0005));
    }

    /** One-term table (Incropera and DeWitt, Table 5.1, from memory; recomputed): late in the cooling one term is left. */
    @ParameterizedTest
    @CsvSource({
        "0.1, 0.3111, 1.0161",
        "0.5, 0.6533, 1.0701",
        "1, 0.8603, 1.1191",
        "2, 1.0769, 1.1785",
        "5, 1.3138, 1.2402",
        "10, 1.4289, 1.2620"
    })
    void lateInTheCoolingOneTermOfTheSeriesIsLeft(double biot, double zeta, double c) {
        assertThat(zeta * Math.tan(zeta)).isEqualTo(biot, within(0.02 * biot));

        double thick = 0.05;
        int n = 100;
        SurfaceLoss loss = new SurfaceLoss(biot * Stuff.HOT_MIX.k() / thick, 0, 0, 0, 0);
        Conduction heat = block(n, thick / n, Stuff.HOT_MIX, 1, loss);
        run(heat, 0.6 * thick * thick / ALPHA);
        assertThat(heat.cell(n - 1)).isEqualTo(c * Math.exp(-zeta * zeta * 0.6), within(0.001));
    }

    /** Half space under a steady flux: rise {@code 2 q/k sqrt(alpha t / pi)}; 500 W/m2 for an hour make 21.4111 K. */
    @Test
    void aSteadySunWarmsAHalfSpaceByTheRootOfTime() {
        Conduction heat = block(1600, 0.000625, Stuff.HOT_MIX, 10, new SurfaceLoss(0, 0, 0, 0, 500));
        run(heat, 3600);
        assertThat(2 * 500 / 1.21 * Math.sqrt(ALPHA * 3600 / Math.PI)).isEqualTo(21.4111, within(0.0005));
        assertThat(heat.surface() - 10).isEqualTo(21.4111, within(0.05));
    }

    /** A thin body that radiates to nothing: {@code 1/T^3 = 1/T0^3 + 3 eps sigma t / C}; 150 C falls to 101.5006. */
    @Test
    void aBodyThatOnlyRadiatesFallsAsTheCubeSays() {
        Stuff thin = new Stuff(1000, 1000, 1000);
        SurfaceLoss loss = new SurfaceLoss(0, 0, 0.95, -273.15, 0);
        Conduction heat = block(2, 0.05, thin, 150, loss);
        run(heat, 3600);
        assertThat(heat.mean(2)).isEqualTo(101.5006, within(0.05));
    }

    /** Nothing of the heat is lost on the way: what the cells have less is what left through the top. */
    @Test
    void theHeatThatIsGoneIsTheHeatThatLeft() {
        SurfaceLoss loss = new SurfaceLoss(25, 10, 0.95, 0, 300);
        Conduction heat = MatCooling.cooling(0.05, 150, 20, Stuff.AGGREGATE, loss);
        double before = heat.heat();
        run(heat, 3600);
        assertThat(before - heat.heat()).isGreaterThan(1e6).isEqualTo(heat.lost(), within(1e-6 * before));
    }
}
