package rinsebell.demo.basins;

import java.util.stream.LongStream;

/** How far a head has come: when each thing began that has begun, in seconds of the day. */
final class Course {
    /** Somebody who weighs and mixes takes so many seconds, and then so many to put it on. House numbers. */
    static final long MIXING = 5 * 60;

    static final long PUTTING_ON = 10 * 60;

    /** Nobody lets it come to a rinse-by: who has not been asked for is, so many seconds before. House number. */
    private static final long SENSE = 5 * 60;

    private static final long NEVER = Sight.NOBODY;

    final Head head;
    long seated = NEVER;
    long mixes = NEVER;
    long begins = NEVER;
    long water = NEVER;
    long left = NEVER;
    int basin;
    int part;
    long partSince = NEVER;

    Course(Head head) {
        this.head = head;
    }

    long firstOn() {
        return mixes == NEVER ? NEVER : mixes + MIXING;
    }

    long stylistFree() {
        return firstOn() + PUTTING_ON;
    }

    long prepared() {
        return begins == NEVER ? NEVER : begins + head.before();
    }

    /** When somebody says that it should be rinsed: it is done, or its rinse-by is near. */
    long asked() {
        if (mixes == NEVER) {
            return NEVER;
        }
        var near = head.by() - head.kind().before() - SENSE;
        return firstOn() + Math.max(head.ready(), Math.min(head.done(), near));
    }

    /** When what is done at the basin ends. */
    long partEnds() {
        return partSince == NEVER ? NEVER : partSince + head.parts().get(part);
    }

    boolean isThere() {
        return water != NEVER && left == NEVER;
    }

    boolean waitsForHands() {
        return isThere() && partSince == NEVER;
    }

    boolean holdsHands(long now) {
        return isThere()
                ? partSince != NEVER && takesHands(part)
                : left == NEVER && begins != NEVER && now < prepared();
    }

    boolean takesHands(int which) {
        return head.work().parts().get(which).what().takesHands();
    }

    /** When something happens by itself, after an instant. */
    long next(long after) {
        return LongStream.of(head.arrives(), firstOn(), stylistFree(), asked(), prepared(), partEnds())
                .filter(instant -> instant > after)
                .min()
                .orElse(NEVER);
    }

    boolean isInSight() {
        return mixes != NEVER && left == NEVER;
    }

    Sight.Seen seen(long now) {
        return new Sight.Seen(
                head.number(),
                head.kind(),
                head.work(),
                firstOn(),
                firstOn() + head.ready(),
                firstOn() + head.by(),
                asked() <= now ? asked() : Sight.NOBODY,
                stage(now),
                since(now),
                basin,
                part,
                partSince);
    }

    private Sight.Stage stage(long now) {
        if (water != NEVER) {
            return Sight.Stage.THERE;
        }
        if (begins != NEVER) {
            return prepared() <= now ? Sight.Stage.PREPARED : Sight.Stage.BEFORE;
        }
        return firstOn() <= now ? Sight.Stage.ON : Sight.Stage.MIXING;
    }

    private long since(long now) {
        return switch (stage(now)) {
            case MIXING -> mixes;
            case ON -> firstOn();
            case BEFORE -> begins;
            case PREPARED -> prepared();
            case THERE -> water;
        };
    }
}
