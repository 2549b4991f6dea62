package screedbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.diary.Archive;
import screedbook.diary.JobFolder;
import screedbook.diary.Jobs;
import screedbook.diary.MadeArchive;
import screedbook.report.LoadsCsv;

/**
 * The shipped query for Spark SQL on the archive's own layout, every figure held against the program's. Spark is on the
 * class path in its profile only and is called by name, so that nothing else needs it.
 */
@Tag("spark")
class SparkTest {
    @TempDir
    Path folder;

    @Test
    void sparkTellsTheSameLoadsTonsAndTemperatures() throws Exception {
        Path made = folder.resolve("made");
        MadeArchive.make(made, 2, 9, 400);
        Path archive = folder.resolve("archive");
        List<Path> jobs = new ArrayList<>(Jobs.in(Path.of("demo-logs")));
        jobs.addAll(Jobs.in(made));
        jobs.add(LoadsOfTest.changedUnits(folder.resolve("changed")));
        for (Path job : jobs) {
            Archive.copy(JobFolder.at(job), archive, "", true);
        }
        StringBuilder table = new StringBuilder(LoadsCsv.head());
        try (LoadsOf loads = new LoadsOf()) {
            for (Path job : Jobs.in(archive)) {
                loads.job(
                        job,
                        LocalDate.MIN,
                        LocalDate.MAX,
                        shift -> {},
                        day -> day.mixes().forEach(mix -> table.append(LoadsCsv.row(day.job(), day.day(), mix))));
            }
        }
        List<String> ours = DuckDb.plain(table.toString());

        try (Spark spark = new Spark()) {
            assertThat(ours).hasSizeGreaterThan(10);
            assertThat(spark.rows(Query.text("spark", archive + "/" + Query.ARCHIVE)))
                    .isEqualTo(ours);
            assertThat(spark.rows(Query.text("spark", archive + "/compact/job=*/year=*/month=*/*.jsonl")))
                    .isEqualTo(ours);
        }
    }

    /** A session of Spark in this process. */
    private static final class Spark implements AutoCloseable {
        private final Object session;

        Spark() throws ReflectiveOperationException {
            Object builder = Class.forName("org.apache.spark.sql.SparkSession")
                    .getMethod("builder")
                    .invoke(null);
            builder = call(builder, "master", "local[2]");
            builder = call(builder, "config", "spark.ui.enabled", "false");
            builder = call(builder, "config", "spark.sql.shuffle.partitions", "4");
            builder = call(builder, "config", "spark.sql.session.timeZone", "UTC");
            session = call(builder, "getOrCreate");
        }

        /** Every statement in turn; the rows of the last one. */
        List<String> rows(String script) throws ReflectiveOperationException {
            Object last = null;
            for (String statement : script.replaceAll("(?m)^--.*$", "").split(";")) {
                if (!statement.isBlank()) {
                    last = call(session, "sql", statement);
                }
            }
            List<String> rows = new ArrayList<>();
            for (Object row : (List<?>) call(last, "collectAsList")) {
                List<String> cells = new ArrayList<>();
                int columns = (int) call(row, "length");
                for (int i = 0; i < columns; i++) {
                    cells.add(text(method(row, "get", 1).invoke(row, i)));
                }
                rows.add(String.join(",", cells));
            }
            return rows;
        }

        private static String text(Object value) {
            if (value instanceof BigDecimal number) {
                return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
            }
            return value == null ? "" : value.toString();
        }

        private static Object call(Object on, String name, Object... words) throws ReflectiveOperationException {
            for (Method method : on.getClass().getMethods()) {
                if (method.getName().equals(name) && fits(method, words)) {
                    method.setAccessible(true);
                    try {
                        return method.invoke(on, words);
                    } catch (InvocationTargetException e) {
                        throw new IllegalStateException(String.valueOf(e.getCause()), e.getCause());
                    }
                }
            }
            throw new NoSuchMethodException(on.getClass() + " " + name);
        }

        private static boolean fits(Method method, Object[] words) {
            Class<?>[] types = method.getParameterTypes();
            boolean fits = types.length == words.length;
            for (int i = 0; fits && i < types.length; i++) {
                fits = types[i].isInstance(words[i]);
            }
            return fits;
        }

        private static Method method(Object on, String name, int words) throws NoSuchMethodException {
            for (Method method : on.getClass().getMethods()) {
                if (method.getName().equals(name)
                        && method.getParameterCount() == words
                        && method.getParameterTypes()[0] == int.class) {
                    method.setAccessible(true);
                    return method;
                }
            }
            throw new NoSuchMethodException(name);
        }

        @Override
        public void close() throws ReflectiveOperationException {
            call(session, "stop");
        }
    }
}
