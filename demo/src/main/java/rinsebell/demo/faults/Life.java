package rinsebell.demo.faults;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import rinsebell.app.desk.Answer;
import rinsebell.app.desk.FloorDesk;
import rinsebell.app.desk.Press;
import rinsebell.app.desk.PressMemory;
import rinsebell.app.desk.Snapshot;
import rinsebell.app.press.HeldUp;
import rinsebell.app.time.ClockMark;
import rinsebell.app.time.ClockProof;
import rinsebell.app.time.SalonClock;
import rinsebell.floor.Asked;
import rinsebell.floor.ClockTrust;
import rinsebell.floor.Command;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.command.EndDay;
import rinsebell.floor.command.MissTime;
import rinsebell.floor.command.OnDay;

/**
 * One process of the server, from its start to its end: the real desk, clock and journal, wired as in the real house, with
 * the agenda in place of its threads.
 */
final class Life {
    private static final long ROUND = 5_000;
    private static final int MOST_BEFORE_A_TURN = 30;

    /** The real one looks in each round; a minute is soon enough here, and far cheaper. */
    private static final int LOOKS_FOR_DAYS_END = 12;

    private final Day day;
    private final Server server;
    private final int run;
    private final Book book;
    private final Optional<ClockMark> mark;
    private final SalonClock clock;
    private final FloorDesk desk;
    private final Instant since;
    private final Set<Line> lines = new LinkedHashSet<>();
    private final List<Handed> handed = new ArrayList<>();
    private boolean ended;
    private boolean turnComes;
    private long number;
    private int rounds;
    private Plan plan;

    private record Handed(Letter letter, CompletableFuture<Answer> answer) {}

    Life(Day day, Server server, int run) {
        this.day = day;
        this.server = server;
        this.run = run;
        book = Book.open(server.journal(), server.disk, server.database, day.parts, server::passes);
        var floor = floor(book.facts());
        day.truth.starts(server, book.facts());
        mark = mark(floor);
        clock = clock();
        since = clock.now();
        var loaded = Snapshot.of(floor, Map.of());
        plan = shown(loaded);
        desk = FloorDesk.unattended(
                loaded,
                new FloorDesk.Tools(
                        book,
                        new PressMemory(this::remembered),
                        (reason, on, texts) -> reason.code().name(),
                        this::saved,
                        this::show,
                        () -> {
                            throw new Crash(Crash.Point.WRITTEN);
                        }));
    }

    /** What the real store loads: what a floor that never stopped would still have. */
    private static Floor floor(List<Fact> facts) {
        var end = facts.stream()
                .filter(fact -> fact.event() instanceof DayEvent.DayEnded)
                .reduce((first, second) -> second);
        return end.map(last -> Floor.of(facts.stream()
                                .filter(fact -> fact.seq() <= last.seq())
                                .toList())
                        .turned(last.recorded())
                        .with(facts.stream()
                                .filter(fact -> fact.seq() > last.seq())
                                .toList()))
                .orElseGet(() -> Floor.of(facts));
    }

    /** What tells of the time when nobody has run here yet is the wall alone. */
    private Optional<ClockMark> mark(Floor floor) {
        var proof = day.parts.proof(ClockProof.of(floor, Instant.ofEpochMilli(server.machine.wallMillis())));
        return server.lastMark() == null ? Optional.empty() : server.marker().last(proof);
    }

    private SalonClock clock() {
        return mark.filter(last -> day.parts.goesOnFromMark())
                .map(last -> SalonClock.goingOnFrom(last, server.machine, 1))
                .orElseGet(() -> SalonClock.startingAtTheWall(server.machine, 1));
    }

    private Optional<PressMemory.Stored> remembered(String id) {
        return day.parts.remembers() || !book.isRead(id) ? book.find(id) : Optional.empty();
    }

    void begin() {
        day.truth.started(desk.snapshot(), book.read());
        mark.map(last -> new DayEvent.Outage(last.salon(), clock.now()))
                .filter(outage -> outage.concerns(desk.snapshot().floor()))
                .ifPresent(outage -> own(new OnDay(outage)));
        round();
    }

    /** What the real caretaker and the beat of the feed do every few seconds. */
    private void round() {
        if (ended) {
            return;
        }
        if (server.isSuspended()) {
            server.whenAwake(this::round);
            return;
        }
        server.mark(clock.mark());
        day.truth.clock(clock.now());
        if (++rounds % LOOKS_FOR_DAYS_END == 0) {
            endDayIfOver();
        }
        beat();
        day.agenda.in(ROUND, this::round);
    }

    private void beat() {
        List.copyOf(lines).forEach(line -> line.beat(clock.now().toEpochMilli()));
    }

    private void endDayIfOver() {
        var floor = desk.snapshot().floor();
        var today = floor.salon().dayOf(clock.now());
        if (floor.visits().stream()
                .anyMatch(visit -> visit.onHair().isEmpty()
                        && floor.salon().dayOf(visit.stay().arrivedAt()).isBefore(today))) {
            endDay(today);
        }
    }

    private void endDay(LocalDate today) {
        own(new EndDay(today));
    }

