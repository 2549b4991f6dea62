package screedbook.term;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;

/** The clock of this machine; its zone is looked up when it is first asked for, for that takes a while, and stays. */
final class MachineClock extends Clock {
    private ZoneId zone;

    @Override
    public synchronized ZoneId getZone() {
        if (zone == null) {
            zone = ZoneId.systemDefault();
        }
        return zone;
    }

    @Override
    public Clock withZone(ZoneId other) {
        return Clock.system(other);
    }

    @Override
    public Instant instant() {
        return Instant.now();
    }
}
