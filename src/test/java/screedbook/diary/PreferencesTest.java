package screedbook.diary;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is always wanted on a laptop. The place is that of the XDG Base Directory Specification 0.8, from memory. */
class PreferencesTest {
    @TempDir
    Path home;

    @Test
    void theyLieWhereTheSystemExpectsThem() {
        assertThat(Preferences.place(Map.of("HOME", "/home/rk")))
                .contains(Path.of("/home/rk/.config/screedbook/screedbook.conf"));
        assertThat(Preferences.place(Map.of("HOME", "/home/rk", "XDG_CONFIG_HOME", "/etc/rk")))
                .contains(Path.of("/etc/rk/screedbook/screedbook.conf"));
        assertThat(Preferences.place(Map.of("HOME", "/home/rk", "XDG_CONFIG_HOME", "not/absolute")))
                .as("a relative path is not heeded")
                .contains(Path.of("/home/rk/.config/screedbook/screedbook.conf"));
        assertThat(Preferences.place(Map.of())).isEmpty();
    }

    @Test
    void noFileIsNoTrouble() {
        assertThat(Preferences.read(Map.of("HOME", home.toString()))).isEqualTo(Preferences.NONE);
    }

    @Test
    void eachLineIsANameAndAValueAndWhatMeansNothingIsNamedByItsLine() throws Exception {
        Path file = home.resolve(".config/screedbook/screedbook.conf");
        Files.createDirectories(file.getParent());
        Files.writeString(file, "# of this laptop\njob = /jobs/harrow bend\n\nwho=RK\ncolour = none\nlook\n");

        Preferences read = Preferences.read(Map.of("HOME", home.toString()));

        assertThat(read.values()).isEqualTo(Map.of("job", "/jobs/harrow bend", "who", "RK"));
        assertThat(read.troubles())
                .containsExactly(
                        file + ":5: \"colour = none\" is left out; right would be one of job, book, who, look, then"
                                + " = and a value",
                        file + ":6: \"look\" is left out; right would be one of job, book, who, look, then = and a"
                                + " value");
    }
}
