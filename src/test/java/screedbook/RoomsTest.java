package screedbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rooms of the house, and who may look into which: held against the compiled classes, as the JDK's jdeps sees them. */
class RoomsTest {

    private static final String JSON = "com.fasterxml.jackson.core";
    private static final String CSV = "org.apache.commons.csv";
    private static final String ARGUMENTS = "picocli";
    private static final String TERMINAL = "com.googlecode.lanterna";

    /** What a room may use: rooms by name, and what stands outside the JDK by package. */
    private record Uses(Set<String> rooms, Set<String> libraries) {}

    /** One class that names another. */
    record Arrow(String from, String to) {}

    /** In the order of the picture: a room looks only to those above it. */
    private static final Map<String, Uses> ROOMS = rooms();

    /** Named nowhere in a room, though the library or the JDK has it. */
    private static final Map<String, Pattern> CLOSED = Map.of(
            // JSON is written there, and read in the diary only.
            "report", Pattern.compile("com\\.fasterxml\\.jackson\\.core\\.(JsonParser|JsonToken|TokenStream).*"),
            // The program as values: no terminal, no clock, no file.
            "desk",
                    Pattern.compile(
                            "java\\.nio\\.(file|channels)\\..*|java\\.io\\.File.*|java\\.time\\.(Clock|InstantSource).*"));

    private static Map<String, Uses> rooms() {
        Map<String, Uses> rooms = new LinkedHashMap<>();
        rooms.put("unit", uses(""));
        rooms.put("calc", uses("unit"));
        rooms.put("entry", uses("unit calc"));
        rooms.put("job", uses("unit entry"));
        rooms.put("diary", uses("unit entry job", JSON, CSV));
        rooms.put("spec", uses("unit calc entry", CSV));
        rooms.put("tally", uses("unit calc entry job"));
        rooms.put("check", uses("unit calc entry job spec tally"));
        rooms.put("picture", uses("unit calc entry job spec tally check"));
        rooms.put("report", uses("unit calc entry job spec tally check picture", CSV, JSON));
        rooms.put("desk", uses("unit calc entry job spec tally check picture"));
        rooms.put("shelf", uses("unit entry job diary spec tally check picture report"));
        rooms.put("season", uses("unit entry job diary tally check picture report shelf"));
        rooms.put("command", uses("unit calc entry job diary spec tally check picture report shelf season", ARGUMENTS));
        rooms.put(
                "term", uses("unit calc entry job diary spec tally check picture report desk shelf season", TERMINAL));
        rooms.put(
                "Main",
                uses("unit calc entry job diary spec tally check picture report desk shelf season command term"));
        // The first class of the packed file: it looks at the Java and gives the words on.
        rooms.put("Start", uses("Main"));
        return rooms;
    }

    private static Uses uses(String rooms, String... libraries) {
        return new Uses(rooms.isEmpty() ? Set.of() : Set.of(rooms.split(" ")), Set.of(libraries));
    }

    @Test
    void everyRoomLooksOnlyWhereTheHouseAllows() throws IOException {
        List<Arrow> arrows = arrows(Path.of("target", "classes"));

        assertThat(arrows).as("classes seen by jdeps").isNotEmpty();
        assertThat(wrong(arrows)).isEmpty();
    }

    @Test
    void theTableItselfOnlyLooksUpwards() {
        Set<String> above = new HashSet<>();
        ROOMS.forEach((room, uses) -> {
            assertThat(above).as("rooms above " + room).containsAll(uses.rooms());
            above.add(room);
        });
    }

    @Test
    void anArrowDownwardsIsReported(@TempDir Path folder) throws IOException {
        Path classes = compiled(
                folder,
                "package screedbook.calc; public class Rate {}",
                "package screedbook.unit; class Foot { screedbook.calc.Rate rate; }");

        assertThat(wrong(arrows(classes))).containsExactly("unit may not look into calc: Foot names Rate");
    }

    @Test
    void anArrowUpwardsIsNot(@TempDir Path folder) throws IOException {
        Path classes = compiled(
                folder,
                "package screedbook.unit; public class Foot {}",
                "package screedbook.calc; class Rate { screedbook.unit.Foot foot; java.math.BigDecimal figure; }",
                "package screedbook; class Main { screedbook.unit.Foot foot; }");

        assertThat(arrows(classes)).contains(new Arrow("screedbook.calc.Rate", "screedbook.unit.Foot"));
        assertThat(wrong(arrows(classes))).isEmpty();
    }

    @Test
    void aLibraryInAnotherRoomThanItsOwnIsReported(@TempDir Path folder) throws IOException {
        Path classes = compiled(
                folder,
                "package screedbook.desk; class View { com.googlecode.lanterna.TextColor colour; }",
                "package screedbook.term; class Tty { com.googlecode.lanterna.TextColor colour; }",
                "package screedbook; class Main { picocli.CommandLine line; }");

        assertThat(wrong(arrows(classes)))
                .containsExactly(
                        "Main may not use picocli.CommandLine: Main names it",
                        "desk may not use com.googlecode.lanterna.TextColor: View names it");
    }

    @Test
    void aRoomThatIsNotInThePictureIsReported(@TempDir Path folder) throws IOException {
        Path classes = compiled(
                folder,
                "package screedbook.attic; class Box { String label; }",
                "package screedbook; class Porch { String label; }");

        assertThat(wrong(arrows(classes)))
                .containsExactly("no such room: Porch in screedbook", "no such room: attic, where Box is");
    }

