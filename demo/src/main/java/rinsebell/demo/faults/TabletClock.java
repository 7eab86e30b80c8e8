package rinsebell.demo.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;

/** What {@code clock.js} and {@code offset.js} do, after RFC 5905, line by line. */
final class TabletClock {
    private static final double PHI = 15e-6;
    private static final double PRECISION = 1;
    private static final int STAGES = 8;
    private static final double SLEW = 0.5;
    private static final double LARGEST_SLEW = 2_000;

    private final DoubleSupplier own;
    private final Parts parts;
    private List<Trip> trips = List.of();
    private boolean sure;
    private double correction;
    private double correctedSince;

    /** One question and its answer: how far the server is ahead, how long it took, and when, by our own count. */
    record Trip(double offset, double delay, double at) {
        static Trip of(double asked, double server, double answered) {
            return new Trip((server - asked + (server - answered)) / 2, answered - asked, answered);
        }

        double bound(double now) {
            return delay / 2 + PRECISION + PHI * Math.max(0, now - at);
        }
    }

    /** @param own the device's own count in milliseconds */
    TabletClock(DoubleSupplier own, Parts parts) {
        this.own = own;
        this.parts = parts;
    }

    private Trip surest(double now) {
        var best = trips.get(0);
        for (var trip : trips) {
            var surer = trip.bound(now) <= best.bound(now);
            best = surer == parts.takesSurest() ? trip : best;
        }
        return best;
    }

    private double estimate() {
        var now = own.getAsDouble();
        return now + surest(now).offset;
    }

    private double slewed(double passed) {
        return Math.signum(correction) * Math.max(0, Math.abs(correction) - passed * SLEW);
    }

    boolean isSlewing() {
        return slewed(own.getAsDouble() - correctedSince) != 0;
    }

    /** The salon's time as this device has it. */
    double now() {
        return estimate() + slewed(own.getAsDouble() - correctedSince);
    }

    double doubt() {
        var now = own.getAsDouble();
        return sure ? surest(now).bound(now) : Double.POSITIVE_INFINITY;
    }

    boolean isSure() {
        return sure;
    }

    void set(double server) {
        var now = own.getAsDouble();
        trips = List.of(Trip.of(now, server, now));
        correction = 0;
        correctedSince = now;
        sure = true;
    }

    void guess(double server) {
        set(server);
        sure = false;
    }

    void take(double asked, double server, double answered) {
        var shown = sure ? now() : Double.NaN;
        if (!sure) {
            trips = List.of();
        }
        trips = remembered(Trip.of(asked, server, answered));
        var by = shown - estimate();
        correction = trips.size() > 1 && Math.abs(by) <= LARGEST_SLEW ? by : 0;
        correctedSince = own.getAsDouble();
        sure = true;
    }

    private List<Trip> remembered(Trip fresh) {
        if (trips.isEmpty() || !agrees(surest(fresh.at), fresh)) {
            return List.of(fresh);
        }
        var all = new ArrayList<>(trips);
        all.add(fresh);
        return all.subList(Math.max(0, all.size() - STAGES), all.size());
    }

    private static boolean agrees(Trip one, Trip fresh) {
        return Math.abs(one.offset - fresh.offset) <= one.bound(fresh.at) + fresh.bound(fresh.at);
    }
}
