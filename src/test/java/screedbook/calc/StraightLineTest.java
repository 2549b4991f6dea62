package screedbook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import screedbook.Published;

/** The straight line through points, against a certified data set and against another library. */
class StraightLineTest {
    private static StraightLine line(double[] x, double[] y) {
        StraightLine line = StraightLine.NONE;
        for (int i = 0; i < x.length; i++) {
            line = line.and(BigDecimal.valueOf(x[i]), BigDecimal.valueOf(y[i]));
        }
        return line;
    }

    /** NIST Statistical Reference Datasets, linear least squares, Norris: data and certified values in the table's head. */
    @Test
    void theCertifiedLineOfNorrisComesOut() {
        List<String> rows = Published.lines("straight-line-norris.txt");
        StraightLine line = StraightLine.NONE;
        for (String row : rows) {
            String[] cells = row.strip().split("\\s+");
            line = line.and(new BigDecimal(cells[1]), new BigDecimal(cells[0]));
        }
        assertThat(line.n()).isEqualTo(36);
        assertThat(line.slope().orElseThrow().doubleValue()).isEqualTo(1.00211681802045, within(1e-14));
        assertThat(line.at(BigDecimal.ZERO).orElseThrow().doubleValue()).isEqualTo(-0.262323073774029, within(1e-15));
        assertThat(line.told().orElseThrow().doubleValue()).isEqualTo(0.999993745883712, within(1e-15));
    }

    @Test
    void anyLineIsThatOfAnotherLibrary() {
        Random random = new Random(88);
        for (int round = 0; round < 200; round++) {
            int n = 3 + random.nextInt(120);
            SimpleRegression theirs = new SimpleRegression();
            StraightLine first = StraightLine.NONE;
            StraightLine second = StraightLine.NONE;
            for (int i = 0; i < n; i++) {
                double x = 20 + random.nextInt(80);
                double y = 5 + 0.3 * x + random.nextInt(12);
                theirs.addData(x, y);
                if (i % 3 == 0) {
                    first = first.and(BigDecimal.valueOf(x), BigDecimal.valueOf(y));
                } else {
                    second = second.and(BigDecimal.valueOf(x), BigDecimal.valueOf(y));
                }
            }
            StraightLine ours = first.plus(second);
            assertThat(ours.slope().orElseThrow().doubleValue()).isEqualTo(theirs.getSlope(), within(1e-9));
            assertThat(ours.at(BigDecimal.TEN).orElseThrow().doubleValue()).isEqualTo(theirs.predict(10), within(1e-8));
            assertThat(ours.spread().orElseThrow().doubleValue())
                    .isEqualTo(Math.sqrt(theirs.getMeanSquareError()), within(1e-8));
            assertThat(ours.told().orElseThrow().doubleValue()).isEqualTo(theirs.getRSquare(), within(1e-9));
        }
    }

    @Test
    void oneTimeOrOnePointHasNoLine() {
        assertThat(StraightLine.NONE.slope()).isEmpty();
        StraightLine upright = line(new double[] {3, 3, 3}, new double[] {1, 2, 3});
        assertThat(upright.slope()).isEmpty();
        assertThat(upright.at(BigDecimal.ONE)).isEmpty();
        assertThat(upright.spread()).isEmpty();
        StraightLine level = line(new double[] {1, 2, 3}, new double[] {7, 7, 7});
        assertThat(level.slope().orElseThrow()).isZero();
        assertThat(level.reaches(BigDecimal.ZERO)).isEmpty();
        assertThat(level.told()).isEmpty();
    }

    @Test
    void aLineTellsWhereItMeetsAFigure() {
        StraightLine falling = line(new double[] {0, 60, 120}, new double[] {50, 47, 44});
        assertThat(falling.reaches(new BigDecimal("35")).orElseThrow()).isEqualByComparingTo("300");
        assertThat(falling.spread().orElseThrow()).isZero();
    }
}
