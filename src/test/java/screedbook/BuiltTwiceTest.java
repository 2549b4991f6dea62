package screedbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The packed program built twice from the same sources, in two folders: byte for byte the same. It costs three whole
 * builds without tests, half a minute each on two quiet cores, and needs what the build that runs it has fetched.
 */
@Tag("heavy")
class BuiltTwiceTest {
    @TempDir
    Path folder;

    @Test
    void twoBuildsInTwoFoldersAreTheSameToTheByteAndOneOfOtherSourcesIsNot() throws Exception {
        String first = built(folder.resolve("first"));
        String second = built(folder.resolve("another/place"));
        Path changed = folder.resolve("changed");
        copied(changed);
        Path page = changed.resolve("src/main/resources/job/README.txt");
        Files.writeString(page, Files.readString(page) + "\n");

        assertThat(second).isEqualTo(first);
        assertThat(packed(changed)).as("what differs is seen").isNotEqualTo(first);
        System.out.println("built twice, screedbook.jar SHA-256 " + first);
    }

    private static String built(Path place) throws Exception {
        copied(place);
        return packed(place);
    }

    private static void copied(Path place) throws IOException {
        Files.createDirectories(place);
        Files.copy(Path.of("pom.xml"), place.resolve("pom.xml"));
        Path main = Path.of("src/main");
        Files.walkFileTree(main, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Path to = place.resolve(file.toString());
                Files.createDirectories(to.getParent());
                Files.copy(file, to);
                return FileVisitResult.CONTINUE;
            }
        });
    }

    private static String packed(Path place) throws Exception {
        Path log = place.resolve("log.txt");
        Process maven = new ProcessBuilder(
                        List.of("mvn", "-B", "-q", "-o", "-Dmaven.test.skip=true", "clean", "package"))
                .directory(place.toFile())
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        boolean ended = maven.waitFor(10, TimeUnit.MINUTES);
        maven.destroyForcibly();
        assertThat(ended && maven.exitValue() == 0).as(Files.readString(log)).isTrue();
        byte[] jar = Files.readAllBytes(place.resolve("target/screedbook.jar"));
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(jar));
    }
}
