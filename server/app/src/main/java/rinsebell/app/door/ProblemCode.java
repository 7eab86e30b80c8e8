package rinsebell.app.door;

import java.util.Locale;
import java.util.OptionalInt;

/** Every way in which a request can fail before or beside the rules of the floor. */
public enum ProblemCode {
    /** The request is not HTTP that can be read. */
    BAD_REQUEST(400),
    /** The body is not the JSON or the form that its type promises. */
    UNREADABLE_BODY(400),
    /** A POST to the API has no press id. */
    PRESS_ID_MISSING(400),
    /** A press id has a form that none of ours has. */
    PRESS_ID_UNREADABLE(400),
    /** A POST came from a page of another site, or cannot show that it did not. */
    OTHER_ORIGIN(403),
    /** Whoever asks was not let in. */
    STRANGER(403),
    /** What is asked for is private, and nobody has given a PIN here just now. */
    LOCKED(403),
    /** The key that a program shows is none of ours. */
    KEY_UNKNOWN(401),
    /** The key that a program shows is not for that. */
    KEY_NOT_FOR_THAT(403),
    /** Whose PIN was given may not do that. */
    NOT_YOURS(403),
    /** What is private is not shown where others on the network could read it along. */
    READ_ALONG(403),
    /** Nothing lives at this address. */
    NOT_FOUND(404),
    /** The feed has no such board. */
    UNKNOWN_BOARD(404),
    /** The address lives, the method does not. */
    WRONG_METHOD(405),
    /** The body did not come in, or came in so slowly that somebody must mean harm. */
    TOO_SLOW(408),
    /** The wall clock was not set: there is nothing to confirm. */
    CLOCK_AGREES(409),
    /** The wall clock shows a time that no salon's clock can show. */
    CLOCK_ABSURD(409),
    /** The record is of somebody who is here now. */
    CLIENT_IS_HERE(409),
    /** The body is larger than the door lets in. */
    TOO_LARGE(413),
    /** The address is longer than the door lets in. */
    ADDRESS_TOO_LONG(414),
    /** The body is of a kind that nothing here reads. */
    UNKNOWN_TYPE(415),
    /** The request names another house. */
    OTHER_HOST(421),
    /** Fields of the form are missing or wrong; every one of them is listed. */
    FIELDS(422),
    /** One press id came with two different presses. */
    PRESS_ID_REUSED(422),
    /** As many streams of one browser are open as leave it a connection for anything else. */
    TOO_MANY_TABS(429),
    /** The headers are larger than the door lets in. */
    HEADERS_TOO_LARGE(431),
    /** A bug. */
    BUG(500),
    /** What stands beside the floor, such as records of clients, can't be read just now. */
    RECORDS_AWAY(503),
    /** So many ask for reports that whoever came last would have to wait. */
    REPORTS_BUSY(503, 5),
    /** So many who are not in ask at once that others have to wait. */
    CROWDED(503, 5),
    /** The press could not be made durable; the floor is as before. */
    NOT_SAVED(503),
    /** The same, but somebody is hurt, so it rings on every screen although it is not on disk. */
    NOT_SAVED_BUT_RINGS(503),
    /** The press is still being written: sent again with the same press id it is told whether it counts. */
    NOT_KNOWN_YET(503),
    /** As many screens are connected as the feed serves. */
    TOO_MANY_SCREENS(503);

    private static final int NOBODY_KNOWS = -1;

    private final int status;
    private final int retryAfterSeconds;

    ProblemCode(int status) {
        this(status, NOBODY_KNOWS);
    }

    ProblemCode(int status, int retryAfterSeconds) {
        this.status = status;
        this.retryAfterSeconds = retryAfterSeconds;
    }

    /** The status of the answer (RFC 9110). */
    public int status() {
        return status;
    }

    /** After how many seconds asking again is worth it (RFC 9110, section 10.2.3); empty where nobody can tell. */
    OptionalInt retryAfterSeconds() {
        return retryAfterSeconds == NOBODY_KNOWS ? OptionalInt.empty() : OptionalInt.of(retryAfterSeconds);
    }

    /** The code as scripts read it, such as {@code not-found}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The code for a status that a library chose. */
    static ProblemCode ofStatus(int status) {
        return switch (status) {
            case 404 -> NOT_FOUND;
            case 405 -> WRONG_METHOD;
            case 408 -> TOO_SLOW;
            case 413 -> TOO_LARGE;
            case 414 -> ADDRESS_TOO_LONG;
            case 415 -> UNKNOWN_TYPE;
            case 421 -> OTHER_HOST;
            case 431 -> HEADERS_TOO_LARGE;
            // An unknown version of HTTP is the client's mistake, whatever its number says.
            case 505 -> BAD_REQUEST;
            default -> status >= 500 ? BUG : BAD_REQUEST;
        };
    }
}
