package screedbook.check;

/**
 * A rule with a shift that raises it and one, as near to the edge as there is, that does not.
 *
 * @param situations numbers of awkward situations, rows of {@code situations.csv}; empty where it is not one of them
 * @param sort what the finding is
 * @param seen what it says was seen, in part
 */
record RuleCase(String rule, String situations, Shift raising, Shift quiet, Sort sort, String seen) {
    @Override
    public String toString() {
        return rule + (situations.isEmpty() ? "" : " (situation " + situations + ")") + ": " + seen;
    }
}
