package rinsebell.app.access;

import java.time.Duration;
import rinsebell.db.Keyring;
import rinsebell.floor.salon.StaffId;

/** Tries a PIN that was typed. */
record PinCheck(Keyring keyring, Guesses guesses) {
    /** What nobody's PIN is the hash of: whoever has no PIN takes as long to be told so as whoever has one. */
    private static final String NOBODYS = PinHash.of("nobody");

    enum Kind {
        RIGHT,
        WRONG,
        /** Too many were wrong; it was not even looked at. */
        WAIT
    }

    /** @param left how long until the next may be tried; zero where it was tried */
    record Given(Kind kind, Duration left) {}

    Given give(StaffId person, long device, String pin) {
        var kept = keyring.pin(person);
        var known = kept.filter(one -> one.knownOn().contains(device)).isPresent();
        var wait = guesses.begin(person, device, known);
        if (!wait.isZero()) {
            return new Given(Kind.WAIT, wait);
        }
        if (!PinHash.matches(pin, kept.map(Keyring.Pin::hash).orElse(NOBODYS)) || kept.isEmpty()) {
            return new Given(Kind.WRONG, Duration.ZERO);
        }
        if (isAnotherSince(person, kept.get())) {
            return new Given(Kind.WRONG, Duration.ZERO);
        }
        guesses.right(person, device, known);
        keyring.noteKnown(person, device);
        return new Given(Kind.RIGHT, Duration.ZERO);
    }

    /** While it was reckoned they may have chosen another, or it was taken away. */
    private boolean isAnotherSince(StaffId person, Keyring.Pin before) {
        return keyring.pin(person)
                .filter(pin -> pin.hash().equals(before.hash()))
                .isEmpty();
    }
}
