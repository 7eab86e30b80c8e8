package rinsebell.app.press;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import rinsebell.app.desk.Answer;
import rinsebell.app.desk.FloorDesk;
import rinsebell.app.desk.Press;
import rinsebell.app.door.Caller;
import rinsebell.app.door.Numbered;
import rinsebell.app.door.Problem;
import rinsebell.app.door.ProblemCode;
import rinsebell.app.page.FormBody;
import rinsebell.app.shelf.InventedProducts;
import rinsebell.app.time.SalonClock;
import rinsebell.floor.ClockTrust;
import rinsebell.floor.Command;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.client.ClientBook;
import rinsebell.floor.command.MissTime;
import rinsebell.floor.command.OnDay;
import rinsebell.floor.salon.StaffId;
import rinsebell.web.form.FieldError;
import rinsebell.web.form.Fields;
import rinsebell.web.form.PressForm;
import rinsebell.web.form.Presses;
import rinsebell.web.form.Reading;
import rinsebell.web.form.Target;

/** Reads a press and hands it to the desk, alike for pages and programs. */
public final class Pressing {
    private static final Pattern ID = Pattern.compile("[A-Za-z0-9._~-]{8,64}");
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    /** Stands for the payload of a press that has none. */
    private static final String CLOCK = "clock";

    private final FloorDesk desk;
    private final SalonClock clock;
    private final ClientBook clients;
    private final Duration patience;
    private final Presses presses = Presses.all(InventedProducts.all());
    private final ReadWriteLock clockStands = new ReentrantReadWriteLock();

    public Pressing(FloorDesk desk, SalonClock clock, ClientBook clients) {
        this(desk, clock, clients, PATIENCE);
    }

    /** @param patience how long a press waits for its answer */
    Pressing(FloorDesk desk, SalonClock clock, ClientBook clients, Duration patience) {
        this.patience = patience;
        this.desk = desk;
        this.clients = clients;
        this.clock = clock;
    }

    /** What came of it. */
    sealed interface Result {}

    /**
     * The desk was asked and answered.
     *
     * @param about how it was asked
     */
    record Asked(Answer answer, rinsebell.floor.Asked about) implements Result {}

    /** It could not be read. */
    record Wrong(List<FieldError> errors) implements Result {}

    Set<Presses.Name> names() {
        return presses.names();
    }

    static boolean isId(String id) {
        return ID.matcher(id).matches();
    }

    /**
     * The id under which a press is remembered. What another device has sent under the same id is another press: whoever
     * learns an id is told no answer by it, and takes it from nobody.
     */
    static String idOf(Caller caller, String id) {
        return caller.isDevice() ? hash(caller.code() + " " + id) : id;
    }

    /**
     * Reads what was typed and asks the desk.
     *
     * @throws rinsebell.app.door.ProblemException when there is no such press
     */
    Result press(Address address, Fields typed, String id, Presser presser) {
        var form = presses.find(address.resource(), address.press()).orElseThrow(Numbered::nowhere);
        var stands = takes(clockStands.readLock());
        try {
            return press(form, new Sent(address, typed, id, presser), stands);
        } finally {
            if (stands) {
                clockStands.readLock().unlock();
            }
        }
    }

    /**
     * Who presses.
     *
     * @param device which one, as it is noted; empty where nobody knows
     * @param named who works there, unless the press itself says who did it; null for nobody
     */
    record Presser(String device, @Nullable StaffId named) {
        private rinsebell.floor.Asked by(rinsebell.floor.Asked asked) {
            return asked.by() == null ? asked.by(named) : asked;
        }
    }

    private record Sent(Address address, Fields typed, String id, Presser presser) {}

