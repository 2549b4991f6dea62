package screedbook.check;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import screedbook.calc.HeatIndex;
import screedbook.calc.WindChill;
import screedbook.entry.Day;
import screedbook.entry.Entry;
import screedbook.entry.Gauge;
import screedbook.entry.InstrumentCheck;
import screedbook.entry.Joint;
import screedbook.entry.Mat;
import screedbook.entry.Profile;
import screedbook.entry.Rolling;
import screedbook.entry.Sample;
import screedbook.entry.Standing;
import screedbook.entry.Straightedge;
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
        if (day.all().stream().anyMatch(s -> !s.struck() && nuclear(s.entry()))) {
            said.add(GAUGE);
        }
        if (day.shift().word().equals("night")) {
            said.add(NIGHT);
        }
        hottest(day).filter(HeatIndex::asksForCare).ifPresent(h -> said.add(heat(h)));
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

    /** What stands beside a form: by its kind, and for the weather by what its figures feel like. */
    public static Optional<Caution> beside(Entry partial) {
        if (partial instanceof Ticket) {
            return Optional.of(new Caution("from a stopped truck only", TRUCKS));
        }
        if (partial instanceof Tack) {
            return Optional.of(new Caution("hot tack burns", BURNS));
        }
        if (partial instanceof Mat || partial instanceof Profile || partial instanceof Sample) {
            return Optional.of(new Caution("hot mix burns", BURNS));
        }
        if (partial instanceof Truck) {
            return Optional.of(new Caution("stay clear of what backs up", TRUCKS));
        }
        if (partial instanceof Rolling || partial instanceof Joint || partial instanceof Straightedge) {
            return Optional.of(new Caution("where the driver sees you", BACKING));
        }
        if (nuclear(partial)) {
            return Optional.of(new Caution("gauge: two controls", GAUGE));
        }
        return partial instanceof Weather weather ? felt(weather) : Optional.empty();
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
            return hot.map(h -> new Caution("heat index " + whole(h) + " °F", heat(h)));
        }
        if (weather.air() == null || weather.wind() == null) {
            return Optional.empty();
        }
        return WindChill.of(weather.air(), weather.wind())
                .map(a -> a.to(Unit.DEG_F))
                .map(c -> new Caution(
                        "wind chill " + whole(c) + " °F",
                        "Wind chill " + whole(c)
                                + " °F (National Weather Service formula of 2001): bare skin cools as if"
                                + " the air were that cold; warm breaks are common practice, no source."));
    }

    private static String whole(Amount amount) {
        return amount.value().setScale(0, RoundingMode.HALF_UP).toPlainString();
    }

    /** OSHA, Using the Heat Index: A Guide for Employers: from 91 °F on moderate, from 103 high, above 115 very high. */
    private static String heat(Amount index) {
        return "Heat index up to " + index.value().setScale(0, RoundingMode.HALF_UP)
                + " °F in the shade: water, rest and"
                + " shade are planned from 91 on, and full sun adds up to 15 (OSHA, Using the Heat Index: A Guide for"
                + " Employers).";
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
