package rinsebell.demo.faults;

import org.jspecify.annotations.Nullable;
import rinsebell.floor.Command;
import rinsebell.floor.salon.StaffId;

/**
 * A press on its way to the server.
 *
 * @param from the device; null for the server's own
 * @param id as it is sent
 * @param act the number of what somebody did with a finger, however it is sent
 * @param age how long it was on its way in milliseconds, told only when it was not sent at once
 * @param sure whether the device knows that age, rather than take a step of its clock for sleep
 * @param sent the salon's time at which it was sent, as the device knows it; null where it does not
 * @param pressedAt the true time at which it was pressed
 */
record Letter(
        @Nullable Tablet from,
        String id,
        long act,
        Command command,
        @Nullable StaffId by,
        @Nullable Long age,
        boolean sure,
        @Nullable Long sent,
        long pressedAt) {}
