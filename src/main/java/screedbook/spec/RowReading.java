package screedbook.spec;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import screedbook.calc.Rounding;
import screedbook.entry.Word;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/** One row of a sheet's file being read. */
final class RowReading {
    private static final Pattern ID = Pattern.compile("[a-z0-9][a-z0-9.-]{0,47}");
    private static final Pattern FROM = Pattern.compile("(>=?)\\s*(\\d{1,4}(?:\\.\\d{1,3})?)");
    private static final Pattern TO = Pattern.compile("(<=?)\\s*(\\d{1,4}(?:\\.\\d{1,3})?)");
    private static final Pattern NUMBER = Pattern.compile("[1-9]\\d{0,2}(\\.\\d?[1-9])?");
    private static final Pattern DATES = Pattern.compile("(\\d\\d-\\d\\d)\\.\\.(\\d\\d-\\d\\d)(\\?)?");
    private static final String COMMON = "common practice";

    private final String sheet;
    private final int line;
    private final Cells cells;

    RowReading(String sheet, int line, Cells cells) {
        this.sheet = sheet;
        this.line = line;
        this.cells = cells;
    }

    Row row() {
        String id = cells.needed("id", "a word of lower case letters, digits, points and dashes");
        if (!id.isEmpty() && !ID.matcher(id).matches()) {
            cells.trouble("id is \"" + id + "\"", "lower case letters, digits, points and dashes, at most 48");
        }
        Row.Sort sort = sort();
        Quantity quantity = sort == Row.Sort.ASKS ? null : word("quantity", Quantity.values());
        Demand demand = sort == Row.Sort.ASKS ? word("quantity", Demand.values()) : null;
        Unit unit = sort == Row.Sort.LIMIT ? unit(quantity) : null;
        Amount low = amount("low", unit);
        Amount high = amount("high", unit);
        shape(sort, low, high);
        String document = cells.needed("document", "the short name of the document");
        String edition = cells.needed("edition", "its edition or year");
        return new Row(
                line,
                id.isEmpty() ? null : id,
                sort,
                quantity,
                demand,
                low,
                high,
                cells.decimal("count"),
                sort == Row.Sort.LIMIT ? rounding("rounding") : null,
                cells.words("lowers"),
                cells.decimal("by"),
                cells.decimal("not_below"),
                when(),
                edition.equals(COMMON) ? document : document + " " + edition,
                cells.needed("clause", "the clause of the document"),
                known(),
                cells.needed("working", "a sentence that says what the row does"));
    }

    private Row.Sort sort() {
        for (Row.Sort sort : Row.Sort.values()) {
            if (sort.word.equals(cells.text("does"))) {
                return sort;
            }
        }
        String all = Arrays.stream(Row.Sort.values()).map(s -> s.word).collect(Collectors.joining(", "));
        cells.trouble("does is \"" + cells.text("does") + "\"", "one of " + all);
        return Row.Sort.SETS_NO_LIMIT;
    }

    private <W extends Word> W word(String head, W[] words) {
        for (W word : words) {
            if (word.word().equals(cells.text(head))) {
                return word;
            }
        }
        String all = Arrays.stream(words).map(Word::word).collect(Collectors.joining(", "));
        cells.trouble(head + " is \"" + cells.text(head) + "\"", "one of " + all);
        return null;
    }

    private Unit unit(Quantity quantity) {
        if (quantity == null) {
            return null;
        }
        Measure measure = quantity.measure();
        Optional<Unit> unit = Unit.ofSuffix(cells.text("unit")).filter(each -> fits(measure, each));
        if (unit.isEmpty()) {
            cells.trouble("unit is \"" + cells.text("unit") + "\" for " + quantity.word(), units(measure));
        }
        return unit.orElse(null);
    }

    /** A document may print a depth in feet, which nobody keys. */
    private static boolean fits(Measure measure, Unit unit) {
        return measure.takes(unit) || measure == Measure.DEPTH && unit == Unit.FOOT;
    }

    private static String units(Measure measure) {
        return Arrays.stream(Unit.values())
                .filter(each -> fits(measure, each))
                .map(Unit::suffix)
                .collect(Collectors.joining(" or "));
    }

    private Amount amount(String head, Unit unit) {
        BigDecimal value = cells.decimal(head);
        return value == null || unit == null ? null : new Amount(value, unit);
    }

    /** Which cells a sort of row needs, and which have no meaning in it. */
    private void shape(Row.Sort sort, Amount low, Amount high) {
        if (sort == Row.Sort.LIMIT) {
            cells.unused("lowers", "by", "not_below", "count");
            if (cells.empty("low") && cells.empty("high")) {
                cells.trouble("neither low nor high", "at least one of them");
            }
            if (low != null && high != null && low.compareTo(high) > 0) {
                cells.trouble("low " + cells.text("low") + " above high " + cells.text("high"), "low at most high");
            }
            return;
        }
        cells.unused("low", "high", "unit", "rounding");
        if (sort == Row.Sort.LOWERS) {
            cells.unused("count");
            cells.needed("lowers", "the ids of the rows that it lowers, parted by strokes");
            cells.needed("by", "by how much");
        } else {
            cells.unused("lowers", "by", "not_below");
        }
    }

