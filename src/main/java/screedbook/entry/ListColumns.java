package screedbook.entry;

import screedbook.unit.Unit;

/**
 * How a plant's own list is read: which of its columns is what, by the words of its heading, the unit of its weights
 * and the order in which it writes dates. A column that is null is not read.
 */
public record ListColumns(
        @Blank(value = "list: number", width = 16, help = "heading of the column with the ticket number")
        String numberColumn,

        @Blank(value = "list: truck", width = 16, help = "heading of the column with the truck")
        String truckColumn,

        @Blank(value = "list: net", width = 16, help = "heading of the column with the net weight")
        String netColumn,

        @Blank(
                value = "list: loaded",
                width = 16,
                help = "heading of the column with the hour, or date and hour, of loading")
        String loadedColumn,

        @Blank(value = "list: date", width = 16, help = "heading of the date's column, where it has one of its own")
        String dateColumn,

        @Blank(value = "list: mix", width = 16, help = "heading of the column with the mix")
        String mixColumn,

        @Blank(value = "list: weights in", width = 8, help = "what the list weighs in")
        Weights weights,

        @Blank(value = "list: dates", width = 8, help = "the order in which it writes dates")
        Dates dates) {
    /** No column is known. */
    public static final ListColumns NONE = new ListColumns(null, null, null, null, null, null, null, null);

    /** What a list weighs in; tons are of 2,000 lb, tonnes of 1,000 kg. */
    public enum Weights implements Word {
        TONS(Unit.SHORT_TON),
        LB(Unit.POUND),
        TONNES(Unit.TONNE),
        KG(Unit.KILOGRAM);

        private final Unit unit;

        Weights(Unit unit) {
            this.unit = unit;
        }

        public Unit unit() {
            return unit;
        }
    }

    /** The order in which a list writes a date. */
    public enum Dates implements Word {
        YMD,
        MDY,
        DMY
    }

    /** Whether loads can be found and weighed by it. */
    public boolean enough() {
        return numberColumn != null && netColumn != null && weights != null;
    }
}
