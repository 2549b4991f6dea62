package screedbook.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import screedbook.entry.Kind;
import screedbook.entry.Told;
import screedbook.tally.Roadwork.Place;
import screedbook.tally.Roadwork.What;

/** Letters under a line of the road where something was looked at, one under the other where there are several. */
final class Letters {
    /** Lines that a place may take; more stand as one star. */
    private static final int DEEP = 3;

    private static final char SEVERAL = '*';
    private static final char MARKED = 'o';

    private static final Map<Kind, Character> SIGNS = new EnumMap<>(Map.ofEntries(
            Map.entry(Kind.MAT, 'M'),
            Map.entry(Kind.PROFILE, 'T'),
            Map.entry(Kind.DEPTH, 'D'),
            Map.entry(Kind.GAUGE, 'G'),
            Map.entry(Kind.STRAIGHTEDGE, 'E'),
            Map.entry(Kind.JOINT, 'J'),
            Map.entry(Kind.CORE, 'C'),
            Map.entry(Kind.SAMPLE, 'S'),
            Map.entry(Kind.STOP, 'X'),
            Map.entry(Kind.DRAW, 'R')));

    private final int columns;
    private final List<char[]> rows = new ArrayList<>();
    private final List<String> told = new ArrayList<>();

    Letters(int columns) {
        this.columns = columns;
    }

    void put(int column, Place place) {
        boolean marked = place.kind() == Kind.CORE && place.what() == What.MARKED;
        put(
                column,
                marked ? MARKED : SIGNS.getOrDefault(place.kind(), '?'),
                marked ? "core marked here, cut elsewhere" : Told.kind(place.kind()));
    }

    void put(int column, char sign, String means) {
        for (int row = 0; row < DEEP; row++) {
            if (row == rows.size()) {
                rows.add(blank());
            }
            char there = rows.get(row)[column];
            if (there == sign) {
                return;
            }
            if (there == ' ') {
                rows.get(row)[column] = sign;
                say(sign + " " + means);
                return;
            }
        }
        rows.get(DEEP - 1)[column] = SEVERAL;
        say(SEVERAL + " several");
    }

    private char[] blank() {
        char[] row = new char[columns];
        Arrays.fill(row, ' ');
        return row;
    }

    private void say(String text) {
        if (!told.contains(text)) {
            told.add(text);
        }
    }

    List<char[]> rows() {
        return rows;
    }

    List<String> told() {
        return told;
    }
}
