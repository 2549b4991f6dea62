package screedbook.check;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import screedbook.calc.HeatIndex;
import screedbook.calc.WindChill;
import screedbook.entry.Core;
import screedbook.entry.Day;
import screedbook.entry.Depth;
import screedbook.entry.Entry;
import screedbook.entry.Gauge;
import screedbook.entry.InstrumentCheck;
import screedbook.entry.Joint;
import screedbook.entry.Mat;
import screedbook.entry.Note;
import screedbook.entry.Profile;
import screedbook.entry.Refill;
import screedbook.entry.Rolling;
import screedbook.entry.Safety;
import screedbook.entry.Sample;
import screedbook.entry.Standing;
import screedbook.entry.Straightedge;
import screedbook.entry.Surface;
import screedbook.entry.Tack;
import screedbook.entry.Ticket;
import screedbook.entry.Truck;
import screedbook.entry.Weather;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Short reminders that go with what a shift did and with what is keyed, each with its source; no advice, and no safety plan. */
public final class Cautions {
    /** What governs. It stands on every page. */
    public static final String GOVERNS =
            "This is not a safety plan. Limits come from the sheet chosen for the job; the contract"
                    + " documents, the engineer, local codes and licensed practice govern.";

    private static final String TRUCKS =
            "Tickets only from a stopped truck, seen by its driver; people on foot stay clear"
                    + " of what backs up (NIOSH in-house fatality reports 2002-06, 2005-10, 2007-02).";
    private static final String BURNS =
            "Hot mix and hot tack burn: running water at once for 20 minutes or more, nothing"
                    + " pulled off the skin, medical care (Cornell Local Roads Program, burns).";
    private static final String GAUGE =
            "A nuclear gauge that nobody watches is kept by two independent physical controls (10 CFR 30.34(i),"
                    + " 70 FR 2001 of 2005); who uses it is trained, and wears a badge where one is required (WAQTC"
                    + " TM 8).";
    private static final String BACKING =
            "Rollers and trucks back up: stay where the driver sees you, out of what is behind (29 CFR"
                    + " 1926.601(b)(4): an alarm or an observer where the view to the rear is obstructed).";
    private static final String NIGHT =
            "By night, be seen: light where people walk and work (NCHRP Report 498 is the guide to levels).";

    private static final String SEEN =
            "Whoever is on foot near traffic or machines wears high-visibility clothing (23 CFR 634.3, 71 FR 67792 of 2006,"
                    + " on Federal-aid highways); the traffic control plan says where the lane is closed.";
    private static final String CUTBACK =
            "A cutback holds a solvent whose vapour may take fire below 200 °F (93 °C) (scope of ASTM D3143): flame, sparks and"
                    + " smoking are kept away from tank, spray and fresh tack (common practice, no source).";
    private static final String TANK =
            "Over hot binder hydrogen sulfide may stand, and its smell is no warning (API RP 2023 of 2001): samples are"
                    + " taken as the plant's own rules say, upwind and not over an open hatch.";
    private static final String FUMES =
            "Asphalt fumes irritate eyes and throat and bring headache (OSHA topic page, asphalt fumes): upwind where that"
                    + " can be, and whoever feels unwell goes out of them.";
    private static final String WARM =
            "Water, rest and shade are planned from a heat index of 91 °F on, and who is new to the heat is most at risk"
                    + " (NIOSH 2013-143; OSHA, Using the Heat Index: A Guide for Employers).";

    private static final Pattern CUTBACKS = Pattern.compile("(?i)(RC|MC|SC)[- ]?\\d{2,4}");

    /** What an observation about safety is about, with what is usual there. */
    private static final Map<Safety.About, Caution> CARDS = new EnumMap<>(Map.of(
            Safety.About.TRAFFIC, new Caution("be seen by the traffic", SEEN),
            Safety.About.REVERSING, new Caution("stay clear of what backs up", TRUCKS),
            Safety.About.BURNS, new Caution("water on a burn, 20 minutes", BURNS),
            Safety.About.FUMES, new Caution("upwind of the fumes", FUMES),
            Safety.About.HEAT, new Caution("water, rest, shade", WARM),
            Safety.About.LIGHT, new Caution("by night, be seen", NIGHT),
            Safety.About.GAUGE, new Caution("gauge: two controls", GAUGE),
            Safety.About.MACHINES, new Caution("where the driver sees you", BACKING)));

    private Cautions() {}

    /** Those that go with what a day holds. */
    public static List<String> of(Day day) {
        List<String> said = new ArrayList<>();
        boolean loads = !day.standing(Ticket.class).isEmpty();
        if (loads) {
            said.add(TRUCKS);
        }
        if (loads || !day.standing(Tack.class).isEmpty()) {
            said.add(BURNS);
        }
        if (day.standing(Tack.class).stream().anyMatch(t -> cutback(t.entry()))) {
            said.add(CUTBACK);
        }
        if (day.all().stream().anyMatch(s -> !s.struck() && nuclear(s.entry()))) {
            said.add(GAUGE);
        }
        if (day.shift().word().equals("night")) {
            said.add(NIGHT);
        }
        hottest(day).filter(HeatIndex::asksForCare).ifPresent(h -> said.add(heat(h, degree(day))));
        return said;
    }

    /** Those that go with a plan: what every paving shift has, and night where hours of it are planned. */
    public static List<String> planned(Job job) {
        List<String> said = new ArrayList<>(List.of(TRUCKS, BURNS));
        if (PlannedNight.all(job).stream().anyMatch(day -> !day.night().isEmpty())) {
            said.add(NIGHT);
        }
        return said;
    }

