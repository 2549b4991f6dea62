package screedbook.desk;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import screedbook.check.InShort;
import screedbook.check.Sort;
import screedbook.entry.Kind;
import screedbook.entry.Line;
import screedbook.entry.ShiftId;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Every screen of the desk with something on it, reached by keys as a person reaches it; the picture of each is a file. */
final class Scenes {
    static final String WEATHER = "w47<enter>62<enter>6<enter>cl<enter>1<enter>1<enter>";
    static final String SURFACE = "s44<enter>1500<enter>B<enter>2<enter>";

    private static final Map<String, String> TACK = Map.ofEntries(
            Map.entry("from_sta", "1200"),
            Map.entry("to_sta", "2400"),
            Map.entry("surface", "milled"),
            Map.entry("width_ft", "12"),
            Map.entry("before_gal", "1450"),
            Map.entry("after_gal", "1306"),
            Map.entry("material_degF", "150"),
            Map.entry("pull", "B"),
            Map.entry("lift", "2"));

    private static final Map<String, Model> MODELS = new HashMap<>();

    private Scenes() {}

    /** One screen: its name, its size, and the desk with it on top. */
    record Scene(String name, int width, int height, Supplier<DeskRig> desk) {
        Scene(String name, Supplier<DeskRig> desk) {
            this(name, 80, 24, desk);
        }

