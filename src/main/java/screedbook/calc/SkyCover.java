package screedbook.calc;

/**
 * How much of the sky is covered, by the words of weather reports.
 *
 * <p>Source: sky cover classification, Navy training tables (NAVEDTRA 14342A, Table 1-18, read): clear 0, few more than 0
 * to 2, scattered 3 to 4, broken 5 to 7, overcast 8 eighths.
 */
public enum SkyCover {
    CLEAR(0, 0),
    FEW(0, 2),
    SCATTERED(3, 4),
    BROKEN(5, 7),
    OVERCAST(8, 8);

    private final int least;
    private final int most;

    SkyCover(int least, int most) {
        this.least = least;
        this.most = most;
    }

    /** Eighths in the middle of what the word covers; of few, whose least is more than nothing, 1. */
    public double eighths() {
        return (least + most) / 2.0;
    }

    /** {@code 3 to 4 eighths}. */
    public String text() {
        return this == FEW ? "up to 2 eighths" : (least == most ? "" : least + " to ") + most + " eighths";
    }

    /**
     * The word for whole eighths; any amount below one eighth is few.
     *
     * @param eighths from 0 to 8
     * @throws IllegalArgumentException when they are outside 0 to 8
     */
    public static SkyCover of(int eighths) {
        for (SkyCover each : values()) {
            if (eighths >= 0 && eighths <= each.most) {
                return each;
            }
        }
        throw new IllegalArgumentException(eighths + " eighths of sky");
    }
}
