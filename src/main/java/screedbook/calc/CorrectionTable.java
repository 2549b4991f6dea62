package screedbook.calc;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** A published table that tells what a warm volume of a material is at the base temperature. */
public enum CorrectionTable {
    /**
     * Emulsified asphalt: {@code 1 - 0.00025 (t - 60)}, t in degrees F. The formula gives every row that was read of
     * the Asphalt Institute's table for emulsified asphalts (as reprinted in a highway text, Table 1-3: 60 to 140
     * degrees F), rounded half up to the four decimals printed there.
     */
    EMULSION("emulsion", "emulsified asphalt", "Asphalt Institute table: 1 - 0.00025 (t - 60)", 60, 140) {
        @Override
        BigDecimal formula(BigDecimal degF) {
            return BigDecimal.ONE.subtract(new BigDecimal("0.00025").multiply(degF.subtract(SIXTY)));
        }
    },
    /**
     * Asphalt with a specific gravity at 60 degrees F above 0.966: {@code 1.0211 - 3.5490e-4 t + 4.4988e-8 t^2}, t in
     * degrees F (ASTM D4311, 4.2.3, Table 2 column A; scope 0 to 500 degrees F). The standard says that the formula was
     * made to give values similar to the older Group 0 table. Against the 42 rows read of that table (Iowa DOT Materials
     * IM, T-102C) the formula as it stands is equal at four decimals in 30 and lower by 0.0001 in 12; divided by its own
     * value at 60 degrees F (0.99997, where a factor is 1 by meaning) it is equal in all 42, and so it is used.
     */
    GROUP_0(
            "group-0",
            "asphalt, Group 0",
            "ASTM D4311 column A: 1.0211 - 0.00035490 t + 0.000000044988 t², over the same at 60",
            0,
            500) {
        @Override
        BigDecimal formula(BigDecimal degF) {
            return new BigDecimal("1.0211")
                    .subtract(new BigDecimal("0.00035490").multiply(degF))
                    .add(new BigDecimal("0.000000044988").multiply(degF).multiply(degF));
        }
    },
    /**
     * Lighter asphalts of 850 to 965 kg/m3 at 15 degrees C, as cutbacks are: {@code 1.0108 - 7.2344e-4 T + 2.199e-7 T^2},
     * T in degrees C (ASTM D4311, 4.2.2, Table 1 column B; scope 0 to 500 degrees F), divided by its own value at the
     * base temperature, where a factor is 1 by meaning. The name is that of the older Group 1 table, which was not read.
     */
    GROUP_1(
            "group-1",
            "lighter asphalt and cutback, Group 1",
            "ASTM D4311 column B: 1.0108 - 0.00072344 T + 0.0000002199 T² with T in °C, over the same at the base",
            0,
            500) {
        @Override
        BigDecimal formula(BigDecimal degF) {
            BigDecimal celsius =
                    degF.subtract(new BigDecimal("32")).divide(new BigDecimal("1.8"), MathContext.DECIMAL128);
            return new BigDecimal("1.0108")
                    .subtract(new BigDecimal("0.00072344").multiply(celsius))
                    .add(new BigDecimal("0.0000002199").multiply(celsius).multiply(celsius));
        }
    },
    /**
     * Road tar: {@code 1 / (1 + 0.00030 (t - 60))}, t in degrees F. No formula is printed with the table (Group 00 table
     * as reprinted in a highway text, Table 1-2); this one was found from its rows and gives all 22 that were read, 60
     * to 250 degrees F.
     */
    GROUP_00("group-00", "road tar, Group 00", "Group 00 table: 1 / (1 + 0.00030 (t - 60))", 60, 250) {
        @Override
        BigDecimal formula(BigDecimal degF) {
            BigDecimal grown = BigDecimal.ONE.add(new BigDecimal("0.00030").multiply(degF.subtract(SIXTY)));
            return BigDecimal.ONE.divide(grown, MathContext.DECIMAL128);
        }
    },
    /** The volume is at the base temperature already, or is taken as measured. */
    NONE("none", "no correction", "volume as measured", -459, 9999) {
        @Override
        BigDecimal formula(BigDecimal degF) {
            return BigDecimal.ONE;
        }
    };

    private static final BigDecimal SIXTY = new BigDecimal("60");

    private final String key;
    private final String words;
    private final String source;
    private final int lowest;
    private final int highest;

    CorrectionTable(String key, String words, String source, int lowest, int highest) {
        this.key = key;
        this.words = words;
        this.source = source;
        this.lowest = lowest;
        this.highest = highest;
    }

    /** The formula as its source prints it, not rounded: about 1 at 60 degrees F. */
    abstract BigDecimal formula(BigDecimal degF);

    /**
     * Whether the source of this table reaches to the temperature. Beyond it the formula still gives a factor, and the
     * reader should be told.
     */
    public boolean covers(Amount temperature) {
        BigDecimal degF = temperature.to(Unit.DEG_F).value();
        return degF.compareTo(BigDecimal.valueOf(lowest)) >= 0 && degF.compareTo(BigDecimal.valueOf(highest)) <= 0;
    }

    /** The word for it in a job. */
    public String key() {
        return key;
    }

    /** The material it is for. */
    public String words() {
        return words;
    }

    /** Table and formula, for the working beside a figure; t is in degrees F. */
    public String source() {
        return source;
    }

    /** The table that a job calls by this word, if there is one. */
    public static Optional<CorrectionTable> ofKey(String key) {
        for (CorrectionTable table : values()) {
            if (table.key.equals(key)) {
                return Optional.of(table);
            }
        }
        return Optional.empty();
    }
}
