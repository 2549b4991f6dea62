package screedbook.desk;

/**
 * Tells the characters that surely take one column of a terminal from those that take none, two, or move their neighbours.
 * Ranges: Unicode Standard Annex 11, East Asian Width W and F, widened to whole blocks where symbols are drawn as pictures.
 */
final class OneColumn {
    private static final int[][] WIDE = {
        {0x1100, 0x11FF},
        {0x231A, 0x231B},
        {0x2329, 0x232A},
        {0x23E9, 0x23F3},
        {0x25FD, 0x25FE},
        {0x2600, 0x27BF},
        {0x2B00, 0x2BFF},
        {0x2E80, 0xA4CF},
        {0xA960, 0xA97F},
        {0xAC00, 0xFAFF},
        {0xFE00, 0xFE6F},
        {0xFF00, Character.MAX_CODE_POINT},
    };

    private OneColumn() {}

    static boolean test(int point) {
        for (int[] range : WIDE) {
            if (point >= range[0] && point <= range[1]) {
                return false;
            }
        }
        return switch (Character.getType(point)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.NON_SPACING_MARK,
                    Character.ENCLOSING_MARK,
                    Character.COMBINING_SPACING_MARK,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.UNASSIGNED -> false;
            default -> true;
        };
    }
}
