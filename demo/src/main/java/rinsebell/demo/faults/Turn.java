package rinsebell.demo.faults;

import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.Ring;

/** A bell in one of its turns. */
record Turn(Bell bell, Ring ring) {
    /** What makes a device sound anew. */
    record Key(BellKey bell, long from) {}

    Key key() {
        return new Key(bell.key(), ring.from().toEpochMilli());
    }
}