    /** @param stands whether the clock can't be put right meanwhile; a press during that is not handed in */
    private Result press(PressForm form, Sent sent, boolean stands) {
        var snapshot = desk.snapshot();
        var target = new Target(snapshot.floor(), snapshot::text, clock.now(), sent.address.id(), clients);
        var hash = hash(sent.address, sent.typed);
        var reading = form.read(target, sent.typed);
        if (reading instanceof Reading.Wrong wrong) {
            return desk.answered(sent.id, hash)
                    .<Result>map(answer -> new Asked(answer, rinsebell.floor.Asked.at(target.now())))
                    .orElseGet(() -> new Wrong(wrong.errors()));
        }
        var read = (Reading.Read) reading;
        var asked = sent.presser.by(read.asked());
        var press = new Press(sent.id, sent.presser.device, hash, read.command(), asked);
        var answer = stands ? desk.answer(press, patience) : desk.turnedAway(press);
        return new Asked(answer, asked);
    }

    /** Does something that reads the clock and presses by it; not at all while somebody puts the clock right. */
    public void whileClockStands(Runnable task) {
        if (takes(clockStands.readLock())) {
            try {
                task.run();
            } finally {
                clockStands.readLock().unlock();
            }
        }
    }

    private boolean takes(Lock lock) {
        try {
            return lock.tryLock(patience.toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /**
     * Takes the wall clock's time because a person confirmed it. No other press is under way meanwhile: its instant
     * would be of the clock before, and its fact would be numbered after the shift.
     *
     * @return empty when there is nothing to confirm
     * @throws rinsebell.app.door.ProblemException when the wall clock shows what can't be true
     */
    Optional<Answer> confirmClock(String id, String device) {
        if (!takes(clockStands.writeLock())) {
            return Optional.of(new Answer.NotSaved(false));
        }
        try {
            return desk.answered(id, CLOCK)
                    .or(() -> toConfirm().map(command -> known(confirming(command, id, device))));
        } finally {
            clockStands.writeLock().unlock();
        }
    }

    /** Until it is known which clock counts no other press may go on, however long that takes. */
    private Answer known(Press shift) {
        var answer = desk.answer(shift, patience);
        while (answer instanceof Answer.NotKnown && !Thread.currentThread().isInterrupted()) {
            answer = desk.answer(shift, patience);
        }
        return answer;
    }

    /**
     * What a person confirms. A clock that was set while it ran was wrong all the time, so what was recorded moves with
     * it; after a start behind, a clock that is ahead now only tells of time that passed uncounted.
     */
    private Optional<Command> toConfirm() {
        if (clock.trust() == ClockTrust.AGREES) {
            return Optional.empty();
        }
        var step = clock.stepSeen().orElse(Duration.ZERO);
        return Optional.of(
                clock.trust() == ClockTrust.BEHIND && !step.isNegative()
                        ? new MissTime(step, clock.start())
                        : new OnDay(new DayEvent.ClockShifted(step)));
    }

    private Press confirming(Command command, String id, String device) {
        if (!clock.isWallPossible()) {
            throw Problem.of(ProblemCode.CLOCK_ABSURD).thrown();
        }
        return new Press(id, device, CLOCK, command, rinsebell.floor.Asked.at(clock.now()));
    }

    /** Throws for an answer that is the same problem for people and programs: a press id used twice, or a bug. */
    static void throwProblem(Answer answer) {
        if (answer instanceof Answer.OtherPress) {
            throw Problem.of(ProblemCode.PRESS_ID_REUSED).thrown();
        }
        if (answer instanceof Answer.Bug) {
            throw Problem.of(ProblemCode.BUG).thrown();
        }
    }

    /** For how long a press was held up that is here now. */
    HeldUp heldUp(String sent) {
        return HeldUp.since(sent, clock.now().toEpochMilli(), clock.speed());
    }

    /** Of the address and all that was typed, but for the press id and when it was pressed. */
    private static String hash(Address address, Fields typed) {
        var text = new StringBuilder(address.toString());
        for (var name : new TreeSet<>(typed.names())) {
            if (!FormBody.OF_SENDING.contains(name)) {
                text.append('\n').append(name).append('=').append(typed.all(name));
            }
        }
        return hash(text.toString());
    }

    private static String hash(String text) {
        try {
            var digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK knows SHA-256", e);
        }
    }
}
