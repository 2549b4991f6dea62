package screedbook.entry;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import screedbook.unit.Amount;

/**
 * A plant's own list as its columns say, to be laid beside the record.
 *
 * @param plant null where the line that brought it names none
 * @param file its name under {@code plant/}
 * @param gone why it cannot be compared: the copy is not there, or is not what was brought in; empty when it can
 * @param rows its loads in the list's order
 * @param troubles what could not be read, each with file and line
 */
public record PlantRows(String plant, String file, String gone, List<Row> rows, List<String> troubles) {
    public PlantRows {
        rows = List.copyOf(rows);
        troubles = List.copyOf(troubles);
    }

    /** A list that cannot be compared. */
    public static PlantRows gone(String plant, String file, String why) {
        return new PlantRows(plant, file, why, List.of(), List.of());
    }

    /**
     * One load of the list; what it does not say or what cannot be read is null.
     *
     * @param line its line in the file, from 1
     * @param net in the list's own unit
     * @param hour of loading, by the plant's clock
     */
    public record Row(int line, String number, String truck, Amount net, LocalDate date, LocalTime hour, String mix) {}

    /** The weight of all its rows; empty where none has one. */
    public Optional<Amount> tons() {
        return rows.stream().map(Row::net).filter(Objects::nonNull).reduce(Amount::plus);
    }
}
