package rinsebell.floor.visit;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.TextId;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.StaffId;

/**
 * Where a client is, and with whom.
 *
 * @param label where the short label stands
 * @param client whose record; null when nobody known
 * @param place where they are now
 * @param placeSince since when
 * @param chair the last chair they sat in; null for none yet
 * @param stylist whose client; null for nobody yet
 * @param helper who helps; null for nobody
 * @param arrivedAt when they came
 * @param leftAt when they went; null while they are here
 */
public record Stay(
        TextId label,
        @Nullable ClientId client,
        Place place,
        Instant placeSince,
        Place.@Nullable Chair chair,
        @Nullable StaffId stylist,
        @Nullable StaffId helper,
        Instant arrivedAt,
        @Nullable Instant leftAt) {
    Stay labelled(TextId next) {
        return new Stay(next, client, place, placeSince, chair, stylist, helper, arrivedAt, leftAt);
    }

    Stay linked(@Nullable ClientId next) {
        return new Stay(label, next, place, placeSince, chair, stylist, helper, arrivedAt, leftAt);
    }

    Stay movedTo(Place next, Instant at) {
        var sat = next instanceof Place.Chair seat ? seat : chair;
        return new Stay(label, client, next, at, sat, stylist, helper, arrivedAt, leftAt);
    }

    Stay with(@Nullable StaffId nextStylist, @Nullable StaffId nextHelper) {
        return new Stay(label, client, place, placeSince, chair, nextStylist, nextHelper, arrivedAt, leftAt);
    }

    Stay leftAt(Instant at) {
        return new Stay(label, client, place, placeSince, chair, stylist, helper, arrivedAt, at);
    }
}