    @Test
    void whatIsClosedToARoomIsReported(@TempDir Path folder) throws IOException {
        Path classes = compiled(
                folder,
                "package screedbook.desk; class Update { java.nio.file.Path file; java.time.Clock clock; }",
                "package screedbook.report; class Page { com.fasterxml.jackson.core.JsonParser in;"
                        + " com.fasterxml.jackson.core.JsonGenerator out; }");

        assertThat(wrong(arrows(classes)))
                .containsExactly(
                        "desk may not use java.nio.file.Path: Update names it",
                        "desk may not use java.time.Clock: Update names it",
                        "report may not use com.fasterxml.jackson.core.JsonParser: Page names it");
    }

    private static Set<String> wrong(List<Arrow> arrows) {
        Set<String> wrong = new TreeSet<>();
        for (Arrow arrow : arrows) {
            String room = room(arrow.from());
            if (!ROOMS.containsKey(room)) {
                wrong.add(noSuchRoom(arrow.from()));
            } else if (isOurs(arrow.to())) {
                addWrongRoom(wrong, room, arrow);
            } else if (!mayUse(room, arrow.to())) {
                wrong.add(room + " may not use " + arrow.to() + ": " + simple(arrow.from()) + " names it");
            }
        }
        return wrong;
    }

    private static void addWrongRoom(Set<String> wrong, String room, Arrow arrow) {
        String other = room(arrow.to());
        if (!other.equals(room) && !ROOMS.get(room).rooms().contains(other)) {
            wrong.add(room + " may not look into " + other + ": " + simple(arrow.from()) + " names "
                    + simple(arrow.to()));
        }
    }

    private static boolean mayUse(String room, String type) {
        if (CLOSED.containsKey(room) && CLOSED.get(room).matcher(type).matches()) {
            return false;
        }
        return isOfTheJdk(type)
                || ROOMS.get(room).libraries().stream().anyMatch(library -> type.startsWith(library + "."));
    }

    private static String noSuchRoom(String type) {
        return packageOf(type).equals("screedbook")
                ? "no such room: " + simple(type) + " in screedbook"
                : "no such room: " + room(type) + ", where " + simple(type) + " is";
    }

    /** The package below screedbook, or, of what lies in screedbook itself, the class. */
    private static String room(String type) {
        String below = type.substring("screedbook.".length());
        return below.contains(".") ? below.substring(0, below.indexOf('.')) : below.replaceFirst("\\$.*", "");
    }

    private static boolean isOurs(String type) {
        return type.startsWith("screedbook.");
    }

    private static boolean isOfTheJdk(String type) {
        return ModuleLayer.boot().modules().stream()
                .anyMatch(module -> module.isNamed() && module.getPackages().contains(packageOf(type)));
    }

    private static String packageOf(String type) {
        return type.substring(0, Math.max(0, type.lastIndexOf('.')));
    }

    private static String simple(String type) {
        return type.substring(type.lastIndexOf('.') + 1);
    }

    static List<Arrow> arrows(Path classes) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = ToolProvider.findFirst("jdeps")
                .orElseThrow(() -> new AssertionError("this test needs a JDK: there is no jdeps"))
                .run(new PrintWriter(out), new PrintWriter(err), "-verbose:class", "-filter:none", classes.toString());
        assertThat(exit).as("jdeps over %s: %s%s", classes, out, err).isZero();
        Pattern line = Pattern.compile("\\s+(screedbook\\.\\S+)\\s+->\\s+(\\S+)\\s.*");
        return out.toString()
                .lines()
                .map(line::matcher)
                .filter(match -> match.matches())
                .map(match -> new Arrow(match.group(1), match.group(2)))
                .toList();
    }

    static Path compiled(Path folder, String... sources) throws IOException {
        Path classes = Files.createDirectories(folder.resolve("classes"));
        List<Path> files = new ArrayList<>();
        for (String source : sources) {
            files.add(written(folder.resolve("source"), source));
        }
        JavaCompiler javac = javax.tools.ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager = javac.getStandardFileManager(null, null, null)) {
            StringWriter out = new StringWriter();
            List<String> options = List.of("-d", classes.toString(), "-proc:none", "-cp", libraries());
            boolean done = javac.getTask(out, manager, null, options, null, manager.getJavaFileObjectsFromPaths(files))
                    .call();
            assertThat(done).as(out.toString()).isTrue();
        }
        return classes;
    }

    private static Path written(Path folder, String source) throws IOException {
        String name = source.replaceFirst("(?s).*?class (\\w+).*", "$1");
        String room = source.replaceFirst("(?s)package ([\\w.]+);.*", "$1");
        Path file = folder.resolve(room.replace('.', '/')).resolve(name + ".java");
        Files.createDirectories(file.getParent());
        return Files.writeString(file, source);
    }

    /** The class path of this run without our own classes, which would stand in the way of the made-up ones. */
    private static String libraries() {
        String separator = System.getProperty("path.separator");
        return Stream.of(System.getProperty("java.class.path").split(Pattern.quote(separator)))
                .filter(place -> place.endsWith(".jar"))
                .reduce((left, right) -> left + separator + right)
                .orElseThrow();
    }
}
