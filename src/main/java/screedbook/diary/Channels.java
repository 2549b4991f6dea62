package screedbook.diary;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.util.Set;

/** How files are opened for writing; {@code FileChannel::open}, or in tests a disk that makes trouble. */
@FunctionalInterface
interface Channels {
    FileChannel open(Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes) throws IOException;
}
