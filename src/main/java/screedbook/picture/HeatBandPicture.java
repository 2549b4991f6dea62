package screedbook.picture;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import screedbook.check.HeatBand;

/**
 * Target discharge temperatures as a bar: {@code |} a limit, {@code .} the tolerance, {@code -} the loss on the way,
 * {@code =} targets that hold both limits, {@code x} where the two take each other's room, {@code T} the target.
 */
public final class HeatBandPicture {
    private HeatBandPicture() {}

    /** Two lines of exactly so many columns, figures and bar; none where nothing limits the target. */
    public static List<String> of(HeatBand band, int width) {
        List<BigDecimal> ends = ends(band);
        if (ends.isEmpty() || width < 10) {
            return List.of();
        }
        BigDecimal low = ends.stream().min(BigDecimal::compareTo).orElseThrow();
        BigDecimal high = ends.stream().max(BigDecimal::compareTo).orElseThrow();
        Ruler ruler = new Ruler(1, width, low, high);
        return List.of(ruler.figures(ends), bar(band, ruler, low, high));
    }

    private static List<BigDecimal> ends(HeatBand band) {
        List<BigDecimal> ends = new ArrayList<>();
        band.floor().ifPresent(f -> ends.add(f.limit()));
        band.ceiling().ifPresent(c -> ends.add(c.limit()));
        band.floor().ifPresent(f -> ends.add(f.at()));
        band.ceiling().ifPresent(c -> ends.add(c.at()));
        if (!ends.isEmpty() && band.target() != null) {
            ends.add(band.target());
        }
        return ends;
    }

    private static String bar(HeatBand band, Ruler ruler, BigDecimal low, BigDecimal high) {
        char[] row = ruler.row("");
        BigDecimal from = band.floor().map(HeatBand.End::at).orElse(low);
        BigDecimal to = band.ceiling().map(HeatBand.End::at).orElse(high);
        band.floor().ifPresent(f -> {
            BigDecimal tolerated = f.limit().add(band.below()).min(f.at());
            ruler.fill(row, f.limit(), tolerated, '.');
            ruler.fill(row, tolerated, f.at(), '-');
        });
        band.ceiling().ifPresent(c -> ruler.fill(row, c.at(), c.limit(), '.'));
        if (band.empty()) {
            ruler.fill(row, to, from, 'x');
        } else {
            ruler.fill(row, from, to, '=');
        }
        band.floor().ifPresent(f -> ruler.put(row, f.limit(), '|'));
        band.ceiling().ifPresent(c -> ruler.put(row, c.limit(), '|'));
        if (band.target() != null) {
            ruler.put(row, band.target(), 'T');
        }
        return new String(row);
    }
}
