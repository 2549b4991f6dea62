package screedbook.entry;

/** How far it is from one full station to the next. */
public enum StationBase implements Word {
    FT_100(100, 2),
    M_100(100, 2),
    M_1000(1000, 3),
    /** Miles with decimals, as mileposts count them; a mile is 5280 ft (NIST Handbook 44 Appendix C). */
    MILEPOSTS(5280, 0);

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

    /** Digits behind the plus; none where there is no plus. */
    public int digits() {
        return digits;
    }
}
