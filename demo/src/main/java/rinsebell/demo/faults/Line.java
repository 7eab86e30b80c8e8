package rinsebell.demo.faults;

/** One stream from the server to a device, as long as both ends or the air between keep it. */
final class Line {
    private final Day day;
    private final Life life;
    private final Tablet tablet;
    private boolean whole = true;
    private long lastArrival;

    Line(Day day, Life life, Tablet tablet) {
        this.day = day;
        this.life = life;
        this.tablet = tablet;
    }

    /** Whether what is sent arrives. */
    boolean isWhole() {
        return whole;
    }

    /** From now on nothing arrives, and nobody says so. */
    void breaks() {
        whole = false;
        life.leave(this);
    }

    /** In order, as on every connection. */
    void send(Plan plan) {
        lastArrival = Math.max(lastArrival, day.agenda.now() + tablet.air.way());
        day.agenda.at(lastArrival, () -> {
            if (whole) {
                tablet.arrives(() -> tablet.feed.takes(this, plan));
            }
        });
    }

    /** A beat lies on its way as long as anything does; that hundreds of them may be told in one event, it is not waited for. */
    void beat(long salonMillis) {
        if (whole && tablet.isAwake()) {
            tablet.feed.beats(this, salonMillis - 20);
        }
    }

    /** A process that is killed ends its connections; a machine without power says nothing. */
    void serverGone(boolean powerGone) {
        var was = whole;
        breaks();
        if (was && powerGone) {
            tablet.feed.goesSilent();
        } else if (was) {
            day.agenda.in(tablet.air.way(), () -> tablet.arrives(() -> tablet.feed.lost(this)));
        }
    }
}
