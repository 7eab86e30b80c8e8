package rinsebell.demo.faults;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rinsebell.app.desk.Answer;
import rinsebell.floor.Command;
import rinsebell.floor.bell.Ear;
import rinsebell.floor.salon.StaffId;

/** A device of the salon: what its page does is a model of the page's own scripts, part by part. */
final class Tablet {
    final String name;
    final Ear ear;
    final Air air;
    final Outbox outbox;
    final Expected expected;
    TabletClock clock;
    Sync sync;
    Feed feed;
    Ringing ringing;

    private final Day day;
    private final Map<Letter, Long> attempts = new IdentityHashMap<>();
    private final List<Runnable> inbox = new ArrayList<>();
    private double slept;
    private double dateAhead;
    private double asleepSince;
    private boolean awake = true;
    private int page = 1;
    private boolean stepped;

    Tablet(Day day, String name, Ear ear, Plan loaded) {
        this.day = day;
        this.name = name;
        this.ear = ear;
        this.air = new Air(day.dice.others());
        this.dateAhead = day.dice.onceIn(3) ? day.dice.between(-7_200_000, 7_200_000) : 0;
        this.expected = new Expected(day, this, loaded);
        this.outbox = new Outbox(day, this);
        this.clock = new TabletClock(this::own, day.parts);
        this.sync = new Sync(day, this, clock);
        this.feed = new Feed(day, this, loaded);
        this.ringing = new Ringing(day, this, loaded);
    }

    /** The page has just come, with a floor and a time in it. */
    void begins(Plan loaded, long salonMillis) {
        var took = 2 * air.way();
        clock = new TabletClock(this::own, day.parts);
        clock.take(own() - took, salonMillis, own());
        sync = new Sync(day, this, clock);
        feed = new Feed(day, this, loaded);
        ringing = new Ringing(day, this, loaded);
        expected.pageBegins(loaded);
        feed.open();
        sync.start();
        ringing.begins();
        outbox.send();
    }

    /** Somebody loads the page again; nothing comes of it while the server can't be reached. */
    boolean reloads() {
        var life = day.server.life();
        if (!awake || life == null || !air.carries()) {
            return false;
        }
        page++;
        feed.close();
        outbox.reloads();
        inbox.clear();
        begins(life.plan(), life.now());
        return true;
    }

    /** Its own steady count, which stands still while it sleeps. */
    double steady() {
        return (awake ? day.agenda.now() : asleepSince) - slept;
    }

    /** What it takes for the time of day. */
    double date() {
        return day.agenda.now() + dateAhead;
    }

    double own() {
        return own(steady());
    }

    double own(double steady) {
        return day.parts.count(steady, steady + date() - steady());
    }

    int page() {
        return page;
    }

    void press(Command command, @Nullable StaffId by) {
        expected.pressed(command);
        ringing.pressed(command);
        outbox.press(command, by);
    }

    boolean isAwake() {
        return awake;
    }

    /** Whether a question to the server would be answered now. */
    boolean isReached() {
        return air.carries() && day.server.life() != null;
    }

    /** Does it when its steady count has gone on so far. */
    void inSteady(long millis, Runnable what) {
        var due = steady() + millis;
        day.agenda.in(millis, () -> whenSteady(due, what));
    }

    private void whenSteady(double due, Runnable what) {
        if (!awake) {
            inbox.add(() -> whenSteady(due, what));
        } else if (steady() < due) {
            day.agenda.in((long) Math.ceil(due - steady()), () -> whenSteady(due, what));
        } else {
            what.run();
        }
    }

    /** Something has come to it; a device that sleeps takes it up when it wakes. */
    void arrives(Runnable what) {
        if (awake) {
            what.run();
        } else {
            inbox.add(what);
        }
    }

    void sleeps() {
        asleepSince = day.agenda.now();
        awake = false;
        ringing.sleeps();
    }

    /** The screen goes on again, and the page is told that it is seen. */
    void wakes() {
        day.tells(name + " wakes after " + (day.agenda.now() - asleepSince));
        slept += day.agenda.now() - asleepSince;
        awake = true;
        expected.wakes();
        sync.wakes();
        feed.wakes();
        ringing.moved();
        var late = List.copyOf(inbox);
        inbox.clear();
        late.forEach(Runnable::run);
    }

    /** Somebody sets its time of day. */
    void setDate(long byMillis) {
        dateAhead += byMillis;
        stepped = true;
        inSteady(day.dice.below(250), sync::look);
        ringing.moved();
    }

    void clockMoved(long ahead, double took, boolean guessed) {
        stepped = false;
        expected.knowsTime(ahead, took, guessed);
        ringing.moved();
    }

    /** It has seen that its time of day has gone on further than its steady count. */
    void woke(double slept) {
        feed.woke(slept);
    }

    /** It took a step of its own clock for sleep, and can't know better without the server. */
    void guessed(double jump) {
        if (stepped) {
            expected.deceived();
        }
        ringing.moved();
    }

    void planMoved() {
        ringing.moved();
    }

    void connected() {
        sync.measureAnew(told -> {});
        outbox.send();
    }

    /** Sends a press; what comes back, if anything does, is for the attempt of that number. */
    void post(Letter letter, long attempt) {
        if (!air.carries()) {
            day.agenda.in(
                    day.dice.below(2_000),
                    () -> arrives(() -> {
                        if (day.dice.onceIn(2)) {
                            outbox.fails(attempt);
                        }
                    }));
            return;
        }
        attempts.put(letter, attempt);
        day.agenda.in(air.way(), () -> reaches(letter, attempt));
        if (day.faults.sendsTwice()) {
            day.agenda.in(air.way() + day.dice.below(3_000), () -> reaches(letter, attempt));
        }
    }

    private void reaches(Letter letter, long attempt) {
        var life = day.server.life();
        if (life != null) {
            life.receive(letter);
        } else if (!day.server.isUp()) {
            day.agenda.in(air.way(), () -> arrives(() -> outbox.fails(attempt)));
        }
    }

    /** An answer is on its way; it shows the floor as it was when it left, and may come after newer ones. */
    void answer(Letter letter, Answer answer, Plan shown) {
        if (!air.carries() || day.faults.losesAnswer()) {
            return;
        }
        var sent = page;
        day.agenda.in(
                day.faults.answerDawdles(air.way()),
                () -> arrives(() -> {
                    if (air.carries() && sent == page) {
                        outbox.answered(attempts.getOrDefault(letter, -1L), letter, answer);
                        feed.show(shown);
                    }
                }));
    }
}
