package screedbook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.diary.JobFolder;

/** A job that is made, and what is there already. */
class NewCommandTest {
    @TempDir
    Path folder;

    private Path job;

    @BeforeEach
    void nameTheJob() {
        job = folder.resolve("bend");
    }

    @Test
    void newMakesAJobThatCanBeReadAtOnce() {
        Said said = Said.by("new", job.toString());

        assertThat(said.exit()).isZero();
        assertThat(said.err()).isEmpty();
        assertThat(said.out().lines()).contains("made " + job.resolve("job.json"), "made " + job.resolve("README.txt"));
        assertThat(said.out()).endsWith("then open the desk: screedbook " + job + "\n");
        assertThat(JobFolder.at(job).job().troubles()).isEmpty();
        assertThat(JobFolder.at(job).job().job()).isPresent();
    }

    @Test
    void newLeavesWhatIsThereAsItIs() throws IOException {
        Said.by("new", job.toString());
        Files.writeString(job.resolve("job.json"), "mine");
        Files.delete(job.resolve("README.txt"));

        Said said = Said.by("new", job.toString());

        assertThat(said.exit()).isZero();
        assertThat(said.out().lines()).startsWith("made " + job.resolve("README.txt"));
        assertThat(job.resolve("job.json")).hasContent("mine");
        assertThat(Said.by("new", job.toString()).out()).isEqualTo("everything is there already in " + job + "\n");
    }

    @Test
    void newSaysWhereNoFolderCanBeMade() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "");

        Said said = Said.by("new", file.resolve("job").toString());

        assertThat(said.exit()).isEqualTo(3);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).startsWith("screedbook new: " + file).hasLineCount(1);
    }
}
