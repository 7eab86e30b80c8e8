package rinsebell.app;

/** The server cannot start, for a reason that the person who starts it can mend. The message is that reason. */
public final class CannotStart extends Exception {

    CannotStart(String reason) {
        super(reason, null, false, false);
    }
}
