package screedbook.demo;

import java.math.BigDecimal;
import java.util.Random;
import screedbook.entry.Station;
import screedbook.entry.StationBase;

/** A pull being laid toward higher stations: each load takes the length that its tons cover. */
final class Mat {
    final String pull;
    final int lift;
    final double width;
    final double target;
    private final double share;
    private final Random random;
    private double feet;

    /**
     * @param width feet
     * @param target lb/yd2
     * @param share of the target that is laid in the mean
     */
    Mat(Random random, String pull, int lift, double width, double target, double share, double from) {
        this.random = random;
        this.pull = pull;
        this.lift = lift;
        this.width = width;
        this.target = target;
        this.share = share;
        this.feet = from;
    }

    Station at() {
        return station(feet);
    }

    double feet() {
        return feet;
    }

    /** Tons for the target from here to a station. */
    double tonsTo(double station) {
        return (station - feet) * width / 9 * target * share / 2000;
    }

    /** The paver goes on by what these tons cover; the rate wanders a little with the milled surface. */
    Station lay(double tons) {
        double wander = 0.020 * Math.sin(feet / 900) + 0.014 * random.nextGaussian();
        feet = Math.round(feet + tons * 2000 * 9 / (width * target * (share + wander)));
        return at();
    }

    void stopAt(double station) {
        feet = station;
    }

    static Station station(double feet) {
        return Station.at(BigDecimal.valueOf(Math.round(feet)), StationBase.FT_100);
    }
}
