package screedbook.diary;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import screedbook.entry.ShiftId;

/** Short diary lines for tests, and a diary to put them in. */
final class Lines {
    static final FileName NIGHT = FileName.of(ShiftId.of("2026-06-03-night"), "paver", 1);

    private Lines() {}

    /** The n-th line after another, with a text that takes more than one byte a letter. */
    static byte[] line(int n, String prev) {
        return ("{\"n\":" + n + ",\"text\":\"Höhe " + n + "\",\"prev\":\"" + prev + "\"}")
                .getBytes(StandardCharsets.UTF_8);
    }

    /** A whole file of so many lines. */
    static byte[] file(int count) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        String head = Chain.NOTHING_BEFORE;
        for (int n = 1; n <= count; n++) {
            byte[] line = line(n, head);
            bytes.writeBytes(line);
            bytes.write('\n');
            head = Chain.hash(line);
        }
        return bytes.toByteArray();
    }

    static LineFile open(Path folder) {
        return open(folder, FileChannel::open);
    }

    static LineFile open(Path folder, Channels channels) {
        return opened(folder, channels).file();
    }

    static Access.Opened opened(Path folder, Channels channels) {
        Access opening = LineFile.open(folder, NIGHT, "RK since 21:00", Chain.NOTHING_BEFORE, channels);
        assertThat(opening).isInstanceOf(Access.Opened.class);
        return (Access.Opened) opening;
    }

    /** Appends the next line of the file. */
    static Appended append(LineFile file) {
        return file.append(line(file.lines() + 1, file.head()));
    }

    static Appended.Forced appended(LineFile file) {
        Appended appended = append(file);
        assertThat(appended).isInstanceOf(Appended.Forced.class);
        return (Appended.Forced) appended;
    }

    static Appended.Refused refused(LineFile file) {
        Appended appended = append(file);
        assertThat(appended).isInstanceOf(Appended.Refused.class);
        return (Appended.Refused) appended;
    }

    static List<RawLine.Link> links(Chain.Walk walk) {
        return walk.lines().stream().map(RawLine::link).collect(Collectors.toList());
    }
}
