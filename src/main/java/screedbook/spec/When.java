package screedbook.spec;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import screedbook.calc.Rounding;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** The cases for which a row holds: every part of it must. */
record When(List<Choice> choices, Band band, List<Window> windows) {
    /** The columns whose cells list the words for which a row holds, with the part of a case that each looks at. */
    enum Column {
        LAYER("layer", "layer", Situation::layer, "riding-surface", "below-riding-surface"),
        NMAS("nmas_mm", "size of the mix", s -> plain(s.nmas())),
        GRADE("grade", "binder grade", s -> s.grade() == null ? null : s.grade().toString()),
        POLYMER("polymer", "polymer", Situation::polymer, "yes", "no"),
        AID("aid", "aid", Situation::aid, "neither", "warm-mix", "compaction-aid"),
        LIGHT("light", "day or night", Situation::light, "day", "night"),
        THERMAL("thermal", "thermal method", Situation::thermal, "continuous-imaging", "handheld-camera", "none"),
        BASE("base", "base", Situation::base, "asphalt", "concrete", "aggregate"),
        TACK_ON("tack_on", "surface under the tack", Situation::tackOn, "new", "existing", "milled", "concrete"),
        TACK_GRADE("tack_grade", "grade of the tack", Situation::tackGrade),
        MIX_TYPE("mix_type", "type of the mix", Situation::mixType);

        final String head;
        final String label;
        final Function<Situation, String> of;
        /** The words that may stand in a cell; empty where any may. */
        final List<String> words;
        /** Whether its words are numbers. */
        final boolean number;

        Column(String head, String label, Function<Situation, String> of, String... words) {
            this.head = head;
            this.label = label;
            this.of = of;
            this.words = List.of(words);
            this.number = head.equals("nmas_mm") || head.equals("grade");
        }

        private static String plain(BigDecimal number) {
            return number == null ? null : number.stripTrailingZeros().toPlainString();
        }
    }

    /**
     * One cell of words.
     *
     * @param unsaid words with a question mark: cases of which the sheet does not say
     * @param not words behind a sign !: the row holds unless the case is said to be one of them
     */
    record Choice(Column column, List<String> sure, List<String> unsaid, List<String> not) {
        /** {@code continuous-imaging or none (not said)}. */
        String text() {
            List<String> told = new ArrayList<>(sure);
            unsaid.forEach(word -> told.add(word + " (not said)"));
            not.forEach(word -> told.add("unless " + word));
            return String.join(" or ", told);
        }

        Said holds(Situation situation) {
            String is = column.of.apply(situation);
            if (is == null) {
                return unsaid.isEmpty() && !not.isEmpty() ? Said.YES : Said.UNSURE;
            }
            if (sure.contains(is)) {
                return Said.YES;
            }
            if (unsaid.contains(is)) {
                return Said.UNSURE;
            }
            return not.isEmpty() || not.contains(is) ? Said.NO : Said.YES;
        }
    }

    /** A band of planned thickness. */
    record Band(Edge from, Edge to, Unit unit, Rounding rounding, int decimals) {
        /** Those of its ends that are stated. */
        List<Edge> edges() {
            return Stream.of(from, to).filter(Objects::nonNull).toList();
        }

        /** {@code from >=1.5 to <=2.9 in}. */
        String text() {
            String low = from == null
                    ? ""
                    : "from >" + (from.included() ? "=" : "") + from.at().toPlainString() + " ";
            String high = to == null
                    ? ""
                    : "to <" + (to.included() ? "=" : "") + to.at().toPlainString() + " ";
            return low + high + unit.suffix();
        }

        Said holds(Amount planned) {
            if (planned == null) {
                return Said.UNSURE;
            }
            BigDecimal rounded = rounding.to(decimals, planned.to(unit).value());
            boolean above = from == null || from.above(rounded);
            boolean below = to == null || to.below(rounded);
            return above && below ? Said.YES : Said.NO;
        }
    }

    /** One end of a band. */
    record Edge(BigDecimal at, boolean included) {
        boolean above(BigDecimal value) {
            int c = value.compareTo(at);
            return included ? c >= 0 : c > 0;
        }

        boolean below(BigDecimal value) {
            int c = value.compareTo(at);
            return included ? c <= 0 : c < 0;
        }
    }

    /** Dates of every year, both ends in; the end may lie in the next year. */
    record Window(MonthDay from, MonthDay to, boolean said) {
        /** {@code 11-02 to 12-31}. */
        String text() {
            return day(from) + " to " + day(to) + (said ? "" : " (not said)");
        }

        private static String day(MonthDay day) {
            return day.toString().substring(2);
        }

        boolean has(LocalDate date) {
            MonthDay day = MonthDay.from(date);
            boolean after = !day.isBefore(from);
            boolean before = !day.isAfter(to);
            return from.isAfter(to) ? after || before : after && before;
        }
    }

    Said holds(Situation situation) {
        Said said = band == null ? Said.YES : band.holds(situation.thickness());
        for (Choice choice : choices) {
            said = said.and(choice.holds(situation));
        }
        return windows.isEmpty() ? said : said.and(dated(situation.date()));
    }

    /** The cases in words, parted by semicolons; empty where it holds for all. */
    String text() {
        List<String> parts = new ArrayList<>();
        for (Choice choice : choices) {
            parts.add(choice.column().label + " " + choice.text());
        }
        if (band != null) {
            parts.add("thickness " + band.text());
        }
        for (Window window : windows) {
            parts.add("dates " + window.text());
        }
        return String.join("; ", parts);
    }

    /** Why it is unsure whether they hold: what the case does not tell, and what the sheet does not say. */
    List<String> open(Situation situation) {
        List<String> open = new ArrayList<>();
        if (band != null && situation.thickness() == null) {
            open.add("the planned thickness is not known");
        }
        for (Choice choice : choices) {
            if (choice.holds(situation) == Said.UNSURE) {
                String is = choice.column().of.apply(situation);
                String label = choice.column().label;
                open.add(is == null ? label + " is not known" : "the sheet does not say so for " + label + " " + is);
            }
        }
        if (!windows.isEmpty() && dated(situation.date()) == Said.UNSURE) {
            open.add("the sheet does not say so for this date");
        }
        return open;
    }

    private Said dated(LocalDate date) {
        if (date == null) {
            return Said.UNSURE;
        }
        Said said = Said.NO;
        for (Window window : windows) {
            if (window.has(date)) {
                said = window.said() ? Said.YES : Said.UNSURE;
            }
        }
        return said;
    }
}
