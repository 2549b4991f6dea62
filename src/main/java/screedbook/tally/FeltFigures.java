package screedbook.tally;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import screedbook.calc.RainRate;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Weather;
import screedbook.unit.Amount;

/** What the shift's weather readings come to at their worst, for information: dew point, wind chill, heat index, force. */
final class FeltFigures {
    private final List<Standing<Weather>> seen;
    private final Figures figures;

    private FeltFigures(List<Standing<Weather>> seen, Figures figures) {
        this.seen = seen;
        this.figures = figures;
    }

    static void add(List<Standing<Weather>> seen, Figures figures) {
        FeltFigures felt = new FeltFigures(seen, figures);
        felt.dewPoint();
        felt.windChill();
        felt.heatIndex();
        felt.force();
        felt.rain();
    }

    /** One reading with what it comes to. */
    private record Felt<T>(Ref of, String put, T value) {}

    private <T> List<Felt<T>> felt(Function<FeltAir, Optional<T>> part, Function<T, String> told) {
        List<Felt<T>> felt = new ArrayList<>();
        for (Standing<Weather> each : seen) {
            part.apply(FeltAir.of(each.entry()))
                    .ifPresent(v -> felt.add(
                            new Felt<>(each.ref(), each.ref() + " " + put(each.entry()) + ": " + told.apply(v), v)));
        }
        return felt;
    }

    private static String put(Weather seen) {
        List<String> words = new ArrayList<>();
        for (Amount each : new Amount[] {seen.air(), seen.humidity(), seen.wind(), seen.rain()}) {
            if (each != null) {
                words.add(each.text());
            }
        }
        return String.join(", ", words);
    }

    private static Working working(String formula, List<? extends Felt<?>> felt, String source) {
        return Figures.working(
                formula,
                felt.stream().map(Felt::put).toList(),
                felt.stream().map(Felt::of).toList(),
                source);
    }

    private void dewPoint() {
        List<Felt<Amount>> felt = felt(FeltAir::dewPoint, d -> d.shown(1).text());
        Working working = working(
                "g = ln(RH/100) + 17.62 t / (243.12 + t); td = 243.12 g / (17.62 - g), t in °C, over water",
                felt,
                "WMO-No. 8, Annex 4.B");
        felt.stream()
                .map(Felt::value)
                .max(Comparator.naturalOrder())
                .ifPresent(most ->
                        figures.amount("dew-point-most", "dew point most, for information", most.shown(6), 0, working));
    }

    private void windChill() {
        List<Felt<Amount>> felt = felt(FeltAir::windChill, c -> c.shown(1).text());
        Working working = working(
                "35.74 + 0.6215 T - 35.75 V^0.16 + 0.4275 T V^0.16, T in °F up to 50, V in mph over 3",
                felt,
                "US National Weather Service, wind chill of 2001");
        felt.stream()
                .map(Felt::value)
                .min(Comparator.naturalOrder())
                .ifPresent(least -> figures.amount(
                        "wind-chill-least", "wind chill least, for information", least.shown(6), 0, working));
    }

    private void heatIndex() {
        List<Felt<Amount>> felt = felt(FeltAir::heatIndex, FeltAir::index);
        Working working = working(
                "the regression of Rothfusz with both adjustments; below 91 °F lower, from 91 moderate, from 103 high,"
                        + " above 115 very high",
                felt,
                "US National Weather Service, heat index equation; bands: OSHA, Using the Heat Index");
        felt.stream().map(Felt::value).max(Comparator.naturalOrder()).ifPresent(most -> {
            Amount shown = most.shown(6);
            figures.add(
                    "heat-index-most",
                    "heat index most, for information",
                    FeltAir.index(shown),
                    shown.value(),
                    shown.unit().suffix(),
                    working);
        });
    }

    private void force() {
        List<Felt<Integer>> felt = felt(FeltAir::force, f -> "force " + f);
        Working working = working("wind in whole mph, looked up", felt, "Beaufort scale on land");
        felt.stream()
                .map(Felt::value)
                .max(Comparator.naturalOrder())
                .ifPresent(most -> figures.add(
                        "wind-force-most",
                        "wind most, Beaufort",
                        "force " + most,
                        BigDecimal.valueOf(most),
                        "",
                        working));
    }

    private void rain() {
        List<Felt<RainRate>> felt = felt(FeltAir::rain, FeltAir::word);
        Working working = working(
                "up to 0.10 in/h light, 0.11 to 0.30 moderate, above heavy",
                felt,
                "Glossary of Meteorology, American Meteorological Society, rain");
        felt.stream()
                .map(Felt::value)
                .max(Comparator.naturalOrder())
                .ifPresent(most -> figures.text("rain-most", "measured rain most", FeltAir.word(most), working));
    }
}