    private void own(Command command) {
        receive(new Letter(
                null,
                "own " + run + " " + number + " " + handed.size() + " " + day.agenda.now(),
                day.nextAct(),
                command,
                null,
                null,
                true,
                null,
                day.agenda.now()));
    }

    /** A press has come. Those that come soon after it are decided together with it. */
    void receive(Letter letter) {
        if (ended) {
            return;
        }
        if (server.isSuspended()) {
            server.whenAwake(() -> receive(letter));
            return;
        }
        var now = clock.now();
        var asked = Asked.at(now).by(letter.by());
        var age = age(letter, now.toEpochMilli());
        if (letter.age() != null || age > 0) {
            asked = asked.happened(now.minusMillis(age), letter.sure() ? Asked.Told.BY_AGE : Asked.Told.UNSURE);
        }
        hand(letter, new Press(letter.id(), "", "act " + letter.act(), letter.command(), asked));
    }

    private long age(Letter letter, long now) {
        var told = letter.age() == null ? 0 : letter.age();
        var sent = letter.sent() == null || !day.parts.countsTheWay() ? now : letter.sent();
        return told + HeldUp.between(sent, now, 1).millis();
    }

    private void hand(Letter letter, Press press) {
        day.truth.handed(letter);
        var answer = desk.press(press);
        handed.add(new Handed(letter, answer));
        if (!day.parts.savesFirst()) {
            answerUnsaved(letter, press);
        }
        if (!turnComes) {
            turnComes = true;
            day.agenda.in(day.dice.below(MOST_BEFORE_A_TURN), this::turn);
        }
    }

    /** What a planted bug does: it says what it will decide before it has saved it. */
    private void answerUnsaved(Letter letter, Press press) {
        if (press.command().decide(desk.snapshot().floor(), press.asked())
                instanceof rinsebell.floor.Decision.Accepted accepted) {
            day.truth.promised(accepted.drafts().stream()
                    .map(draft -> draft.numbered(desk.snapshot().floor().lastSeq() + 1, press.asked()))
                    .limit(1)
                    .toList());
        }
    }

    private void turn() {
        if (ended) {
            return;
        }
        if (server.isSuspended()) {
            server.whenAwake(this::turn);
            return;
        }
        turnComes = false;
        try {
            desk.takeTurn();
            answerAll();
            day.truth.step(desk.snapshot());
        } catch (Crash crash) {
            day.crashed();
        }
    }

    private void answerAll() {
        server.passes(Crash.Point.PUSHED);
        var answered = List.copyOf(handed);
        handed.clear();
        answered.forEach(one -> answer(one.letter(), one.answer().join()));
        server.passes(Crash.Point.ANSWERED);
    }

    private void answer(Letter letter, Answer answer) {
        day.truth.answered(letter, answer);
        day.tells(letter.id() + " is answered " + answer + " "
                + letter.command().getClass().getSimpleName());
        var from = letter.from();
        if (from != null) {
            from.answer(letter, answer, plan);
        }
    }

    /** The clock moves in the same breath as the facts do. */
    private void saved(List<Fact> facts) {
        day.truth.saved(facts);
        ClockProof.steps(facts).forEach(this::putRight);
    }

    private void putRight(long fact, Duration step) {
        if (day.parts.clockFollows()) {
            clock.confirm(step, fact);
        }
        day.truth.shifted(step);
        if (day.parts.beatsAtOnce()) {
            beat();
        }
        if (day.parts.marksAtOnce()) {
            server.mark(clock.mark());
        }
    }

    private void show(Snapshot next) {
        server.passes(Crash.Point.SWAPPED);
        number++;
        plan = shown(next);
        day.tells("shown " + run + "-" + number);
        lines.forEach(line -> line.send(plan));
    }

    private Plan shown(Snapshot snapshot) {
        return new Plan(
                run,
                number,
                snapshot,
                day.parts.sent(snapshot, since == null ? Instant.MIN : since),
                day.agenda.now(),
                day.truth.ahead());
    }

    /** Somebody confirms the machine's time; nobody else's press is under way meanwhile. */
    void confirmClock() {
        turn();
        if (ended || server.isSuspended()) {
            return;
        }
        if (clock.trust() != ClockTrust.AGREES) {
            own(confirmed());
            turn();
        }
    }

    private Command confirmed() {
        var step = clock.stepSeen().orElse(Duration.ZERO);
        return clock.trust() == ClockTrust.BEHIND && !step.isNegative()
                ? new MissTime(step, clock.start())
                : new OnDay(new DayEvent.ClockShifted(step));
    }

    Plan plan() {
        return plan;
    }

    long now() {
        return clock.now().toEpochMilli();
    }

    Snapshot snapshot() {
        return desk.snapshot();
    }

    void join(Line line) {
        lines.add(line);
        line.beat(now());
        line.send(plan);
    }

    void leave(Line line) {
        lines.remove(line);
    }

    /** The process is gone: what it had sent is still on its way. */
    void ends(boolean powerGone) {
        ended = true;
        List.copyOf(lines).forEach(line -> line.serverGone(powerGone));
    }
}
