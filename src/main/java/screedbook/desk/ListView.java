package screedbook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import screedbook.check.Cautions;
import screedbook.check.Finding;
import screedbook.check.Sort;
import screedbook.entry.Shown;
import screedbook.entry.Told;
import screedbook.tally.Figure;
import screedbook.tally.Section;

/** Lists and texts: kinds, findings, totals, workings, what is missing before the close, search, folder, help. */
final class ListView {
    /** The name of a line of a working, as wide as those of a finding. */
    private static final Pattern NAME = Pattern.compile("[a-z]+( [a-z]+)? +(?<=^.{10})(?=\\S)");

    private ListView() {}

    /** One row of a list; only rows with an index can be walked to. */
    record Row(String text, Style style, int index) {
        static Row text(String text) {
            return new Row(text, Style.PLAIN, -1);
        }

        static Row head(String text) {
            return new Row(text, Style.STRONG, -1);
        }
    }

    static void draw(Model model, Screen screen, Frame frame) {
        if (screen instanceof Screen.Kinds kinds) {
            KindView.draw(kinds.walk(), frame);
        } else if (screen instanceof Screen.CrewLines crew) {
            walked(frame, CrewKeys.rows(crew), crew.walk());
        } else if (screen instanceof Screen.FindingList list) {
            walked(frame, findings(model), list.walk());
        } else if (screen instanceof Screen.Sums sums) {
            walked(frame, figures(model), sums.walk());
        } else if (screen instanceof Screen.Worked worked) {
            worked(model, frame, worked);
        } else if (screen instanceof Screen.BeforeClosing before) {
            scrolled(frame, beforeClosing(model, frame), before.top());
        } else if (screen instanceof Screen.Search search) {
            search(model, frame, search);
        } else if (screen instanceof Screen.PlantFile file) {
            PlantView.file(frame, file);
        } else if (screen instanceof Screen.PlantColumns columns) {
            PlantView.columns(frame, columns);
        } else if (screen instanceof Screen.OtherFolder folder) {
            folder(frame, folder);
        } else if (screen instanceof Screen.Help help) {
            scrolled(frame, help(model, help.about(), frame), help.top());
        }
    }

