package screedbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import screedbook.diary.MadeArchive;
import screedbook.season.DuckDb;
import screedbook.season.Query;

/**
 * Made-up archives asked by the packed program and by tools of others: whole processes, in turn, medians. It prints a
 * table with ratios; results of one question have to be the same whoever is asked.
 */
@Tag("bench")
class BenchJourney {
    private static final Path TARGET = Path.of("target", "bench").toAbsolutePath();
    private static final int ROUNDS = Integer.getInteger("bench.rounds", 5);
    private static final boolean SLOW = !System.getProperty("bench.slow", "yes").equals("no");
    private static final Path LAUNCHER = Path.of("target", "screedbook").toAbsolutePath();
    private static final String JAVA =
            Path.of(System.getProperty("java.home"), "bin", "java").toString();

    private record Run(double seconds, long kibibytes) {}

    @Test
    void wholeArchivesBesideOtherTools() throws Exception {
        StringBuilder page = new StringBuilder("\n");
        for (String size :
                System.getProperty("bench.lines", "200,30000,1000000").split(",")) {
            page.append(size(Integer.parseInt(size.strip())));
        }
        System.out.println(page);
    }

    private static String size(int lines) throws Exception {
        int each = lines <= 30_000 ? 200 : 500;
        int shifts = Math.max(1, lines / each);
        Path jobs = TARGET.resolve("lines-" + lines);
        if (!Files.exists(jobs)) {
            MadeArchive.make(jobs, shifts <= 150 ? 1 : shifts / 100, shifts, each);
        }
        Map<String, List<String>> tools = tools(jobs);
        Map<String, List<Run>> runs = new LinkedHashMap<>();
        for (int round = 0; round <= ROUNDS; round++) {
            for (Map.Entry<String, List<String>> tool : tools.entrySet()) {
                Run run = run(tool.getValue(), out(tool.getKey(), lines));
                if (round > 0) {
                    runs.computeIfAbsent(tool.getKey(), t -> new ArrayList<>()).add(run);
                }
            }
        }
        same(lines);
        return table(lines, runs);
    }

    /** What is asked of whom; the first round warms up and does not count. */
    private static Map<String, List<String>> tools(Path jobs) throws IOException {
        String files = jobs + "/*/diary/*.jsonl";
        Path plain = Files.writeString(
                TARGET.resolve("plain.sql"), resource("plain.sql").replace("{files}", files));
        Path whole = Files.writeString(TARGET.resolve("whole.sql"), Query.text("duckdb", files));
        Path script = Files.writeString(TARGET.resolve("plain.sh"), resource("plain.sh"));
        Path python = Files.writeString(TARGET.resolve("plain.py"), resource("plain.py"));
        Map<String, List<String>> tools = new LinkedHashMap<>();
        tools.put("season --loads", program("season", jobs.toString(), "--loads"));
        tools.put("verify", program("verify", jobs.toString()));
        tools.put("DuckDB, plain", duckDb(plain));
        tools.put("DuckDB, corrected", duckDb(whole));
        tools.put(
                "sha256sum",
                List.of("sh", "-c", "find " + jobs + " -name '*.jsonl' -print0 | xargs -0 cat | sha256sum"));
        if (SLOW) {
            tools.put("jq and awk, plain", List.of("sh", script.toString(), files));
            tools.put("Python, plain", List.of("python3", python.toString(), files));
        }
        return tools;
    }

    /**
     * The launcher as anybody starts it, with the heap that all are given; the round that does not count leaves the
     * archives of classes. Nothing of any archive's figures is kept anywhere.
     */
    private static List<String> program(String... words) {
        List<String> command = new ArrayList<>(List.of(
                "env",
                "JDK_JAVA_OPTIONS=-Xmx64m",
                "JAVA_HOME=" + System.getProperty("java.home"),
                "XDG_CACHE_HOME=" + TARGET.resolve("classes"),
                LAUNCHER.toString()));
        command.addAll(List.of(words));
        return command;
    }

    private static List<String> duckDb(Path query) {
        return List.of(
                JAVA,
                "-XX:+UseSerialGC",
                "-Xmx64m",
                "-cp",
                at(DuckDb.class) + System.getProperty("path.separator") + at(driver()),
                DuckDb.class.getName(),
                query.toString());
    }

    private static Class<?> driver() {
        try {
            return Class.forName("org.duckdb.DuckDBDriver");
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The folder or jar that a class comes from. */
    private static String at(Class<?> type) {
        return Path.of(java.net.URI.create(
                        type.getProtectionDomain().getCodeSource().getLocation().toString()))
                .toString();
    }

    private static String resource(String name) throws IOException {
        return Files.readString(Path.of("src/test/resources/bench", name));
    }

    private static Path out(String tool, int lines) {
        return TARGET.resolve(lines + "-" + tool.replaceAll("[^A-Za-z0-9]+", "-") + ".out");
    }

    /** A process from its start to its end, and the most memory that it was seen to hold. */
    private static Run run(List<String> command, Path out) throws Exception {
        long began = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(TARGET.resolve("err.txt").toFile())
                .start();
        Path status = Path.of("/proc", Long.toString(process.pid()), "status");
        long most = 0;
        while (!process.waitFor(20, TimeUnit.MILLISECONDS)) {
            most = Math.max(most, held(status));
        }
        double seconds = (System.nanoTime() - began) / 1e9;
        assertThat(process.exitValue())
                .as(command + " " + Files.readString(TARGET.resolve("err.txt")))
                .isZero();
        return new Run(seconds, most);
    }

    private static long held(Path status) {
        try {
            for (String line : Files.readAllLines(status)) {
                if (line.startsWith("VmHWM:")) {
                    return Long.parseLong(line.replaceAll("[^0-9]", ""));
                }
            }
        } catch (IOException ended) {
            return 0;
        }
        return 0;
    }

    private static void same(int lines) throws IOException {
        String plain = Files.readString(out("DuckDB, plain", lines));
        assertThat(plain).isNotBlank();
        if (SLOW) {
            assertThat(Files.readString(out("jq and awk, plain", lines))).isEqualTo(plain);
            assertThat(Files.readString(out("Python, plain", lines))).isEqualTo(plain);
        }
        assertThat(Files.readAllLines(out("DuckDB, corrected", lines)))
                .isEqualTo(DuckDb.plain(Files.readString(out("season --loads", lines))));
        assertThat(Files.readString(out("verify", lines))).contains("as it was written: ");
    }

    private static String table(int lines, Map<String, List<Run>> runs) {
        double duck = seconds(runs.get("DuckDB, plain"));
        double sum = seconds(runs.get("sha256sum"));
        StringBuilder table = new StringBuilder(String.format(
                "| %,d lines, medians of %d | s | x DuckDB, plain | x sha256sum | MiB |%n|---|---|---|---|---|%n",
                lines, ROUNDS));
        runs.forEach((tool, its) -> table.append(String.format(
                "| %s | %.2f | %.2f | %.1f | %d |%n",
                tool,
                seconds(its),
                seconds(its) / duck,
                seconds(its) / sum,
                its.stream().mapToLong(Run::kibibytes).max().orElse(0) / 1024)));
        return table.append('\n').toString();
    }

    private static double seconds(List<Run> runs) {
        List<Double> sorted = runs.stream().map(Run::seconds).sorted().toList();
        return sorted.get(sorted.size() / 2);
    }
}
