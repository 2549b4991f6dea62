package screedbook.tally;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import screedbook.calc.Beaufort;
import screedbook.calc.DewPoint;
import screedbook.calc.HeatIndex;
import screedbook.calc.RainRate;
import screedbook.calc.SkyCover;
import screedbook.calc.WindChill;
import screedbook.entry.Weather;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * What a weather reading comes to, for information only; each is empty where it was not read or is not defined.
 *
 * @param heatIndex from 80 degrees F on; below it says nothing
 * @param force of the wind, 0 to 12
 * @param cover how much of the sky is covered
 */
public record FeltAir(
        Optional<Amount> dewPoint,
        Optional<Amount> windChill,
        Optional<Amount> heatIndex,
        Optional<Integer> force,
        Optional<RainRate> rain,
        Optional<SkyCover> cover) {
    private static final Amount WARM = Amount.of("80", Unit.DEG_F);

    /** Of one reading, in its own units. */
    public static FeltAir of(Weather seen) {
        Optional<Amount> air = Optional.ofNullable(seen.air());
        Optional<Amount> wind =
                Optional.ofNullable(seen.wind()).filter(w -> w.value().signum() >= 0);
        Optional<Amount> damp = Optional.ofNullable(seen.humidity());
        return new FeltAir(
                air.flatMap(a -> damp.flatMap(h -> DewPoint.of(a, h.value()))),
                air.flatMap(a -> wind.flatMap(w -> WindChill.of(a, w))),
                air.flatMap(a -> damp.flatMap(h -> HeatIndex.of(a, h.value()))).filter(i -> i.compareTo(WARM) >= 0),
                wind.map(Beaufort::of),
                Optional.ofNullable(seen.rain()).map(RainRate::of),
                Optional.ofNullable(seen.sky()).map(FeltAir::cover));
    }

    /** Fog covers all of the sky. */
    public static SkyCover cover(Weather.Sky sky) {
        return switch (sky) {
            case CLEAR -> SkyCover.CLEAR;
            case FEW -> SkyCover.FEW;
            case SCATTERED -> SkyCover.SCATTERED;
            case BROKEN -> SkyCover.BROKEN;
            case OVERCAST, FOG -> SkyCover.OVERCAST;
        };
    }

    /** {@code dew point 41 °F  wind chill 36 °F  wind force 3}; empty where nothing comes of it. */
    public String text() {
        List<String> words = new ArrayList<>();
        dewPoint.ifPresent(d -> words.add("dew point " + d.shown(0).text()));
        windChill.ifPresent(c -> words.add("wind chill " + c.shown(0).text()));
        heatIndex.ifPresent(i -> words.add("heat index " + index(i)));
        force.ifPresent(f -> words.add("wind force " + f));
        rain.ifPresent(r -> words.add("rain " + word(r)));
        cover.filter(c -> c != SkyCover.CLEAR).ifPresent(c -> words.add("sky " + c.text()));
        return String.join("  ", words);
    }

    /** {@code 95 °F, moderate}. */
    static String index(Amount index) {
        return index.shown(0).text() + ", " + HeatIndex.band(index);
    }

    static String word(RainRate rate) {
        return rate.name().toLowerCase(Locale.ROOT);
    }
}