    static void walked(Frame frame, List<Row> rows, Walk walk) {
        int at = 0;
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).index() == walk.at() && walk.at() >= 0) {
                at = i;
                break;
            }
        }
        int top = new Walk(at).top(frame.rows(), rows.size());
        for (int i = top; i < rows.size() && i - top < frame.rows(); i++) {
            row(
                    frame,
                    frame.top() + i - top,
                    rows.get(i),
                    rows.get(i).index() >= 0 && rows.get(i).index() == walk.at());
        }
    }

    private static void row(Frame frame, int y, Row row, boolean chosen) {
        Style style = chosen ? Style.CHOSEN : row.style();
        if (chosen) {
            frame.pen().fill(0, y, frame.width(), 1, ' ', Style.CHOSEN);
        }
        String text = (chosen ? ">" : " ") + Shown.text(row.text());
        frame.pen().put(0, y, Frame.cut(text, frame.width()), style);
    }

    private static void scrolled(Frame frame, List<Row> rows, int from) {
        int top = Math.min(from, Math.max(0, rows.size() - frame.rows()));
        for (int i = top; i < rows.size() && i - top < frame.rows(); i++) {
            row(frame, frame.top() + i - top, rows.get(i), false);
        }
    }

    private static List<Row> findings(Model model) {
        List<Row> rows = new ArrayList<>();
        List<Finding> findings = model.shift().findings();
        if (findings.isEmpty()) {
            rows.add(Row.text("nothing is marked"));
        }
        for (int i = 0; i < findings.size(); i++) {
            Finding f = findings.get(i);
            String entry = f.of().isEmpty() ? "shift" : f.of().get(0).toString();
            String limit = f.limit().isEmpty() ? "" : ", " + f.limit();
            String seen = (f.answered() ? "answered: " : "") + f.seen();
            String text = pad(f.sort().mark(), 11) + pad(entry, 12) + seen + limit + "  " + f.clause();
            Style style = f.answered() ? Style.FAINT : f.sort() == Sort.OUTSIDE ? Style.MARK : Style.LOOK_AGAIN;
            rows.add(new Row(text, style, i));
            f.answers()
                    .forEach(a -> rows.add(new Row(
                            "           answer: " + a.entry().text() + " ("
                                    + a.line().who() + ")",
                            Style.FAINT,
                            -1)));
        }
        return rows;
    }

    private static List<Row> figures(Model model) {
        return figures(model.shift().sections());
    }

    static List<Row> figures(List<Section> sections) {
        List<Row> rows = new ArrayList<>();
        int index = 0;
        for (Section section : sections) {
            rows.add(Row.head(section.heading()));
            for (Figure figure : section.figures()) {
                rows.add(new Row("  " + figure(figure.label(), figure.text()), Style.PLAIN, index++));
            }
        }
        return rows;
    }

    /** A figure under the others; a long one begins as much earlier as it takes to end within 80 columns. */
    private static String figure(String label, String text) {
        int column = Math.min(44, Math.max(label.length() + 2, 75 - text.length()));
        return pad(label, column) + text;
    }

    private static void worked(Model model, Frame frame, Screen.Worked worked) {
        List<Row> rows = new ArrayList<>();
        rows.add(Row.head(worked.title()));
        rows.add(Row.text(""));
        worked.lines().forEach(line -> rows.addAll(hanging(Shown.text(line), frame.width() - 3)));
        if (worked.entries().isEmpty()) {
            scrolled(frame, rows, worked.top());
            return;
        }
        rows.add(Row.text(""));
        rows.add(Row.head("entries"));
        for (int i = 0; i < worked.entries().size(); i++) {
            String told = model.shift()
                    .find(worked.entries().get(i))
                    .map(s -> Told.line(s.entry()))
                    .orElse("not in this shift");
            rows.add(new Row(pad(worked.entries().get(i).toString(), 12) + told, Style.PLAIN, i));
        }
        walked(frame, rows, worked.walk());
    }

    /** A line that begins with its name goes on under what it says, not under the name. */
    private static List<Row> hanging(String line, int width) {
        int name = NAME.matcher(line).lookingAt() ? ListKeys.NAMED : 0;
        List<Row> rows = new ArrayList<>();
        for (String each : Frame.wrapped(line.substring(name), width - name)) {
            rows.add(Row.text((rows.isEmpty() ? line.substring(0, name) : " ".repeat(name)) + each));
        }
        return rows;
    }

    private static List<Row> beforeClosing(Model model, Frame frame) {
        List<Row> rows = new ArrayList<>();
        rows.add(Row.head("Before the last line of this book is written. Nothing here stops you."));
        rows.add(Row.text(""));
        if (!model.halfTyped().isEmpty()) {
            rows.add(new Row("half typed, not written: " + Update.names(model.halfTyped()), Style.DUE, -1));
            rows.add(Row.text(""));
        }
        List<Finding> open = model.shift().open();
        String findings = open.size() == 1 ? "1 finding" : open.size() + " findings";
        rows.add(Row.head(open.isEmpty() ? "every finding has an answer" : findings + " without an answer"));
        for (Finding f : open) {
            rows.add(Row.text(
                    "  " + pad(f.sort().mark(), 11) + f.seen() + (f.limit().isEmpty() ? "" : ", " + f.limit())));
        }
        rows.add(Row.text(""));
        rows.add(Row.head("checks: done of due"));
        model.shift()
                .totals()
                .dues()
                .forEach(d -> rows.add(Row.text("  " + pad(d.what(), 24) + d.done() + " of " + d.asked())));
        rows.add(Row.text(""));
        rows.add(Row.text("Enter goes on to the closing entry: representative, agreed or not, day charged."));
        return rows;
    }

    private static void search(Model model, Frame frame, Screen.Search search) {
        String label = "look for  ";
        frame.pen().put(1, frame.top(), label, Style.PLAIN);
        int x = 1 + label.length();
        frame.pen().fill(x, frame.top(), Math.max(0, frame.width() - x - 2), 1, '_', Style.FIELD_ACTIVE);
        String words = Shown.text(search.words());
        frame.pen().put(x, frame.top(), Frame.cut(words, frame.width() - x - 2), Style.FIELD_ACTIVE);
        frame.pen().cursor(Math.min(x + words.length(), frame.width() - 2), frame.top());
        if (search.matches().isEmpty()) {
            hints(frame);
        }
        int rows = frame.rows() - 2;
        int top = search.walk().top(rows, search.matches().size());
        for (int i = top; i < search.matches().size() && i - top < rows; i++) {
            Msg.Match match = search.matches().get(i);
            String text = pad(Frame.named(match.shift()), 20) + pad(match.ref().toString(), 11) + match.text();
            row(
                    frame,
                    frame.top() + 2 + i - top,
                    new Row(text, Style.PLAIN, i),
                    i == search.walk().at());
        }
    }

    /** What may be typed; it stands there until something was found. */
    private static void hints(Frame frame) {
        List<String> lines = List.of(
                "words that stand in an entry, or what it is about, or both:",
                "ticket 48217   truck T104   station 12+00 to 14+00   person RK",
                "finding outside   finding heat-at-paver   from 2026-05-12 to 2026-05-18");
        for (int i = 0; i < lines.size() && i < frame.rows() - 2; i++) {
            frame.pen().put(1, frame.top() + 2 + i, Frame.cut(lines.get(i), frame.width() - 2), Style.FAINT);
        }
    }

    private static void folder(Frame frame, Screen.OtherFolder folder) {
        frame.pen()
                .put(
                        1,
                        frame.top(),
                        "The entry is kept. Name a folder on another disk; a new file goes on from the",
                        Style.PLAIN);
        frame.pen()
                .put(
                        1,
                        frame.top() + 1,
                        "last line that is on disk, and lines that may be lost are written again.",
                        Style.PLAIN);
        String text = Shown.text(folder.typed());
        frame.pen().put(1, frame.top() + 3, "folder  ", Style.PLAIN);
        frame.pen().fill(9, frame.top() + 3, Math.max(0, frame.width() - 11), 1, '_', Style.FIELD_ACTIVE);
        frame.pen().put(9, frame.top() + 3, Frame.cut(text, frame.width() - 11), Style.FIELD_ACTIVE);
        frame.pen().cursor(Math.min(9 + text.length(), frame.width() - 2), frame.top() + 3);
    }

    private static List<Row> help(Model model, Place place, Frame frame) {
        List<Row> rows = new ArrayList<>();
        under(model).ifPresent(form -> reminder(model, form, frame, rows));
        int heading = rows.size();
        rows.add(Row.head("keys on " + place.title()));
        for (KeyTable.Row key : KeyTable.at(place)) {
            List<String> does = Frame.wrapped(key.does(), frame.width() - 16);
            rows.add(Row.text("  " + pad(key.key(), 12) + does.get(0)));
            does.subList(1, does.size()).forEach(rest -> rows.add(Row.text(" ".repeat(14) + rest)));
        }
        if (rows.size() > frame.rows()) {
            rows.set(heading, Row.head("keys on " + place.title() + ", Up Down for more"));
        }
        return rows;
    }

    /** The form that the help lies on. */
    private static Optional<Form> under(Model model) {
        int below = model.screens().size() - 2;
        return below >= 0 && model.screens().get(below) instanceof Screen.Keying keying
                ? Optional.of(keying.form())
                : Optional.empty();
    }

    /** The caution that goes with the kind, in full, and what the blank under the cursor wants. */
    private static void reminder(Model model, Form form, Frame frame, List<Row> rows) {
        Cautions.beside(Reading.of(form, model).entry())
                .ifPresent(c -> Frame.wrapped(c.text(), frame.width() - 2).forEach(l -> rows.add(Row.text(l))));
        String wants = form.active().field().help();
        if (!wants.isEmpty()) {
            Frame.wrapped(form.active().field().label() + ": " + wants, frame.width() - 2)
                    .forEach(l -> rows.add(Row.text(l)));
        }
        if (!rows.isEmpty()) {
            rows.add(Row.text(""));
        }
    }

    static String pad(String text, int width) {
        return text + " ".repeat(Math.max(1, width - text.length()));
    }
}
