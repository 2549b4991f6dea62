package screedbook.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import screedbook.calc.Sun;
import screedbook.entry.Kind;
import screedbook.entry.Moment;
import screedbook.entry.Station;
import screedbook.entry.YesNo;
import screedbook.job.Job;
import screedbook.job.Planning;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Tons against the clock. Figures are worked out by hand beside each case; the jobs are invented. */
class PaceTest {
    private static Amount minutes(String value) {
        return Amount.of(value, Unit.MINUTE);
    }

    private static Job planned(Planning planning) {
        Job j = Jobs.us();
        return Jobs.with(j, "planning", planning).settled();
    }

    private static Planning plan(String rate, String hours, LocalTime open, Planning.Stretch... stretches) {
        Planning.Cycle cycle =
                new Planning.Cycle(null, null, null, minutes("25"), minutes("5"), minutes("5"), minutes("20"));
        Planning.Production made = rate == null
                ? null
                : new Planning.Production(
                        Amount.of(rate, Unit.SHORT_TON), new BigDecimal(hours), null, cycle, null, "plan");
        Planning.Cutoff cutoff = open == null
                ? null
                : new Planning.Cutoff(open, null, null, minutes("30"), minutes("60"), "traffic plan");
        return new Planning(List.of(), null, null, List.of(), made, cutoff, List.of(), List.of(stretches), null);
    }

    /** Five loads of 20 T, a quarter of an hour apart from 08:00 on: 80 T an hour. */
    private static Shift loads() {
        Shift shift = Shift.day();
        String[] stations = {"12+00", "13+00", "14+00", "15+00", "16+00", "17+00"};
        for (int i = 0; i < 5; i++) {
            shift.ticket(
                    LocalTime.of(8, 0).plusMinutes(15L * i).toString(),
                    String.valueOf(100 + i),
                    "20.00",
                    "mix",
                    "12.5-70A",
                    "pull",
                    "A",
                    "lift",
                    "2",
                    "from_sta",
                    stations[i],
                    "to_sta",
                    stations[i + 1]);
        }
        return shift;
    }

    private static Totals totals(Shift shift, Job job) {
        return Totals.of(shift.read(), job, ToDate.NONE, shift.at("09:05"));
    }

    private static String text(Totals totals, String id) {
        return totals.figure(id).map(Figure::text).orElse("not told");
    }

    /** 60 an hour x 5 h = 300, less 100 placed is 200; at 80 an hour that takes 150 minutes from 09:00. */
    @Test
    void theShiftIsDoneWhenWhatIsLeftIsPlacedAtItsPace() {
        Job job = planned(plan("60", "5", null));
        Totals totals = totals(loads(), job);

        assertThat(text(totals, "tons-per-hour")).isEqualTo("80 T/h");
        assertThat(text(totals, "pace-left.shift")).isEqualTo("200 T");
        assertThat(text(totals, "pace-finish.shift")).isEqualTo("11:30");
        assertThat(totals.figure("pace-finish.shift").orElseThrow().working().put())
                .containsExactly(
                        "60 T an hour x 5 h = 300 T, less 100.00 T placed", "200.0 T / 80.0 an hour after 09:00");
    }

    /** From 17+00 to 29+00 are 1200 ft of 12 ft: 1600 yd2 at 220 lb/yd2 are 176 T, 132 minutes at 80 an hour. */
    @Test
    void thePullIsDoneWhenThePaverComesToTheEndOfItsPlannedStretch() {
        Planning.Stretch stretch = new Planning.Stretch("A", 2, Station.of("12+00"), Station.of("29+00"));
        Totals totals = totals(loads(), planned(plan(null, null, null, stretch)));

        assertThat(text(totals, "pace-left.pull")).isEqualTo("176 T");
        assertThat(text(totals, "pace-finish.pull")).isEqualTo("11:12");
        assertThat(text(totals, "pace-finish.shift")).isEqualTo("not told");
    }

    @Test
    void aStretchOfAnotherPullOrOneThatLiesElsewhereForetellsNothing() {
        Planning.Stretch other = new Planning.Stretch("B", 2, Station.of("12+00"), Station.of("29+00"));
        Planning.Stretch behind = new Planning.Stretch("A", 2, Station.of("40+00"), Station.of("60+00"));
        Totals totals = totals(loads(), planned(plan(null, null, null, other, behind)));

        assertThat(totals.sections()).noneMatch(s -> s.id().equals("pace"));
    }

    /** Lanes open 17:30 less 60 cooling, 30 rolling, 5 dump, 5 delay, 25 haul: the last load leaves at 15:25. */
    @Test
    void theLastLoadStandsBesideWhatIsForetold() {
        Totals totals = totals(loads(), planned(plan("60", "5", LocalTime.of(17, 30))));

        assertThat(text(totals, "pace-last-load.lanes open.the plant")).isEqualTo("15:25");
        assertThat(LastLoad.on(
                        planned(plan("60", "5", LocalTime.of(17, 30))),
                        Shift.day().read().shift().date()))
                .extracting(LastLoad::discharged)
                .containsExactly(LocalTime.of(15, 55));
    }

    /** Work that ends with the light ends at the sunset of the shift's own date: 5 dump, 30 rolling, 60 cooling before it. */
    @Test
    void theLastLoadOfAShiftThatEndsWithTheLightIsThatOfItsDate() {
        Planning.Cutoff dark = new Planning.Cutoff(null, YesNo.YES, null, minutes("30"), minutes("60"), "traffic plan");
        Planning made = plan("60", "5", null);
        Job job = planned(
                new Planning(List.of(), null, null, List.of(), made.production(), dark, List.of(), List.of(), null));
        LocalDate date = Shift.day().read().shift().date();
        LocalTime set = Sun.set(date, 43.5, -111.9)
                .orElseThrow()
                .atZone(job.zone())
                .toLocalTime()
                .withSecond(0)
                .withNano(0);

        assertThat(LastLoad.on(job, date))
                .extracting(l -> l.what() + " " + l.discharged())
                .containsExactly("dark on 2026-06-03 " + set.minusMinutes(95));
    }

    @Test
    void allThatWasPlannedIsPlaced() {
        Totals totals = totals(loads(), planned(plan("20", "5", null)));

        assertThat(text(totals, "pace-left.shift")).isEqualTo("0 T");
        assertThat(text(totals, "pace-finish.shift")).isEqualTo("all that was planned is placed");
    }

    @Test
    void nothingIsForetoldOfAShiftThatIsClosedOrHasNoPlanOrOneLoad() {
        Job job = planned(plan("60", "5", LocalTime.of(17, 30)));
        Shift closed = loads().key(Kind.CLOSING, "10:00", "text", "done");

        assertThat(Pace.of(closed.read(), job, totals(closed, job))).isEqualTo(Pace.NONE);
        assertThat(totals(loads(), Jobs.us()).sections()).noneMatch(s -> s.id().equals("pace"));
        Shift one = Shift.day().ticket("08:00", "1", "20.00", "mix", "12.5-70A");
        assertThat(Pace.of(one.read(), job, totals(one, job))).isEqualTo(Pace.NONE);
    }

    @Test
    void anHourOfTheFinishIsAFullTime() {
        Job job = planned(plan("60", "30", null));
        Shift shift = loads();
        Optional<Pace.Finish> finish =
                Pace.of(shift.read(), job, totals(shift, job)).shift();

        assertThat(Moment.text(finish.orElseThrow().at())).startsWith("2026-06-04T06:15");
    }
}
