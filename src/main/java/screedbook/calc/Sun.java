package screedbook.calc;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * Where the sun stands, for telling day from night.
 *
 * <p>Source: NOAA's solar calculation in Julian centuries (the form of its spreadsheet), zenith 90.833 degrees for
 * sunrise and sunset (the sun's centre 50 minutes of arc below the horizon) and 96 degrees for civil twilight.
 * Latitudes are degrees north of the equator, longitudes degrees east of Greenwich (so America's are below zero). The
 * land is taken as level; a minute either way is the accuracy of any such table.
 */
public final class Sun {
    /** The sun's centre at sunrise and sunset, degrees from straight up. */
    static final double RISE_AND_SET = 90.833;

    /** The sun's centre at the ends of civil twilight, degrees from straight up. */
    static final double CIVIL = 96;

    private static final int ROUNDS = 3;
    private static final double DAY = 1440;

    private Sun() {}

    /**
     * Sunrise of a date of the place; empty where the sun does not rise or does not set on it.
     *
     * @throws IllegalArgumentException when the latitude is outside -90 to 90 or the longitude outside -180 to 180
     */
    public static Optional<Instant> rise(LocalDate date, double latitude, double longitude) {
        return crossing(date, latitude, longitude, RISE_AND_SET, -1);
    }

    /**
     * Sunset of a date of the place; empty where the sun does not rise or does not set on it.
     *
     * @throws IllegalArgumentException when the latitude is outside -90 to 90 or the longitude outside -180 to 180
     */
    public static Optional<Instant> set(LocalDate date, double latitude, double longitude) {
        return crossing(date, latitude, longitude, RISE_AND_SET, 1);
    }

    /**
     * Beginning of civil twilight in the morning of a date of the place; empty where there is none.
     *
     * @throws IllegalArgumentException when the latitude is outside -90 to 90 or the longitude outside -180 to 180
     */
    public static Optional<Instant> dawn(LocalDate date, double latitude, double longitude) {
        return crossing(date, latitude, longitude, CIVIL, -1);
    }

    /**
     * End of civil twilight in the evening of a date of the place; empty where there is none.
     *
     * @throws IllegalArgumentException when the latitude is outside -90 to 90 or the longitude outside -180 to 180
     */
    public static Optional<Instant> dusk(LocalDate date, double latitude, double longitude) {
        return crossing(date, latitude, longitude, CIVIL, 1);
    }

    /**
     * Whether the sun is up at the moment: between sunrise and sunset.
     *
     * @throws IllegalArgumentException when the latitude is outside -90 to 90 or the longitude outside -180 to 180
     */
    public static boolean isUp(Instant moment, double latitude, double longitude) {
        return sine(moment, latitude, longitude) >= cos(RISE_AND_SET);
    }

    /**
     * How high the sun's centre stands over the level, in degrees; below 0 when it is down. The air's bending of light is
     * not in it.
     *
     * @throws IllegalArgumentException when the latitude is outside -90 to 90 or the longitude outside -180 to 180
     */
    public static double height(Instant moment, double latitude, double longitude) {
        return Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, sine(moment, latitude, longitude)))));
    }

    private static double sine(Instant moment, double latitude, double longitude) {
        checkPlace(latitude, longitude);
        LocalDate date = LocalDate.ofInstant(moment, ZoneOffset.UTC);
        double minutes = Duration.between(midnight(date), moment).toMillis() / 60_000.0;
        Position sun = Position.at(date, minutes);
        double hourAngle = (minutes + sun.equationOfTime() + 4 * longitude) / 4 - 180;
        return sin(latitude) * sin(sun.declination()) + cos(latitude) * cos(sun.declination()) * cos(hourAngle);
    }

    /** The moment at which the sun passes a zenith distance, before noon (-1) or after it (1). */
    static Optional<Instant> crossing(LocalDate date, double latitude, double longitude, double zenith, int side) {
        checkPlace(latitude, longitude);
        double minutes = DAY / 2 - 4 * longitude;
        for (int round = 0; round < ROUNDS; round++) {
            Position sun = Position.at(date, minutes);
            double cosine =
                    (cos(zenith) - sin(latitude) * sin(sun.declination())) / (cos(latitude) * cos(sun.declination()));
            if (!(Math.abs(cosine) <= 1)) {
                return Optional.empty();
            }
            double noon = DAY / 2 - 4 * longitude - sun.equationOfTime();
            minutes = noon + side * 4 * Math.toDegrees(Math.acos(cosine));
        }
        return Optional.of(midnight(date).plusMillis(Math.round(minutes * 60_000)));
    }

    private static void checkPlace(double latitude, double longitude) {
        if (!(Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180)) {
            throw new IllegalArgumentException("no such place: latitude " + latitude + ", longitude " + longitude);
        }
    }

    private static Instant midnight(LocalDate date) {
        return date.atStartOfDay().toInstant(ZoneOffset.UTC);
    }

    private static double sin(double degrees) {
        return Math.sin(Math.toRadians(degrees));
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }

    /** The sun's declination in degrees and the equation of time in minutes, at one moment. */
    private record Position(double declination, double equationOfTime) {
        private static final long NOON_OF_2000 = LocalDate.of(2000, 1, 1).toEpochDay();

        static Position at(LocalDate date, double minutes) {
            double t = (date.toEpochDay() - NOON_OF_2000 - 0.5 + minutes / DAY) / 36525;
            double meanLongitude = 280.46646 + t * (36000.76983 + t * 0.0003032);
            double meanAnomaly = 357.52911 + t * (35999.05029 - 0.0001537 * t);
            double node = 125.04 - 1934.136 * t;
            double apparent = meanLongitude + centre(t, meanAnomaly) - 0.00569 - 0.00478 * sin(node);
            double obliquity = obliquity(t) + 0.00256 * cos(node);
            double declination = Math.toDegrees(Math.asin(sin(obliquity) * sin(apparent)));
            return new Position(declination, equationOfTime(t, meanLongitude, meanAnomaly, obliquity));
        }

        private static double centre(double t, double anomaly) {
            return sin(anomaly) * (1.914602 - t * (0.004817 + 0.000014 * t))
                    + sin(2 * anomaly) * (0.019993 - 0.000101 * t)
                    + sin(3 * anomaly) * 0.000289;
        }

        private static double obliquity(double t) {
            double seconds = 21.448 - t * (46.8150 + t * (0.00059 - t * 0.001813));
            return 23 + (26 + seconds / 60) / 60;
        }

        private static double equationOfTime(double t, double longitude, double anomaly, double obliquity) {
            double e = 0.016708634 - t * (0.000042037 + 0.0000001267 * t);
            double y = Math.pow(Math.tan(Math.toRadians(obliquity / 2)), 2);
            double radians = y * sin(2 * longitude)
                    - 2 * e * sin(anomaly)
                    + 4 * e * y * sin(anomaly) * cos(2 * longitude)
                    - 0.5 * y * y * sin(4 * longitude)
                    - 1.25 * e * e * sin(2 * anomaly);
            return 4 * Math.toDegrees(radians);
        }
    }
}
