package screedbook.spec;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.unit.Amount;

/** A table of limits with citations. */
public final class SpecSheet {
    private static final List<String> SHIPPED = List.of(
            "practice",
            "ohio-401-2010",
            "ohio-401-407-424-2010",
            "wsdot-5-04",
            "florida-300-330-334",
            "ufgs-02749",
            "ufc-3-250-03-2001",
            "joints-fp-96",
            "joints-kansas-614",
            "joints-new-hampshire-401",
            "oklahoma-411-9qa-1999",
            "colorado-105-2011",
            "south-dakota-315",
            "control-strip-virginia");
    private static final String USUAL = "usual";

    private final String name;
    private final String sha256;
    private final List<String> foot;
    private final List<Row> rows;
    private final Map<Quantity, List<Row>> byQuantity = new EnumMap<>(Quantity.class);

    SpecSheet(String name, String sha256, List<String> foot, List<Row> rows) {
        this.name = name;
        this.sha256 = sha256;
        this.foot = foot;
        this.rows = rows;
        for (Row row : rows) {
            if (row.quantity() != null) {
                byQuantity
                        .computeIfAbsent(row.quantity(), q -> new ArrayList<>())
                        .add(row);
            }
        }
    }

    /** A sheet read from the exact bytes of its file, or everything that stands in the way, all at once. */
    public static Loaded read(String name, byte[] csv) {
        return new SheetReading(name, csv, false).loaded();
    }

    /** A sheet that was in force once: what a table of it leaves out does not stand in its way any more. */
    public static Loaded kept(String name, byte[] csv) {
        return new SheetReading(name, csv, true).loaded();
    }

    /** The names of the sheets that come with the program. */
    public static List<String> shippedNames() {
        return SHIPPED;
    }

    /** The bytes of a sheet that comes with the program, if there is one of the name. */
    public static Optional<byte[]> shippedBytes(String name) {
        return SHIPPED.contains(name) || name.equals(USUAL) ? Optional.of(bytes(name)) : Optional.empty();
    }

    /** A sheet that comes with the program, if there is one of the name. */
    public static Optional<SpecSheet> shipped(String name) {
        return shippedBytes(name).map(bytes -> read(name, bytes).sheet().orElseThrow());
    }

    /** Ranges that values usually lie in, for asking whether a figure was meant so; never a limit of a contract. */
    public static SpecSheet usual() {
        return Usual.SHEET;
    }

    /** Read once, when it is first asked for. */
    private static final class Usual {
        static final SpecSheet SHEET = shipped(USUAL).orElseThrow();
    }

    private static byte[] bytes(String name) {
        try (InputStream in = SpecSheet.class.getResourceAsStream("/spec/" + name + ".csv")) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public String name() {
        return name;
    }

    /** Of the file's exact bytes, hex. */
    public String sha256() {
        return sha256;
    }

    /** What the sheet says of itself: document, edition, and that the contract's own edition governs. */
    public List<String> foot() {
        return foot;
    }

    /** What the sheet says of a quantity in one case. */
    public Ruling ruling(Quantity quantity, Situation situation) {
        List<Limit> inForce = new ArrayList<>();
        List<Limit> unsure = new ArrayList<>();
        List<String> silent = new ArrayList<>();
        for (Row row : byQuantity.getOrDefault(quantity, List.of())) {
            Said said = row.when().holds(situation);
            if (row.sort() == Row.Sort.LIMIT && said != Said.NO) {
                lowered(row, said, situation, inForce, unsure);
            } else if (row.sort().silent() && said == Said.YES) {
                silent.add(row.says());
            }
        }
        unsure.removeIf(limit -> told(inForce, limit));
        return new Ruling(quantity, List.copyOf(inForce), List.copyOf(unsure), List.copyOf(silent));
    }

    /** What the sheet asks for in one case; those of which it does not say whether they hold are not sure. */
    public List<Asked> asked(Demand demand, Situation situation) {
        List<Asked> asked = new ArrayList<>();
        for (Row row : rows) {
            if (row.demand() == demand) {
                Said said = row.when().holds(situation);
                if (said != Said.NO) {
                    asked.add(row.asked(said == Said.YES));
                }
            }
        }
        return asked;
    }

    /** The row's limit after the rows that lower it; where it is unsure whether they do, both stand. */
    private void lowered(Row row, Said said, Situation situation, List<Limit> inForce, List<Limit> unsure) {
        Limit limit = row.limit();
        for (Row lower : byQuantity.get(row.quantity())) {
            if (lower.sort() != Row.Sort.LOWERS || !lower.of().contains(row.id())) {
                continue;
            }
            Said lowers = lower.when().holds(situation);
            if (lowers == Said.UNSURE) {
                add(unsure, open(limit, "It may be lowered", lower.when().open(situation)));
            }
            if (lowers != Said.NO) {
                limit = lower(limit, lower);
            }
        }
        if (said == Said.YES) {
            add(inForce, limit);
        } else {
            add(unsure, open(limit, "It may not hold here", row.when().open(situation)));
        }
    }

    private static Limit open(Limit limit, String what, List<String> why) {
        return working(limit, limit.low(), " " + what + ": " + String.join(", ", why) + ".");
    }

    private static Limit working(Limit limit, Amount low, String more) {
        return new Limit(
                limit.id(),
                limit.quantity(),
                low,
                limit.high(),
                limit.document(),
                limit.clause(),
                limit.known(),
                limit.rounding(),
                limit.working() + more);
    }

    private static Limit lower(Limit limit, Row lower) {
        BigDecimal from = limit.low().value();
        BigDecimal less = from.subtract(lower.by());
        BigDecimal floor = lower.notBelow();
        BigDecimal to = floor == null || less.compareTo(floor) >= 0 ? less : floor.min(from);
        String floored = floor == null ? "" : ", not below " + floor.toPlainString();
        return working(
                limit,
                new Amount(to, limit.low().unit()),
                " " + lower.says() + " " + from.toPlainString() + " less "
                        + lower.by().toPlainString() + " is " + less.toPlainString() + floored + ": "
                        + to.toPlainString() + ".");
    }

    /** Two rows that come to the same figures of the same clause are told once. */
    private static void add(List<Limit> limits, Limit limit) {
        if (!told(limits, limit)) {
            limits.add(limit);
        }
    }

    private static boolean told(List<Limit> limits, Limit limit) {
        return limits.stream()
                .anyMatch(l -> same(l.low(), limit.low())
                        && same(l.high(), limit.high())
                        && l.citation().equals(limit.citation()));
    }

    private static boolean same(Amount a, Amount b) {
        return a == null || b == null ? a == b : a.compareTo(b) == 0;
    }

    /** Every row in words, in the order of the file. */
    public List<Printed> printed() {
        return rows.stream().map(Row::printed).toList();
    }

    /** Every row, for the test that each has its document, clause and how it is known. */
    List<Row> rows() {
        return rows;
    }
}
