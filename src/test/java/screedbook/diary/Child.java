package screedbook.diary;

import com.fasterxml.jackson.core.JsonFactory;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URISyntaxException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.assertj.core.api.Assertions;
import screedbook.entry.Line;
import screedbook.entry.Receipt;

/** A second Java process that keeps a diary, and the main programs it can run. */
final class Child implements AutoCloseable {
    private final Process process;
    private final BufferedReader out;

    /** Starts one of the programs below, with its arguments. */
    Child(String... arguments) throws IOException {
        this(List.of(), arguments);
    }

    /** Starts one without root's right to pass over permissions; takes root, or is an ordinary user's anyway. */
    static Child ordinary(String... arguments) throws IOException {
        boolean root = "root".equals(System.getProperty("user.name"));
        return new Child(
                root
                        ? List.of("setpriv", "--bounding-set=-dac_override,-dac_read_search,-fowner", "--inh-caps=-all")
                        : List.of(),
                arguments);
    }

    private Child(List<String> before, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(before);
        command.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-XX:-UsePerfData",
                "-Xmx64m",
                "-cp",
                String.join(
                        System.getProperty("path.separator"),
                        place(Chain.class),
                        place(Child.class),
                        place(JsonFactory.class),
                        place(Assertions.class)),
                Child.class.getName()));
        command.addAll(List.of(arguments));
        process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        out = process.inputReader(StandardCharsets.UTF_8);
    }

    /** The next line it prints; null when it ended. */
    String says() throws IOException {
        return out.readLine();
    }

    void tell(String line) throws IOException {
        process.getOutputStream().write((line + "\n").getBytes(StandardCharsets.UTF_8));
        process.getOutputStream().flush();
    }

    /** Ends it as {@code kill -9} does; what it printed before can still be read. */
    void kill() throws InterruptedException {
        process.toHandle().destroyForcibly();
        process.waitFor(30, TimeUnit.SECONDS);
    }

    int ended() throws InterruptedException {
        return process.waitFor(30, TimeUnit.SECONDS) ? process.exitValue() : -1;
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }

    private static String place(Class<?> type) {
        try {
            return Path.of(type.getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .toString();
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[1]);
        if (arguments[0].equals("keep")) {
            keep(folder);
        } else if (arguments[0].equals("narrow")) {
            narrow(folder);
        } else if (arguments[0].equals("book")) {
            book(folder, arguments[2].equals("forced"));
        } else if (arguments[0].equals("sitting")) {
            sitting(folder);
        } else if (arguments[0].equals("look")) {
            look(folder);
        } else {
            write(folder);
        }
    }

    /** Holds a diary until told to end; "read" makes it read its own diary through another descriptor. */
    private static void keep(Path folder) throws IOException {
        LineFile file = open(folder, "BT in the trailer since 20:45");
        print("holding");
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        for (String line = in.readLine(); line != null && !line.equals("end"); line = in.readLine()) {
            print("read " + Files.readAllBytes(file.path()).length);
        }
        file.close();
    }

    /** Appends without end and prints the number of each line once it is on the disk. */
    private static void write(Path folder) {
        LineFile file = open(folder, "writing");
        while (true) {
            Appended appended = file.append(Lines.line(file.lines() + 1, file.head()));
            if (!(appended instanceof Appended.Forced)) {
                throw new IllegalStateException(appended.toString());
            }
            print("" + ((Appended.Forced) appended).line());
        }
    }

    /**
     * Keeps a shift in the book as the desk does, without end, and prints when each line was promised, and its hash;
     * then what the disk had to say. Unforced is a program that lost its force.
     */
    private static void book(Path job, boolean forced) {
        BadDisk disk = new BadDisk();
        disk.forceLies = !forced;
        Opened opened = JobFolder.at(job)
                .open(Shifts.THIRD, "paver", "harrow-bend", "RK", Shifts.NOON, forced ? FileChannel::open : disk);
        Book book = ((Opened.Ready) opened).book();
        boolean begun = !JobFolder.at(job).shift(Shifts.THIRD).day().all().isEmpty();
        Saved saved = book.append(List.of(begun ? Shifts.note("again") : Shifts.opening()), Shifts.NOON)
                .join();
        for (int number = 1; saved.refused().isEmpty(); number++) {
            for (Receipt receipt : saved.receipts()) {
                Line line = receipt.line();
                print(System.nanoTime() + " " + Chain.hash(line.raw().getBytes(StandardCharsets.UTF_8)));
            }
            saved = book.append(List.of(Shifts.ticket(number)), Shifts.NOON).join();
        }
        print("refused " + saved.refused().get().said());
        book.close();
    }

    /** A shift that is opened, closed, written behind the close, and looked at. */
    private static void sitting(Path job) {
        try (Book book = Shifts.open(job, Shifts.THIRD, "paver")) {
            Shifts.saved(book, Shifts.opening(), Shifts.ticket(1));
        }
        try (Book book = Shifts.open(job, Shifts.THIRD, "paver")) {
            print(Shifts.saved(book, Shifts.ticket(2), Shifts.closing()).seal().isPresent() ? "sealed" : "open");
        }
        try (Book book = Shifts.open(job, Shifts.THIRD, "paver")) {
            print(Shifts.saved(book, Shifts.note("late")).receipts().get(0).file());
        }
        print("as written: " + Verify.of(JobFolder.at(job)).sound());
        try {
            Files.write(job.resolve("diary/2026-06-03-day.paver.jsonl"), new byte[] {'x'}, StandardOpenOption.APPEND);
            print("written");
        } catch (IOException e) {
            print(e.getClass().getSimpleName());
        }
    }

    /** A job that may only be looked at: what opening says, and how many entries are seen. */
    private static void look(Path job) {
        Opened opened = JobFolder.at(job).open(Shifts.THIRD, "paver", "harrow-bend", "RK", Shifts.NOON);
        print(opened instanceof Opened.No no ? no.refused().said() : opened.toString());
        print("entries " + JobFolder.at(job).shift(Shifts.THIRD).day().all().size());
        print("as written: " + Verify.of(JobFolder.at(job)).sound());
    }

    /** Lowers the largest file size this process may write to every byte of a line in turn (setrlimit(2)). */
    private static void narrow(Path folder) throws Exception {
        LineFile file = open(folder, "narrow");
        print(file.append(Lines.line(1, file.head())).getClass().getSimpleName());
        long size = Files.size(file.path());
        int length = Lines.line(2, file.head()).length + 1;
        for (int room = 0; room <= length; room++) {
            limit((size + room) + ":");
            Appended appended = file.append(Lines.line(2, file.head()));
            String cause = appended instanceof Appended.Refused
                    ? ((Appended.Refused) appended).cause().name()
                    : "none";
            print(room + " " + cause + " " + Files.size(file.path()));
        }
    }

    private static void limit(String soft) throws Exception {
        String pid = "" + ProcessHandle.current().pid();
        int status = new ProcessBuilder("prlimit", "--pid", pid, "--fsize=" + soft)
                .inheritIO()
                .start()
                .waitFor();
        if (status != 0) {
            throw new IOException("prlimit ended with " + status);
        }
    }

    private static LineFile open(Path folder, String holder) {
        return ((Access.Opened) LineFile.open(folder, Lines.NIGHT, holder, Chain.NOTHING_BEFORE, FileChannel::open))
                .file();
    }

    private static void print(String line) {
        System.out.println(line);
        System.out.flush();
    }
}