    private Rounding rounding(String head) {
        Optional<Rounding> rounding = Rounding.ofKey(cells.text(head));
        if (rounding.isEmpty()) {
            String all = Arrays.stream(Rounding.values()).map(Rounding::key).collect(Collectors.joining(", "));
            cells.trouble(head + " is \"" + cells.text(head) + "\"", "one of " + all);
        }
        return rounding.orElse(Rounding.ABSOLUTE);
    }

    /** A row must have been read in its document; only the sheets of common practice may hold common practice. */
    private String known() {
        String known = cells.text("known");
        boolean practice = sheet.matches("(practice|usual)(-[0-9a-f]{8})?");
        boolean good = known.equals("read") || practice && known.equals(COMMON);
        if (!good) {
            cells.trouble(
                    "known is \"" + known + "\"",
                    practice ? "read or " + COMMON : "read: somebody has read this figure in the document");
        }
        return known;
    }

    private When when() {
        List<When.Choice> choices = new ArrayList<>();
        for (When.Column column : When.Column.values()) {
            if (!cells.empty(column.head)) {
                choices.add(choice(column));
            }
        }
        return new When(List.copyOf(choices), band(), windows());
    }

    private When.Choice choice(When.Column column) {
        List<String> sure = new ArrayList<>();
        List<String> unsaid = new ArrayList<>();
        List<String> not = new ArrayList<>();
        for (String word : cells.words(column.head)) {
            boolean other = word.startsWith("!");
            boolean open = !other && word.endsWith("?");
            String bare = (other ? word.substring(1) : open ? word.substring(0, word.length() - 1) : word).strip();
            if (bare.isEmpty() || !column.words.isEmpty() && !column.words.contains(bare)) {
                String all = column.words.isEmpty() ? "a word" : String.join(", ", column.words);
                cells.trouble(
                        column.head + " is \"" + word + "\"",
                        "one of " + all + ", with ? where the sheet does not say");
            }
            (other ? not : open ? unsaid : sure).add(bare);
        }
        if (!not.isEmpty() && !sure.isEmpty()) {
            cells.trouble(
                    column.head + " is \"" + cells.text(column.head) + "\"",
                    "either the words that it holds for, or those with ! that it does not hold for");
        }
        if (column.number) {
            numbers(column, sure, unsaid, not);
        }
        return new When.Choice(column, List.copyOf(sure), List.copyOf(unsaid), List.copyOf(not));
    }

    /** Sizes and grades are compared as numbers are written shortest. */
    @SafeVarargs
    private void numbers(When.Column column, List<String>... words) {
        for (List<String> each : words) {
            for (String word : each) {
                if (!NUMBER.matcher(word).matches()) {
                    cells.trouble(column.head + " is \"" + word + "\"", "a number such as 12.5 or 64");
                }
            }
        }
    }

    private When.Band band() {
        if (cells.empty("thickness_from") && cells.empty("thickness_to")) {
            cells.unused("thickness_unit", "thickness_rounding");
            return null;
        }
        When.Edge from = edge("thickness_from", FROM, ">=1.5 or >1.5");
        When.Edge to = edge("thickness_to", TO, "<=2.9 or <3.0");
        Optional<Unit> unit = Unit.ofSuffix(cells.text("thickness_unit")).filter(each -> fits(Measure.DEPTH, each));
        if (unit.isEmpty()) {
            cells.trouble("thickness_unit is \"" + cells.text("thickness_unit") + "\"", units(Measure.DEPTH));
        }
        int decimals = Math.max(
                from == null ? 0 : from.at().scale(), to == null ? 0 : to.at().scale());
        return new When.Band(from, to, unit.orElse(Unit.INCH), rounding("thickness_rounding"), decimals);
    }

    private When.Edge edge(String head, Pattern form, String right) {
        if (cells.empty(head)) {
            return null;
        }
        Matcher m = form.matcher(cells.text(head));
        if (!m.matches()) {
            cells.trouble(head + " is \"" + cells.text(head) + "\"", right + ": the sign says whether the end is in");
            return null;
        }
        return new When.Edge(new BigDecimal(m.group(2)), m.group(1).length() == 2);
    }

    private List<When.Window> windows() {
        List<When.Window> windows = new ArrayList<>();
        for (String word : cells.words("dates")) {
            Matcher m = DATES.matcher(word);
            try {
                if (!m.matches()) {
                    throw new DateTimeException(word);
                }
                MonthDay from = MonthDay.parse("--" + m.group(1));
                windows.add(new When.Window(from, MonthDay.parse("--" + m.group(2)), m.group(3) == null));
            } catch (DateTimeException e) {
                cells.trouble(
                        "dates is \"" + word + "\"",
                        "months and days such as 11-02..12-31, with ? where the sheet does not say");
            }
        }
        apart(windows);
        return List.copyOf(windows);
    }

    /** No day lies in two windows of a row. */
    private void apart(List<When.Window> windows) {
        for (LocalDate day = LocalDate.of(2028, 1, 1); day.getYear() == 2028; day = day.plusDays(1)) {
            LocalDate at = day;
            if (windows.stream().filter(window -> window.has(at)).count() > 1) {
                cells.trouble(
                        "dates is \"" + cells.text("dates") + "\", which has "
                                + day.toString().substring(5) + " twice",
                        "windows that do not overlap");
                return;
            }
        }
    }
}
