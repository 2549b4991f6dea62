package screedbook.desk;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import screedbook.entry.Kind;
import screedbook.entry.Told;

/** The list behind {@code m}: kinds in the order of the work, each with a key of its own. A new kind is one row. */
final class KindMenu {
    /**
     * One row.
     *
     * @param key the key that takes it at once
     * @param does what it begins, for the help
     * @param act begins it on the shift, without the list
     */
    record Choice(String key, String label, String does, Function<Model, Step> act) {}

    /** Rows of one part of the work. */
    record Group(String heading, List<Choice> choices) {}

    /** The left column, then the right one. */
    static final List<List<Group>> COLUMNS = List.of(
            List.of(
                    group(
                            "loads and plant",
                            of("p", Kind.PART),
                            of("w", Kind.WASTE),
                            of("n", Kind.NUMBER),
                            of("t", Kind.TRUCK),
                            of("l", Kind.PLANT_TOTAL)),
                    group("tack", of("r", Kind.REFILL)),
                    group(
                            "mat",
                            of("h", Kind.MAT),
                            of("f", Kind.PROFILE),
                            of("o", Kind.ROLLING),
                            of("d", Kind.DEPTH),
                            of("y", Kind.YIELD),
                            of("a", Kind.AREA)),
                    group("joints", of("j", Kind.JOINT), of("s", Kind.STRAIGHTEDGE))),
            List.of(
                    group(
                            "density and samples",
                            of("g", Kind.GAUGE),
                            of("c", Kind.CORE),
                            of("e", Kind.SAMPLE),
                            of("u", Kind.CUSTODY),
                            of("v", Kind.RESULT)),
                    group(
                            "site",
                            new Choice("b", Told.kind(Kind.STOP), "key a stop of the paver", StopKeys::stop),
                            new Choice("+", Told.kind(Kind.RESTART), "key that the paver goes on", StopKeys::restart),
                            of("k", Kind.CREW),
                            new Choice(
                                    ".",
                                    "crew as last time",
                                    "take over the crew of the last shift that has any",
                                    CrewKeys::ask),
                            of("i", Kind.INSTRUMENT),
                            of("z", Kind.SAFETY)),
                    group(
                            "record",
                            of("q", Kind.HAND_OVER),
                            of("0", Kind.NO_WORK),
                            of("m", Kind.ANSWER),
                            of("x", Kind.STRIKE))));

    private KindMenu() {}

    private static Group group(String heading, Choice... choices) {
        return new Group(heading, List.of(choices));
    }

    private static Choice of(String key, Kind kind) {
        String name = Told.kind(kind);
        String article = "aeiou".indexOf(name.charAt(0)) < 0 ? "a " : "an ";
        return new Choice(
                key, name, "key " + article + name, log -> ShiftKeys.begin(log, kind, ListKeys.given(log, kind)));
    }

    /** Every row in the order in which it is walked. */
    static List<Choice> all() {
        return COLUMNS.stream()
                .flatMap(List::stream)
                .flatMap(g -> g.choices().stream())
                .toList();
    }

    /** The rows of the table of keys. */
    static Stream<KeyTable.Row> rows() {
        return all().stream()
                .map(c -> KeyTable.row(
                        Place.KINDS,
                        c.key(),
                        "",
                        c.does(),
                        KeyTable.c(c.key()),
                        (m, k) -> c.act().apply(m.pop())));
    }
}