        /** The desk of the scene as a value, keyed once for all tests that do not key on. */
        Model model() {
            return MODELS.computeIfAbsent(name, n -> desk.get().model());
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static List<Scene> all() {
        return Stream.of(ShiftScenes.all(), SheetScenes.all(), SiteScenes.all(), SampleScenes.all(), PlantScenes.all())
                .flatMap(List::stream)
                .toList();
    }

    static Scene named(String name) {
        return all().stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
    }

    /** Strikes a key, then answers every blank that is due until the entry is on the paper disk. */
    static DeskRig keyed(DeskRig rig, String key, Map<String, String> answers) {
        rig.keys(key);
        for (int i = 0; i < 25 && rig.model().top() instanceof Screen.Keying keying; i++) {
            rig.keys(answers.getOrDefault(keying.form().active().name(), "") + "<enter>");
        }
        if (rig.model().top() instanceof Screen.Keying keying) {
            throw new IllegalStateException("still at " + keying.form().active().name() + "\n" + rig.screen());
        }
        return rig;
    }

    /** Types into one blank of the form on top, reached by Tab. */
    static DeskRig typedIn(DeskRig rig, String blank, String text) {
        goTo(rig, blank);
        return rig.keys(text);
    }

    static DeskRig goTo(DeskRig rig, String blank) {
        for (int i = 0; i < 60; i++) {
            if (((Screen.Keying) rig.model().top()).form().active().name().equals(blank)) {
                return rig;
            }
            rig.keys("<tab>");
        }
        throw new IllegalStateException("no blank " + blank + "\n" + rig.screen());
    }

    static DeskRig load(DeskRig rig, String truck, String net, String paver, String from, String to) {
        rig.later(6).keys("t");
        for (String[] each : new String[][] {{"from_sta", from}, {"to_sta", to}}) {
            typedIn(rig, each[0], each[1]);
        }
        goTo(
                rig,
                rig.lines().stream().anyMatch(l -> l instanceof Line line && line.kind() == Kind.TICKET)
                        ? "truck"
                        : "number");
        return keyed(
                rig,
                "",
                Map.of(
                        "truck",
                        truck,
                        "net_ston",
                        net,
                        "paver_degF",
                        paver,
                        "number",
                        "48212",
                        "mix",
                        "12.5-70A",
                        "pull",
                        "B",
                        "lift",
                        "2"));
    }

    /** A night with the weather, a surface reading, a shot of tack, six loads and a note. */
    static DeskRig night() {
        DeskRig rig = due();
        load(rig, "104", "21.75", "279", "1652", "1799");
        load(rig, "118", "22.40", "278", "1799", "1950");
        load(rig, "104", "22.31", "282", "1950", "2101");
        return rig.later(2).keys("nlane closed at 21:00, cones walked<C-s>").later(1);
    }

    /** Three loads; the next one still wants a temperature. */
    static DeskRig due() {
        DeskRig rig = DeskRig.open().keys(WEATHER).later(4).keys(SURFACE).later(3);
        keyed(rig, "k", TACK);
        load(rig, "118", "22.31", "286", "1203", "1353");
        load(rig, "104", "21.96", "284", "1353", "1502");
        load(rig, "118", "22.08", "281", "1502", "1652");
        return rig.later(6);
    }

    /** A night whose tons, cutoff and rolling are planned, with temperatures at the plant, at the paver and of the mat. */
    static DeskRig planned() {
        Map<String, Object> plan = Map.of(
                "production", DeskRig.map("plant_rate_ston", 120, "hours", 3.0),
                "cutoff", DeskRig.map("lanes_open", "00:30", "rolling_min", 30, "cooling_min", 60),
                "haul", List.of(DeskRig.map("plant", "Quarry Road", "minutes_min", 25, "loss_dF", 10)),
                "roll_until", DeskRig.map("mat_degF", 175, "source", "test strip"));
        DeskRig rig = new DeskRig(DeskRig.job(plan), DeskRig.practice()).keys("1n");
        rig.keys(WEATHER).later(4).keys("s52<enter>1500<enter>B<enter>2<enter>").later(3);
        keyed(rig, "k", TACK);
        heated(rig, "118", "22.31", "301", "286");
        mat(rig.later(1), "281", "1");
        heated(rig, "104", "21.96", "298", "284");
        rig.later(12).keys("s49<enter>1500<enter>");
        mat(rig, "232", "2");
        heated(rig, "118", "22.08", "296", "264");
        heated(rig, "104", "21.75", "303", "279");
        rig.later(12).keys("s46<enter>1600<enter>");
        mat(rig, "171", "3");
        heated(rig, "118", "22.40", "299", "283");
        return rig.later(3);
    }

    private static void mat(DeskRig rig, String degrees, String taken) {
        goTo(typedIn(rig.keys("mh"), "taken", taken), "mat_degF");
        keyed(rig, "", Map.of("mat_degF", degrees, "place_sta", "1500", "pull", "B", "lift", "2"));
    }

    private static void heated(DeskRig rig, String truck, String net, String plant, String paver) {
        typedIn(rig.later(6).keys("t"), "plant_degF", plant);
        goTo(
                rig,
                rig.lines().stream().anyMatch(l -> l instanceof Line line && line.kind() == Kind.TICKET)
                        ? "truck"
                        : "number");
        keyed(
                rig,
                "",
                Map.of(
                        "number",
                        "48212",
                        "truck",
                        truck,
                        "mix",
                        "12.5-70A",
                        "net_ston",
                        net,
                        "paver_degF",
                        paver,
                        "pull",
                        "B",
                        "lift",
                        "2"));
    }

    /** More checks than the side has room for, one of them over. */
    static DeskRig muchDue() {
        DeskRig rig = new DeskRig(
                DeskRig.job(Map.of(
                        "checks",
                        DeskRig.map(
                                "others",
                                List.of(
                                        DeskRig.map(
                                                "kind",
                                                "yield",
                                                "first",
                                                1,
                                                "each",
                                                40,
                                                "of",
                                                "tons",
                                                "source",
                                                "special provision 9"),
                                        DeskRig.map("kind", "tack", "each", 1, "of", "shifts", "times", 2),
                                        DeskRig.map("kind", "mat", "each", 60, "of", "minutes"),
                                        DeskRig.map("kind", "depth", "each", 4, "of", "loads"),
                                        DeskRig.map("kind", "rolling", "each", 1, "of", "shifts", "change", "pull"))))),
                DeskRig.practice());
        load(rig.keys("1n"), "104", "22.31", "286", "12+03", "13+53");
        load(rig, "118", "21.96", "284", "13+53", "15+02");
        return load(rig, "104", "22.08", "281", "15+02", "16+52");
    }

    /** A season of invented shifts with gaps; the third newest is walked to. */
    static DeskRig season() {
        return night().keys("<esc>s").send(seasonRead(seasonShifts())).keys("<down><down>");
    }

    static Msg.SeasonRead seasonRead(List<InShort> shifts) {
        return new Msg.SeasonRead(
                shifts.stream().map(InShort::shift).toList(),
                shifts.stream().collect(Collectors.toMap(InShort::shift, s -> s)));
    }

    static List<InShort> seasonShifts() {
        List<InShort> shifts = new ArrayList<>();
        LocalDate date = LocalDate.parse("2026-03-30");
        for (int i = 0; i < 40; i++) {
            boolean none = i % 13 == 6;
            shifts.add(new InShort(
                    ShiftId.of(date + (i % 5 == 4 ? "-night" : "-day")),
                    none ? "no work" : "closed",
                    none ? 0 : 60 + i * 7 % 40,
                    new Amount(none ? BigDecimal.ZERO : new BigDecimal(1300 + i * 137 % 800), Unit.SHORT_TON),
                    none ? Optional.empty() : Optional.of(new BigDecimal(96 + i * 3 % 9)),
                    none ? Optional.empty() : Optional.of(new BigDecimal("27" + i * 7 % 10 + ".4")),
                    Map.of(Sort.OUTSIDE, i * 5 % 4, Sort.MISSING, i % 3),
                    0,
                    i == 37 ? 1 : 0));
            date = date.plusDays(i % 9 == 8 ? 5 : 1);
        }
        return shifts;
    }
}
