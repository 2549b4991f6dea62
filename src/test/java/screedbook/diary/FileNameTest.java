package screedbook.diary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import screedbook.entry.ShiftId;

class FileNameTest {
    private static final ShiftId NIGHT = ShiftId.of("2026-06-03-night");

    @Test
    void aNameTellsShiftBookRevisionAndSegment() {
        assertThat(FileName.of(NIGHT, "paver", 1).text()).isEqualTo("2026-06-03-night.paver.jsonl");
        assertThat(FileName.of(NIGHT, "paver", 2).at('b').text()).isEqualTo("2026-06-03-night.paver.r2-b.jsonl");
        assertThat(FileName.of(NIGHT, "paver", 1).beside("lock")).isEqualTo("2026-06-03-night.paver.lock");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-06-03-night.paver.jsonl",
                "2026-06-03-extra-2.paver.jsonl",
                "2026-06-03-day.paver-2-b.jsonl",
                "2026-06-03-day.paver.r2.jsonl",
                "2026-06-03-day.paver.r12-z.jsonl"
            })
    void aNameReadBackIsTheSameName(String text) {
        assertThat(FileName.diary(text).map(diary -> diary.name().text())).contains(text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-06-03-night.paver.lock",
                "2026-06-03-night.paver.jsonl.torn-120",
                "2026-06-03-night.Paver.jsonl",
                "2026-06-03-night.con.jsonl",
                "2026-02-30-day.paver.jsonl",
                "2026-06-03-noon.paver.jsonl",
                "2026-06-03-night.paver.r1.jsonl",
                "2026-06-03-night..jsonl",
                "../2026-06-03-night.paver.jsonl",
                "notes.txt"
            })
    void anotherFileIsNoDiary(String text) {
        assertThat(FileName.diary(text)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "Paver 2, paver-2",
        "Crew Müller, crew-muller",
        "'  a / b ', a-b",
        "../../etc/passwd, etc-passwd",
        "x12345678901234567890123456789012345, x1234567890123456789012345678901"
    })
    void whatWasTypedBecomesASafeName(String typed, String slug) {
        assertThat(FileName.slug(typed)).contains(slug);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "???", "CON", "nul", "com1", "LPT9", "дорога"})
    void whatCannotBeMadeSafeIsNoName(String typed) {
        assertThat(FileName.slug(typed)).isEmpty();
    }

    @Test
    void aBookIsNeverTakenForASegment() {
        assertThat(FileName.isBook("paver-b")).isFalse();
        assertThat(FileName.isBook("paver-2")).isTrue();
        assertThatThrownBy(() -> FileName.of(NIGHT, "paver-b", 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("paver-b");
    }

    @Test
    void nothingFollowsTheLastSegment() {
        FileName first = FileName.of(NIGHT, "paver", 1);
        assertThat(first.next().map(FileName::text)).contains("2026-06-03-night.paver-b.jsonl");
        assertThat(first.at('z').next()).isEmpty();
    }

    /**
     * No character makes a name that some file system takes for another one, for a device, or for a way out: what is
     * forbidden on FAT, NTFS and exFAT, from memory of "Naming Files, Paths, and Namespaces" (Microsoft).
     */
    @Test
    void whateverIsTypedTheNameIsOneOnEveryFileSystem() {
        String forbidden = "<>:\"/\\\\|?*. ";
        for (int c = 0; c < 0x30000; c++) {
            String typed = "Crew" + Character.toString(c) + "7";
            FileName.slug(typed).ifPresent(name -> {
                assertThat(name.chars())
                        .as(typed)
                        .allMatch(each -> each < 0x7F && each > 0x20 && forbidden.indexOf(each) < 0);
                assertThat(name)
                        .as(typed)
                        .isEqualTo(name.toLowerCase(Locale.ROOT))
                        .hasSizeLessThanOrEqualTo(32);
                assertThat(FileName.slug(name)).as(typed).contains(name);
            });
        }
        for (String device : java.util.List.of("con", "prn", "aux", "nul", "com1", "com9", "lpt1", "lpt9")) {
            assertThat(FileName.slug(device + " ")).isEmpty();
            assertThat(FileName.isBook(device)).isFalse();
        }
    }

    /** An accent may be one character or two, as the keyboard has it; the name is the same. */
    @Test
    void bothWaysToWriteAnAccentAreOneName() {
        for (String typed : java.util.List.of("Crew M\u00fcller", "\u00c9quipe 2", "\u0141\u00f3d\u017a")) {
            String apart = java.text.Normalizer.normalize(typed, java.text.Normalizer.Form.NFD);
            assertThat(apart).isNotEqualTo(typed);
            assertThat(FileName.slug(apart)).isEqualTo(FileName.slug(typed));
        }
    }
}
