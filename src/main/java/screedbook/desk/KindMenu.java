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
                            of("p", Kind.PART, "part of a load"),
                            of("w", Kind.WASTE),
                            of("n", Kind.NUMBER, "ticket number explained"),
                            of("t", Kind.TRUCK, "truck on, off, seen or weighed"),
                            of("l", Kind.PLANT_TOTAL),
                            new Choice(
                                    "L",
                                    Told.kind(Kind.PLANT_LIST),
                                    "lay the plant's own list of loads beside the shift",
                                    PlantKeys::begin)),
                    group("tack", of("r", Kind.REFILL, "refill of a tack tank")),
                    group(
                            "mat",
                            of("h", Kind.MAT),
                            of("f", Kind.PROFILE),
                            of("o", Kind.ROLLING, "roller and its passes"),
                            of("d", Kind.DEPTH),
                            of("y", Kind.YIELD),
                            of("a", Kind.AREA, "area by parts")),
                    group("joints", of("j", Kind.JOINT), of("s", Kind.STRAIGHTEDGE, "straightedge, cross slope"))),
            List.of(
                    group(
                            "density and samples",
                            of("g", Kind.GAUGE, "density by gauge"),
                            of("c", Kind.CORE, "core"),
                            of("e", Kind.SAMPLE),
                            of("u", Kind.CUSTODY, "sample handed over"),
                            of("v", Kind.RESULT, "result of a test")),
                    group(
                            "site",
                            new Choice("b", "stop of the paver", "key stop of the paver", StopKeys::stop),
                            new Choice("+", "restart of the paver", "key restart of the paver", StopKeys::restart),
                            of("k", Kind.CREW, "people or machines"),
                            new Choice(
                                    ".",
                                    "crew as last time",
                                    "take over the crew of the last shift that has any",
                                    CrewKeys::ask),
                            of("i", Kind.INSTRUMENT),
                            of("z", Kind.SAFETY, "safety, seen and done")),
                    group(
                            "record",
                            of("q", Kind.HAND_OVER, "hand-over of the log"),
                            of("0", Kind.NO_WORK, "no work today"),
                            of("m", Kind.ANSWER, "answer to a finding"),
                            of("x", Kind.STRIKE, "strike of an entry"))));

    private KindMenu() {}

    private static Group group(String heading, Choice... choices) {
        return new Group(heading, List.of(choices));
    }

    private static Choice of(String key, Kind kind) {
        return of(key, kind, Told.kind(kind));
    }

    private static Choice of(String key, Kind kind, String label) {
        return new Choice(key, label, "key " + label, log -> ShiftKeys.begin(log, kind, ListKeys.given(log, kind)));
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
