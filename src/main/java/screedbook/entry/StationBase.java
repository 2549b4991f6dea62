package screedbook.entry;

/** How far it is from one full station to the next. */
public enum StationBase implements Word {
    FT_100(100, 2),
    M_100(100, 2),
    M_1000(1000, 3);

    private final int length;
    private final int digits;

    StationBase(int length, int digits) {
        this.length = length;
        this.digits = digits;
    }

    /** In feet or metres. */
    public int length() {
        return length;
    }

    /** Digits behind the plus. */
    public int digits() {
        return digits;
    }
}
