package screedbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A file system of its own in a file, which can lose its power and be mounted again. Only root can mount it. */
public final class LoopDisk implements AutoCloseable {
    /** {@code FS_IOC_SHUTDOWN}, that is {@code _IOR('X', 125, __u32)}: include/uapi/linux/fs.h of Linux. */
    private static final String SHUTDOWN = Long.toString(0x8004587DL);

    /** Nothing that is still in memory reaches the disk, the journal neither: flag 2 of the same call. */
    private static final String NO_LOG_FLUSH = "2";

    private static final String PERL = "use Time::HiRes qw(clock_gettime CLOCK_MONOTONIC);"
            + " my ($path, $request, $flag) = @ARGV; sysopen(my $d, $path, 0) or die \"$path: $!\\n\";"
            + " my $flags = pack('L', $flag); my $from = clock_gettime(CLOCK_MONOTONIC);"
            + " ioctl($d, $request, $flags) or die \"ioctl: $!\\n\"; printf('%.0f', $from * 1e9)";

    private final Path image;
    private final Path at;
    private boolean mounted;

    private LoopDisk(Path image, Path at) {
        this.image = image;
        this.at = at;
    }

    /** Makes and mounts one; where that cannot be done it is said, and the test is skipped or, if it has to run, red. */
    public static LoopDisk mounted(String type, int mebibytes, Path folder) throws IOException, InterruptedException {
        Path image = folder.resolve(type + ".img");
        try (RandomAccessFile file = new RandomAccessFile(image.toFile(), "rw")) {
            file.setLength(mebibytes * 1024L * 1024L);
        }
        LoopDisk disk = new LoopDisk(image, Files.createDirectories(folder.resolve(type)));
        boolean made = run("mkfs." + type, "-q", image.toString()) == 0 && disk.tryToMount();
        if (!made) {
            System.out.println(
                    "NOT TESTED: a disk of its own with " + type + ": needs root, mount, perl and mkfs." + type);
        }
        if (Tried.all()) {
            assertThat(made).as("a disk with " + type).isTrue();
        }
        assumeTrue(made, "needs root and mkfs." + type);
        return disk;
    }

    /** Where it is mounted. */
    public Path at() {
        return at;
    }

    /**
     * Nothing reaches the disk any more; every call ends in an error until it is mounted again. But a force that runs
     * while the kernel shuts the file system down may still say that all is well: 14 of 60 times for a plain program of
     * twenty lines on ext4 (Linux 6.18). No processor runs on when the power goes, so only what was told before this
     * moment counts as promised.
     *
     * @return when it began, as {@link System#nanoTime()} counts on Linux
     */
    public long powerOff() throws IOException, InterruptedException {
        Process perl = new ProcessBuilder("perl", "-e", PERL, at.toString(), SHUTDOWN, NO_LOG_FLUSH)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String began = new String(perl.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
        assertThat(perl.waitFor()).as("the file system is shut down").isZero();
        return Long.parseLong(began);
    }

    public void mount() throws IOException, InterruptedException {
        assertThat(tryToMount()).as("mounted again").isTrue();
    }

    public void unmount() throws IOException, InterruptedException {
        assertThat(run("umount", at.toString())).as("unmounted").isZero();
        mounted = false;
    }

    /** The name is gone from the tree although files of it are open, as when a stick is pulled. */
    public void pull() throws IOException, InterruptedException {
        assertThat(run("umount", "-l", at.toString())).as("pulled").isZero();
        mounted = false;
    }

    /** The kernel sees an error in an ext4 and from then on lets it only be read, with files of it open. */
    public void damaged() throws IOException, InterruptedException {
        assertThat(run("mount", "-o", "remount,errors=remount-ro", at.toString()))
                .isZero();
        String device = Files.getFileStore(at).name().replaceFirst(".*/", "");
        Path trigger = Path.of("/sys/fs/ext4", device, "trigger_fs_error");
        if (!Files.isWritable(trigger)) {
            System.out.println("NOT TESTED: a disk on which the kernel finds an error: cannot write " + trigger);
            assertThat(Tried.all())
                    .as("a disk on which the kernel finds an error")
                    .isFalse();
        }
        assumeTrue(Files.isWritable(trigger), "needs " + trigger);
        Files.writeString(trigger, "tried on purpose");
    }

    @Override
    public void close() throws IOException, InterruptedException {
        if (mounted) {
            run("umount", "-l", at.toString());
        }
        Files.deleteIfExists(image);
    }

    private boolean tryToMount() throws IOException, InterruptedException {
        mounted = run("mount", "-o", "loop", image.toString(), at.toString()) == 0;
        return mounted;
    }

    /** The exit code of a command, or -1 when there is none of that name. */
    public static int run(String... command) throws IOException, InterruptedException {
        try {
            return new ProcessBuilder(List.of(command)).inheritIO().start().waitFor();
        } catch (IOException e) {
            System.out.println(e.getMessage());
            return -1;
        }
    }
}
