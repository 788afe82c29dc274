package domefold.app;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;

/** The system's clock. Its time zone is looked up when somebody asks for it, because the rules of all zones are read for that. */
final class LateClock extends Clock {
    @Override
    public ZoneId getZone() {
        return ZoneId.systemDefault();
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return Clock.system(zone);
    }

    @Override
    public Instant instant() {
        return Instant.now();
    }
}
