package screedbook.calc;

import java.util.Arrays;

/**
 * Heat flowing up and down through layers of cells that lie on each other, in degrees C, metres and seconds.
 *
 * <p>Source: the equation of heat conduction in one dimension, {@code dT/dt = (1 / rho cp) d/dx (k dT/dx)}, in cells of
 * finite volume with the resistances of two half cells between them (common practice, no source); in time Crank-Nicolson
 * after four backward Euler half steps, which take the jump at the start without swinging (Rannacher, from memory).
 * Nothing flows through the bottom. What the top loses may bend with its temperature: each step is worked out with a
 * straight line in place of the bend, until the surface stays where it is.
 */
final class Conduction {
    private static final int STARTING_STEPS = 4;
    private static final double CROSSED = 1e-6;
    private static final int MOST_ROUNDS = 8;

    private final SurfaceLoss loss;
    private final double[] stores;
    private final double[] joins;
    private final double top;
    private final double[] cells;
    private final double[] bent;
    private final double[] solved;
    private double surface;
    private double lost;
    private double seconds;
    private int steps;

    /**
     * A column of cells.
     *
     * @param widths of the cells from the top, m
     * @param stuff of each cell
     * @param start temperature of each cell, C
     */
    Conduction(double[] widths, Stuff[] stuff, double[] start, SurfaceLoss loss) {
        int n = widths.length;
        this.loss = loss;
        this.cells = start.clone();
        this.stores = new double[n];
        this.joins = new double[n - 1];
        this.bent = new double[n];
        this.solved = new double[n];
        for (int i = 0; i < n; i++) {
            stores[i] = stuff[i].store() * widths[i];
        }
        for (int i = 0; i < n - 1; i++) {
            joins[i] = 1 / (widths[i] / (2 * stuff[i].k()) + widths[i + 1] / (2 * stuff[i + 1].k()));
        }
        this.top = 2 * stuff[0].k() / widths[0];
        this.surface = cells[0];
        touch(cells[0]);
    }

    /** Seconds since the start. */
    double seconds() {
        return seconds;
    }

    /** Temperature of the surface itself, C. */
    double surface() {
        return surface;
    }

    double cell(int index) {
        return cells[index];
    }

    /** Mean of so many cells from the top, which must be equally wide. */
    double mean(int first) {
        double sum = 0;
        for (int i = 0; i < first; i++) {
            sum += cells[i];
        }
        return sum / first;
    }

    /** Heat in all cells over that at 0 degrees C, J/m2. */
    double heat() {
        double sum = 0;
        for (int i = 0; i < cells.length; i++) {
            sum += stores[i] * cells[i];
        }
        return sum;
    }

    /** Heat that has left through the top since the start, J/m2. */
    double lost() {
        return lost;
    }

    /** Goes on by so many seconds; the first two steps are taken as four halves. */
    void step(double by) {
        if (steps < STARTING_STEPS / 2) {
            advance(by / 2, 1);
            advance(by / 2, 1);
        } else {
            advance(by, 0.5);
        }
        steps++;
    }

    /** One step: the new flows count by {@code share}, the old ones by the rest. */
    private void advance(double by, double share) {
        double before = top * (cells[0] - surface);
        double[] old = share == 1 ? null : flows(before);
        double[] last = cells.clone();
        double guess = surface;
        double flux = before;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double slope = loss.slope(guess);
            double bend = loss.at(guess) - slope * guess;
            double join = top * slope / (top + slope);
            double fixed = top * bend / (top + slope);
            solve(last, old, by, share, join, fixed);
            flux = join * cells[0] + fixed;
            double next = (top * cells[0] - bend) / (top + slope);
            boolean still = Math.abs(next - guess) < CROSSED;
            guess = next;
            if (still) {
                break;
            }
        }
        surface = guess;
        lost += by * (share * flux + (1 - share) * before);
        seconds += by;
    }

    /** What flows into each cell now, W/m2. */
    private double[] flows(double out) {
        double[] in = new double[cells.length];
        in[0] = -out;
        for (int i = 0; i < joins.length; i++) {
            double down = joins[i] * (cells[i] - cells[i + 1]);
            in[i] -= down;
            in[i + 1] += down;
        }
        return in;
    }

    /** The temperatures after a step, by elimination from the top down and back. */
    private void solve(double[] last, double[] old, double by, double share, double join, double fixed) {
        int n = cells.length;
        for (int i = 0; i < n; i++) {
            double above = i == 0 ? 0 : joins[i - 1];
            double below = i == n - 1 ? 0 : joins[i];
            double rate = stores[i] / by;
            double diagonal = rate + share * (above + below + (i == 0 ? join : 0));
            double right = rate * last[i] + (old == null ? 0 : (1 - share) * old[i]) - (i == 0 ? share * fixed : 0);
            double pivot = i == 0 ? diagonal : diagonal - share * above * bent[i - 1];
            bent[i] = share * below / pivot;
            solved[i] = (right + (i == 0 ? 0 : share * above * solved[i - 1])) / pivot;
        }
        cells[n - 1] = solved[n - 1];
        for (int i = n - 2; i >= 0; i--) {
            cells[i] = solved[i] + bent[i] * cells[i + 1];
        }
    }

    /** The surface that loses as much as reaches it through half the top cell. */
    private void touch(double cell) {
        double guess = cell;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double slope = loss.slope(guess);
            guess = (top * cell - loss.at(guess) + slope * guess) / (top + slope);
        }
        surface = guess;
    }

    @Override
    public String toString() {
        return "after " + seconds + " s " + Arrays.toString(cells);
    }
}
