package rinsebell.app.press;

import rinsebell.web.form.Fields;

/**
 * For how long a press was held up between the screen that sent it and here: by a network that lost it for a while, or by
 * a machine that slept while it was coming in. What a press says of its age ends when it is sent.
 *
 * @param millis salon milliseconds; 0 for one that came as presses come
 */
public record HeldUp(long millis) {
    private static final HeldUp NOT = new HeldUp(0);

    /** Less is the way itself, and what a screen's clock may miss; common practice, no source. */
    private static final long LEAST_MILLIS = 1_000;

    /** No screen waits that long for an answer: more is two clocks that disagree. */
    private static final long MOST_MILLIS = 30_000;

    private static final String AGE = "age";

    /**
     * Reckons it.
     *
     * @param sent the salon's time at which it was sent, as the screen knows it, in milliseconds since 1970
     * @param now the salon's time at which it is here
     * @param speed salon milliseconds in each real one
     */
    public static HeldUp between(long sent, long now, int speed) {
        var realMillis = (now - sent) / speed;
        return realMillis > LEAST_MILLIS && realMillis < MOST_MILLIS ? new HeldUp(now - sent) : NOT;
    }

    /** What a header says; a screen that does not know the salon's time says nothing. */
    static HeldUp since(String header, long now, int speed) {
        return header.matches("\\d{1,15}") ? between(Long.parseLong(header), now, speed) : NOT;
    }

    /** The press, so much older; where nobody knows how old it is, as it was. */
    Fields olderBy(Fields typed) {
        var age = typed.first(AGE).orElse("0");
        return millis > 0 && age.matches("\\d{1,12}")
                ? Fields.of(AGE, String.valueOf(Long.parseLong(age) + millis)).orElse(typed)
                : typed;
    }
}
