package screedbook.diary;

import java.time.ZoneOffset;

/** The offset from UTC that stood in the line before: the next line mostly has the same. */
final class Offsets {
    private ZoneOffset last = ZoneOffset.UTC;

    ZoneOffset of(int seconds) {
        if (last.getTotalSeconds() != seconds) {
            last = ZoneOffset.ofTotalSeconds(seconds);
        }
        return last;
    }
}
