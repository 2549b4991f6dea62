package screedbook.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.job.Job;

/** A load weighed again on another scale beside its ticket. 1 ton is 2,000 lb (NIST Handbook 44 Appendix C). */
class WeighedAgainTest {
    private static final Job JOB = Fields.build(
                    Job.class,
                    Map.of(
                            "units",
                            "us",
                            "trucks",
                            List.of(Map.of("number", "T104", "tare_lb", new BigDecimal("27400")))))
            .value()
            .settled();

    private static WeighedAgain only(Shift shift) {
        List<WeighedAgain> all = WeighedAgain.of(shift.read(), JOB);
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    /** 72,020 printed less 71,940 found are 80 lb, 0.11 % of 72,020. */
    @Test
    void grossIsHeldAgainstGrossOfTheLoadThatTheTruckDischargedNext() {
        WeighedAgain again = only(Shift.day()
                .ticket("08:00", "1", "22.00", "truck", "T104", "gross_lb", "71400", "tare_lb", "27400")
                .key(Kind.TRUCK, "08:50", "truck", "T104", "gross_lb", "71940")
                .ticket("09:00", "2", "22.31", "truck", "T104", "gross_lb", "72020", "tare_lb", "27400"));
        assertThat(again.ticket().entry().paper().number()).isEqualTo("2");
        assertThat(again.what()).isEqualTo("gross");
        assertThat(again.difference()).isEqualTo("80 lb less");
        assertThat(again.percent().orElseThrow().text()).isEqualTo("0.11 %");
    }

    /** 22.31 tons are 44,620 lb: weighed empty at 27,320, 71,940 come to 44,620; by the usual tare to 44,540. */
    @Test
    void withoutAPrintedGrossTheNetIsHeldAgainstTheNetWithTheTareThatIsKnownBest() {
        Shift weighed = Shift.day()
                .ticket("09:00", "2", "22.31", "truck", "T104")
                .key(Kind.TRUCK, "09:20", "truck", "T104", "gross_lb", "71940", "tare_lb", "27320", "ticket", "2");
        assertThat(only(weighed).difference()).isEqualTo("the same");
        assertThat(only(weighed).how()).isEqualTo("gross 71940 lb less tare 27320 lb, weighed empty");

        Shift usual = Shift.day()
                .ticket("09:00", "2", "22.31", "truck", "T104")
                .key(Kind.TRUCK, "09:20", "truck", "T104", "gross_lb", "71940", "ticket", "2");
        assertThat(only(usual).difference()).isEqualTo("80 lb less");
        assertThat(only(usual).how()).endsWith("tare 27400 lb, usual");
    }

    @Test
    void withoutATicketOrATareThereIsNothingToHoldItAgainst() {
        Shift other = Shift.day()
                .ticket("09:00", "2", "22.31", "truck", "T118")
                .key(Kind.TRUCK, "09:20", "truck", "T104", "gross_lb", "71940");
        assertThat(WeighedAgain.of(other.read(), JOB)).isEmpty();
        Shift bare = Shift.day()
                .ticket("09:00", "2", "22.31", "truck", "T118")
                .key(Kind.TRUCK, "09:20", "truck", "T118", "gross_lb", "71940", "ticket", "2");
        assertThat(WeighedAgain.of(bare.read(), JOB)).isEmpty();
    }

    @Test
    void theTotalsTellBothWeights() {
        Shift shift = Shift.day()
                .key(Kind.TRUCK, "08:50", "truck", "T104", "gross_lb", "71940", "location", "town scale")
                .ticket("09:00", "2", "22.31", "truck", "T104", "gross_lb", "72020", "tare_lb", "27400");
        Figure figure = Totals.of(shift.read(), JOB, ToDate.NONE, shift.at("10:00"))
                .figure("weighed-again.paver/1")
                .orElseThrow();
        assertThat(figure.label()).isEqualTo("truck T104 weighed again, ticket 2");
        assertThat(figure.text()).isEqualTo("gross 71940 lb, printed 72020 lb, 80 lb less (0.11 %)");
    }
}
