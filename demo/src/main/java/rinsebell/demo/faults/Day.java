package rinsebell.demo.faults;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import rinsebell.floor.Floor;
import rinsebell.floor.bell.Crowd;
import rinsebell.floor.bell.Ear;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.salon.StaffMember;

/** Some hours of a salon in virtual time, from one seed: one server, a few devices, people who press, and what fails. */
final class Day {
    private static final long MINUTE = 60_000;
    private static final long LONG = 100 * MINUTE;
    private static final long CALM = 120_000;
    private static final long BETWEEN_PRESSES = 180_000;

    /** Days on which the nights' clocks change in the salon's zone, and common ones. */
    private static final List<LocalDateTime> BEGINS = List.of(
            LocalDateTime.of(2026, 3, 29, 0, 30),
            LocalDateTime.of(2026, 10, 25, 0, 30),
            LocalDateTime.of(2026, 3, 28, 22, 0),
            LocalDateTime.of(2026, 10, 24, 23, 30),
            LocalDateTime.of(2026, 6, 13, 9, 0),
            LocalDateTime.of(2026, 11, 28, 10, 0),
            LocalDateTime.of(2026, 6, 13, 21, 30));

    final Parts parts;
    final Dice dice;
    final Agenda agenda;
    final Tally tally = new Tally();
    final Truth truth = new Truth(this);
    final List<Tablet> tablets = new ArrayList<>();
    final Server server;
    final Faults faults;

    private final Consumer<String> told;
    private final Hands hands;
    private final Path folder;
    private long acts;
    private boolean over;

    private Day(long seed, Parts parts, Consumer<String> told) {
        this.told = told;
        this.parts = parts;
        this.dice = new Dice(seed);
        this.agenda =
                new Agenda(dice.of(BEGINS).atZone(Opening.ZONE).toInstant().toEpochMilli());
        this.folder = folder();
        this.server = new Server(this, folder);
        this.faults = new Faults(this, dice.others());
        this.hands = new Hands(dice.others());
    }

    private static Path folder() {
        try {
            return Files.createTempDirectory("rinsebell-faults");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Lives a day.
     *
     * @param parts honest ones, or with a planted bug
     * @return what was counted
     * @throws Broken naming the rule that did not hold, and when
     */
    static Tally live(long seed, Parts parts) {
        return live(seed, parts, line -> {});
    }

    /** @param told takes what goes wrong and what is pressed, line by line, for whoever looks for a reason */
    static Tally live(long seed, Parts parts, Consumer<String> told) {
        var day = new Day(seed, parts, told);
        try {
            day.live();
            return day.tally;
        } finally {
            day.clear();
        }
    }

    private void live() {
        server.start();
        var life = Objects.requireNonNull(server.life());
        for (var ear : ears(life.snapshot().floor())) {
            tablets.add(new Tablet(this, ear.toString(), ear, life.plan()));
        }
        tablets.forEach(tablet -> tablet.begins(life.plan(), life.now()));
        faults.begin();
        someoneActs();
        var end = agenda.now() + LONG;
        agenda.runUntil(end);
        faults.end();
        over = true;
        agenda.runUntil(end + CALM + 12 * MINUTE);
        truth.ends();
    }

    private static List<Ear> ears(Floor floor) {
        var stylists = floor.salon().staff().stream()
                .filter(member -> member.role() == Role.STYLIST)
                .map(StaffMember::id)
                .toList();
        return List.of(
                new Ear.Of(stylists.get(0)),
                new Ear.Of(stylists.get(1)),
                new Ear.At(Place.chair(1)),
                new Ear.Shared(Crowd.ASSISTANTS),
                new Ear.Everything());
    }

    private void someoneActs() {
        agenda.in(dice.apart(BETWEEN_PRESSES), () -> {
            if (!over) {
                acts(dice.of(tablets));
                if (dice.onceIn(6)) {
                    acts(dice.of(tablets));
                }
                someoneActs();
            }
        });
    }

    /** Whoever wants to press something on a device that sleeps, wakes it. */
    private void acts(Tablet tablet) {
        if (!tablet.isAwake()) {
            tablet.wakes();
        }
        hands.press(tablet.feed.shown(), (long) tablet.clock.now()).ifPresent(command -> {
            tally.press();
            tells(tablet.name + " presses " + command);
            tablet.press(command, staff(tablet));
        });
    }

    private static @org.jspecify.annotations.Nullable StaffId staff(Tablet tablet) {
        return tablet.ear instanceof Ear.Of one ? one.person() : null;
    }

    void fault(String kind) {
        tally.fault(kind);
        tells(kind);
    }

    void tells(String what) {
        told.accept(agenda.now() + " " + what);
    }

    /** The number of what somebody does. */
    long nextAct() {
        return ++acts;
    }

    /** What a crash in the middle of a press was prepared for. */
    void crashed() {
        faults.died();
    }

    /** What is shown now; null while no server runs. */
    @org.jspecify.annotations.Nullable
    Plan shownNow() {
        var life = server.life();
        return life == null ? null : life.plan();
    }

    private void clear() {
        try (var files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(file -> file.toFile().delete());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
