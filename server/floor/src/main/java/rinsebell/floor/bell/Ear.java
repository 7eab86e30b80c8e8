package rinsebell.floor.bell;

import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.StaffId;

/** For whom a device listens. */
public sealed interface Ear {
    /** The phone in somebody's apron. */
    record Of(StaffId person) implements Ear {}

    /** A tablet that stays at a chair, a basin or the bench. */
    record At(Place place) implements Ear {}

    /** A screen that several share. */
    record Shared(Crowd crowd) implements Ear {}

    /** It rings for whatever rings. */
    record Everything() implements Ear {}
}