    /**
     * The one that goes with an entry while it is keyed.
     *
     * @param brief a few words beside the form
     * @param text in full with its source
     */
    public record Caution(String brief, String text) {}

    /** What stands beside a form: by its kind and what it says, and for the weather by what its figures feel like. */
    public static Optional<Caution> beside(Entry partial) {
        if (partial instanceof Ticket) {
            return said("from a stopped truck only", TRUCKS);
        }
        if (partial instanceof Tack tack) {
            return cutback(tack) ? said("cutback: no flame near", CUTBACK) : said("hot tack burns", BURNS);
        }
        if (partial instanceof Refill) {
            return said("hot tack burns", BURNS);
        }
        if (partial instanceof Sample sample && sample.what().material() == Sample.Material.BINDER) {
            return said("tank fumes: stay out of them", TANK);
        }
        if (partial instanceof Mat
                || partial instanceof Profile
                || partial instanceof Sample
                || partial instanceof Depth depth && depth.state() != Depth.State.CORE_UNTRIMMED) {
            return said("hot mix burns", BURNS);
        }
        if (partial instanceof Truck) {
            return said("stay clear of what backs up", TRUCKS);
        }
        if (partial instanceof Surface
                || partial instanceof Rolling
                || partial instanceof Joint
                || partial instanceof Straightedge) {
            return said("where the driver sees you", BACKING);
        }
        if (partial instanceof Core || partial instanceof Note note && closesOrOpens(note)) {
            return said("be seen by the traffic", SEEN);
        }
        if (nuclear(partial)) {
            return said("gauge: two controls", GAUGE);
        }
        if (partial instanceof Safety safety) {
            return safety.about() == null ? Optional.empty() : Optional.ofNullable(CARDS.get(safety.about()));
        }
        return partial instanceof Weather weather ? felt(weather) : Optional.empty();
    }

    private static Optional<Caution> said(String brief, String text) {
        return Optional.of(new Caution(brief, text));
    }

    /** Rapid, medium and slow curing asphalt by its grade: asphalt thinned with a solvent. */
    private static boolean cutback(Tack tack) {
        String product = tack.product().product();
        return product != null && CUTBACKS.matcher(product.strip()).lookingAt();
    }

    private static boolean closesOrOpens(Note note) {
        return note.tags() != null
                && note.tags().stream().anyMatch(tag -> tag.matches("(?i)lane (closed|opened)|traffic control walked"));
    }

    /** A gauge's reading, its standard count and its correlation; nobody can say here whether it holds a source. */
    private static boolean nuclear(Entry partial) {
        return partial instanceof Gauge
                || partial instanceof InstrumentCheck check
                        && (check.against() == InstrumentCheck.Against.STANDARD_COUNT
                                || check.against() == InstrumentCheck.Against.CORES
                                || check.secured() != null);
    }

    private static Optional<Caution> felt(Weather weather) {
        Optional<Amount> hot = index(weather).filter(HeatIndex::asksForCare);
        if (hot.isPresent()) {
            return hot.map(h -> new Caution(
                    "heat index " + degrees(h, weather.air()),
                    heat(h, weather.air().unit())));
        }
        if (weather.air() == null || weather.wind() == null) {
            return Optional.empty();
        }
        return WindChill.of(weather.air(), weather.wind())
                .map(a -> a.to(Unit.DEG_F))
                .map(c -> new Caution(
                        "wind chill " + degrees(c, weather.air()),
                        "Wind chill " + degrees(c, weather.air())
                                + " (National Weather Service formula of 2001): bare skin cools as if"
                                + " the air were that cold; warm breaks are common practice, no source."));
    }

    /** In the degrees in which the air was read. */
    private static String degrees(Amount felt, Amount air) {
        return whole(felt.to(air.unit())) + " " + air.unit().symbol();
    }

    private static String whole(Amount amount) {
        return amount.value().setScale(0, RoundingMode.HALF_UP).toPlainString();
    }

    /** OSHA, Using the Heat Index: A Guide for Employers: from 91 °F on moderate, from 103 high, above 115 very high. */
    private static String heat(Amount index, Unit degree) {
        boolean celsius = degree == Unit.DEG_C;
        return "Heat index up to " + whole(index.to(degree)) + " " + degree.symbol() + " in the shade: water, rest and"
                + " shade are planned from " + (celsius ? "33 °C (91 °F)" : "91") + " on, and full sun adds up to "
                + (celsius ? "8 °C" : "15") + " (OSHA, Using the Heat Index: A Guide for Employers).";
    }

    /** In which the day's air was read. */
    private static Unit degree(Day day) {
        return day.standing(Weather.class).stream()
                .map(w -> w.entry().air())
                .filter(Objects::nonNull)
                .map(Amount::unit)
                .findFirst()
                .orElse(Unit.DEG_F);
    }

    private static Optional<Amount> hottest(Day day) {
        return day.standing(Weather.class).stream()
                .map(Standing::entry)
                .flatMap(w -> index(w).stream())
                .max(Comparator.naturalOrder());
    }

    private static Optional<Amount> index(Weather weather) {
        if (weather.air() == null || weather.humidity() == null) {
            return Optional.empty();
        }
        return HeatIndex.of(weather.air(), weather.humidity().value()).map(a -> a.to(Unit.DEG_F));
    }
}
