package rinsebell.demo.faults;

import org.jspecify.annotations.Nullable;

/** What {@code feed.js} does: shows what comes and is not older, notices when nothing comes, and opens again. */
final class Feed {
    private static final double STALE = 12_000;

    private final Day day;
    private final Tablet tablet;
    private @Nullable Line source;
    private Plan shown;
    private double heard;
    private double opened;
    private int process;
    private boolean reopening;
    private boolean watching;
    private int tries;

    Feed(Day day, Tablet tablet, Plan loaded) {
        this.day = day;
        this.tablet = tablet;
        this.shown = loaded;
        heard = tablet.steady();
    }

    Plan shown() {
        return shown;
    }

    /** Whether the page says that it hears nothing. */
    boolean isAlone() {
        return tablet.steady() - heard >= STALE;
    }

    /** Whether this device is connected by a line that carries. */
    boolean isLive() {
        return source != null && source.isWhole();
    }

    @Nullable
    Line source() {
        return source;
    }

    void open() {
        close();
        reopening = false;
        opened = tablet.steady();
        var mine = ++tries;
        watch();
        if (!tablet.air.carries()) {
            return;
        }
        var page = tablet.page();
        day.agenda.in(
                tablet.air.way() + tablet.air.way(),
                () -> tablet.arrives(() -> {
                    if (page == tablet.page() && mine == tries && tablet.air.carries()) {
                        connects();
                    }
                }));
    }

    private void connects() {
        var life = day.server.life();
        if (life != null) {
            source = new Line(day, life, tablet);
            tablet.connected();
            life.join(source);
        } else if (!day.server.isUp() && !day.server.isSuspended()) {
            reopen();
        }
    }

    void close() {
        if (source != null) {
            source.breaks();
            source = null;
        }
    }

    void lost(Line line) {
        if (line == source) {
            reopen();
        }
    }

    private void reopen() {
        close();
        if (!reopening && day.parts.reopens()) {
            reopening = true;
            var page = tablet.page();
            tablet.inSteady(1_000 + day.dice.below(2_000), () -> {
                if (page == tablet.page() && reopening) {
                    open();
                }
            });
        }
    }

    void beats(Line line, long salonMillis) {
        if (line == source) {
            tablet.sync.hear(salonMillis);
            heard = tablet.steady();
        }
    }

    void takes(Line line, Plan plan) {
        if (line == source) {
            process = plan.run();
            heard = tablet.steady();
            show(plan);
        }
    }

    /** Shows a plan, wherever it comes from, unless the page shows a newer one. */
    void show(Plan plan) {
        if (!isRefusedByRule(plan)) {
            tablet.expected.told(plan.asItIs());
        }
        if (!day.parts.isOlder(isRefusedByRule(plan), plan, shown)) {
            shown = plan;
            tablet.planMoved();
        }
    }

    private boolean isRefusedByRule(Plan plan) {
        var was = tablet.expected.plan();
        return plan.run() == was.run() ? plan.number() < was.number() : process != 0 && plan.run() != process;
    }

    /** Looks each second whether something comes, while nothing does. */
    private void watch() {
        if (!watching) {
            watching = true;
            var page = tablet.page();
            tablet.inSteady(1_000, () -> {
                watching = false;
                if (page == tablet.page()) {
                    look();
                }
            });
        }
    }

    private void look() {
        if (isAlone() && tablet.steady() - opened > STALE) {
            reopen();
        }
        if (!isLive() || isAlone()) {
            watch();
        }
    }

    /** The air or the other end is gone, though nobody says so. */
    void goesSilent() {
        if (source != null) {
            source.breaks();
        }
        watch();
    }

    /** Nothing was heard while the device slept. */
    void woke(double slept) {
        heard -= slept;
        open();
    }

    void wakes() {
        if (tablet.steady() - Math.max(heard, opened) > STALE / 2) {
            open();
        } else if (!isLive()) {
            watch();
        }
    }
}
