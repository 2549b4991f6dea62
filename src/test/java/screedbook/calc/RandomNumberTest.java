package screedbook.calc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.Published;
import screedbook.Published.Row;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Random numbers against another program's, and the sublots that they are drawn for. */
class RandomNumberTest {
    static List<Row> sublots() {
        return Published.rows("sublot");
    }

    /**
     * Hash by sha256sum (GNU coreutils 9.1), fraction by the shell's own arithmetic:
     * {@code echo $((0x${h:0:8} * 10000 / 4294967296))}.
     */
    @ParameterizedTest
    @CsvSource({
        "abc, ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad, 0.7283",
        "a1b2/12.5-70A/1/1/1/ton/1, e5442c312124ea065ff0c317feb4f91585d5d20d146357868c50cfa53206b8fe, 0.8955",
        "a1b2/12.5-70A/1/1/1/ton/2, feb500df400cb1ead8cc3ad1b3a4f9ee3d72f0030f2ad37644ee40070de1dca2, 0.9949",
        "a1b2/12.5-70A/1/2/1/offset/1, 839cb25d950db7626a5bc7fd0344947e89d1618a57f87688eef1fab7e85a19ce, 0.5141",
        "a1b2/12.5-70A/3/4/2/offset/3, 03ec25737214afee66170e60448b5f6ec735788682d9665aa059f1dbf5213e48, 0.0153",
        "00112233445566778899aabbccddeeff/SMA 12.5/2/1/1/ton/1,"
                + " 27547d8f9af652182449997d814cdba1fd7ceb275e8fa39a78f27a818f9dad70, 0.1536"
    })
    void anotherProgramDrawsTheSame(String text, String hash, String fraction) {
        assertThat(RandomNumber.sha256(text)).isEqualTo(hash);
        assertThat(RandomNumber.fraction(text).toPlainString()).isEqualTo(fraction);
    }

    @Test
    void theTextIsMadeOfItsPartsInOrder() {
        assertThat(RandomNumber.fraction("a1b2", "12.5-70A", 3, 4, 2, "offset", 3))
                .isEqualTo(RandomNumber.fraction("a1b2/12.5-70A/3/4/2/offset/3"));
    }

    /** 20,000 numbers in ten equal parts: 2000 each, give or take four standard deviations (170). */
    @Test
    void everyPartOfTheRangeComesUpAlike() {
        int[] parts = new int[10];
        for (int lot = 1; lot <= 20_000; lot++) {
            parts[
                    RandomNumber.fraction("77aa", "mix", lot, 1, 1, "ton", 1)
                            .movePointRight(1)
                            .intValue()]++;
        }
        assertThat(Arrays.stream(parts).boxed()).allMatch(count -> Math.abs(count - 2000) < 170);
    }

    @Test
    void noWorkedExampleIsLost() {
        assertThat(sublots()).hasSize(2);
    }

    @ParameterizedTest
    @MethodSource("sublots")
    void aLotIsSharedAsInTheTraining(Row row) {
        boolean time = row.text("case").equals("time");
        int number = row.number("number").intValueExact();
        Amount sublot = time
                ? Sublot.minutes(row.number("lot"), number)
                : Sublot.tons(new Amount(row.number("lot"), Unit.SHORT_TON), number);
        assertThat(sublot.value()).isEqualByComparingTo(row.number("sublot"));
        Amount each = new Amount(row.number("each"), time ? Unit.MINUTE : Unit.SHORT_TON);
        assertThat(Sublot.trucks(sublot, each)).isEqualByComparingTo(row.number("trucks"));
    }
}
