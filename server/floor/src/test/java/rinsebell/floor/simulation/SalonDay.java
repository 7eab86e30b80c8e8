package rinsebell.floor.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import rinsebell.floor.Asked;
import rinsebell.floor.BellAnswer;
import rinsebell.floor.Command;
import rinsebell.floor.Correction;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Floor;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bell.Peal;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.bell.Stage;
import rinsebell.floor.bell.Turns;
import rinsebell.floor.bowl.DayEvent.ClockShifted;
import rinsebell.floor.command.Acknowledge;
import rinsebell.floor.command.EndDay;
import rinsebell.floor.command.MissTime;
import rinsebell.floor.command.OnDay;
import rinsebell.floor.command.Shelve;
import rinsebell.floor.command.WithdrawFact;
import rinsebell.floor.testing.Desk;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.WorkEvent.PutOn;

/**
 * One salon day of random presses, set-backs, withdrawals, restarts, clock steps and orders of arrival. After each step
 * it checks the sentences on which the floor rests. The same seed gives the same day.
 */
public final class SalonDay {
    private static final int STEPS = 90;
    private static final int REPLAY_EVERY = 50;
    private static final int MORE_THAN_A_DAY_HAS = 24;

    private final Dice dice;
    private final Presses presses;
    private final Desk desk;
    private final Tally tally = new Tally();
    private Sentences before;

    private SalonDay(long seed) {
        dice = new Dice(seed);
        presses = new Presses(dice);
        var story = Story.stocked().at("08:30");
        story.assistant();
        desk = Desk.after(story).at("09:00");
        before = new Sentences(desk.floor(), desk.now());
    }

    /**
     * Lives one day.
     *
     * @return what happened in it
     * @throws AssertionError naming the seed, the step and the sentence that did not hold
     */
    public static Tally live(long seed) {
        var day = new SalonDay(seed);
        var step = 0;
        try {
            for (; step < STEPS; step++) {
                day.step(step);
            }
            day.ends();
            return day.tally;
        } catch (AssertionError | RuntimeException broken) {
            throw new AssertionError(
                    "seed %d, step %d at %s: %s".formatted(seed, step, day.desk.now(), broken.getMessage()), broken);
        }
    }

    private void step(int step) {
        timeGoesOn();
        switch (dice.below(40)) {
            case 0 -> restart();
            case 1 -> clockIsPutRight();
            default -> press(presses.next(desk.floor(), desk.now()), presses.asked(desk.now()));
        }
        if (step % REPLAY_EVERY == REPLAY_EVERY - 1) {
            theSameFactsGiveTheSameFloor();
        }
    }

    /** A while, or exactly until the next bell: due counts as overdue. */
    private void timeGoesOn() {
        var next = new Turns(before.bells()).after(desk.now());
        var waits = dice.onceIn(5)
                ? next.filter(at -> at.isBefore(desk.now().plus(Duration.ofMinutes(30))))
                : next.filter(at -> false);
        desk.at(waits.orElseGet(() -> desk.now().plus(dice.within(7))));
        before = before.at(desk.now());
        tally.add(before.bells(), desk.now());
    }

    private void press(Command command, Asked asked) {
        var floor = desk.floor();
        var decision = desk.presses(command, asked);
        plansAreRefusedAndFactsAreNot(command, asked, floor, decision);
        tally.add(command, decision);
        if (decision instanceof Decision.Accepted accepted) {
            theTypedInstantIsPossible(accepted, floor);
            wasHeld(accepted.drafts());
            if (command instanceof Acknowledge seen) {
                isQuietUnlessLouderNow(seen.bell());
            } else if (command instanceof Shelve off) {
                isQuiet(off.bell());
            } else if (command instanceof WithdrawFact withdrawal) {
                takesOnlyWhatWasAgreedTo(withdrawal, accepted, floor);
            }
        } else {
            assertThat(desk.floor())
                    .as("nothing of %s is written down", command)
                    .isSameAs(floor);
            saysItIsAlreadyDone(command, asked, (Decision.Refused) decision);
        }
    }

    /** A finger that was on its way when the bell came to a further stage meant the one before. */
    private void isQuietUnlessLouderNow(BellKey key) {
        var reaction = Duration.ofMillis(500);
        var isFresh = before.bells().stream()
                .filter(bell -> bell.key().equals(key))
                .flatMap(bell -> bell.at(desk.now()).stream())
                .anyMatch(stage -> stage.from().plus(reaction).isAfter(desk.now()));
        if (!isFresh) {
            isQuiet(key);
        }
    }

    private void isQuiet(BellKey key) {
        assertThat(before.bells()).noneMatch(bell -> bell.key().equals(key) && bell.isRinging(desk.now()));
    }

    /** Sentence 1: what is refused as a plan for a restriction is written down as a fact, and nothing else is. */
    private static void plansAreRefusedAndFactsAreNot(Command command, Asked asked, Floor floor, Decision decision) {
        assertThat(command.decide(floor, asked)).as("asked again").isEqualTo(decision);
        var asFact = command.decide(floor, asked.asFact());
        if (decision instanceof Decision.Refused refused) {
            assertThat(refused.reasons()).isNotEmpty().isSorted();
            assertThat(asFact instanceof Decision.Accepted)
                    .as("%s as a fact", command)
                    .isEqualTo(refused.canBeFact());
        } else {
            assertThat(asFact).as("%s as a fact", command).isEqualTo(decision);
        }
    }

    private void saysItIsAlreadyDone(Command command, Asked asked, Decision.Refused refused) {
        if (refused.canBeFact() && dice.onceIn(2)) {
            var done = (Decision.Accepted) desk.presses(command, asked.asFact());
            wasHeld(done.drafts());
        }
    }

    /** Sentence 4: between mixing, or arrival, and now. */
    private void theTypedInstantIsPossible(Decision.Accepted accepted, Floor floor) {
        for (var draft : accepted.drafts()) {
            assertThat(draft.happened()).as("%s", draft).isBeforeOrEqualTo(desk.now());
            if (draft.event() instanceof PutOn putOn) {
                floor.bowl(putOn.bowl())
                        .ifPresent(bowl -> assertThat(draft.happened()).isAfterOrEqualTo(bowl.mixedAt()));
            }
        }
    }

    /** Sentence 4: withdrawing lists what goes along; an acknowledgement alone goes unasked. */
    private static void takesOnlyWhatWasAgreedTo(WithdrawFact asked, Decision.Accepted accepted, Floor floor) {
        for (var draft : accepted.drafts()) {
            var gone = ((Correction.Withdrawn) draft.event()).of();
            var isQuiet = floor.fact(gone)
                    .filter(fact -> fact.event() instanceof BellAnswer)
                    .isPresent();
            assertThat(gone == asked.seq() || asked.along().contains(gone) || isQuiet)
                    .as("%d goes along with %s", gone, asked)
                    .isTrue();
        }
    }

    /** Everything holds, and the bells are the same whether they are reckoned anew or from those before. */
    private Sentences held() {
        var after = new Sentences(desk.floor(), desk.now());
        after.hold();
        assertThat(Peal.of(desk.floor()).bells())
                .as("the bells reckoned from nothing")
                .isEqualTo(after.bells());
        return after;
    }

    /** Everything holds after the press, no bell was dropped by it, and set-backs kept what was seen. */
    private void wasHeld(List<Draft> drafts) {
        var after = held();
        noBellIsDropped(drafts, after.bells());
        aSetBackKeepsTheKey(drafts, after.bells());
        before = after;
    }

    /** Sentence 6. */
    private void noBellIsDropped(List<Draft> drafts, List<Bell> after) {
        for (var bell : before.bells()) {
            var rang = loudness(bell);
            if (rang.compareTo(Priority.LOW) >= 0 && rang.compareTo(loudest(bell, after)) > 0) {
                assertThat(Endings.mayEnd(drafts, bell) || isOneRound(bell, after) || isBurningInstead(bell, after))
                        .as("%s must not end, or hush, %s", drafts, bell)
                        .isTrue();
            }
        }
    }

    /** A look may wait for the others of its round, for no longer than a round takes. */
    private boolean isOneRound(Bell bell, List<Bell> after) {
        var round = desk.floor().salon().policy().checks().round();
        var waited = desk.now().plus(round);
        return (bell.kind() == BellKind.STRAND_CHECK || bell.kind() == BellKind.SCALP_CHECK)
                && after.stream()
                        .filter(other -> other.key().equals(bell.key()))
                        .anyMatch(other -> other.at(waited)
                                .filter(stage -> stage.priority().compareTo(loudness(bell)) >= 0)
                                .isPresent());
    }

    /** What was put on before a complaint after all asks for its rinse by the louder bell. */
    private boolean isBurningInstead(Bell bell, List<Bell> after) {
        return bell.kind() == BellKind.RINSE
                && after.stream()
                        .filter(other -> other.kind() == BellKind.BURNING || other.kind() == BellKind.HOT_FOIL)
                        .filter(other -> Objects.equals(other.visit(), bell.visit()))
                        .anyMatch(other -> loudness(other) == Priority.HIGH);
    }

    private Priority loudness(Bell bell) {
        return bell.at(desk.now()).map(Stage::priority).orElse(Priority.SILENT);
    }

    private Priority loudest(Bell bell, List<Bell> after) {
        return after.stream()
                .filter(other -> other.kind() == bell.kind()
                        && other.key().subject() == bell.key().subject())
                .map(this::loudness)
                .max(Priority::compareTo)
                .orElse(Priority.SILENT);
    }

    /** Sentence 5: set back in time, the fact that anchors a rinse keeps anchoring it, and what was seen of it. */
    private void aSetBackKeepsTheKey(List<Draft> drafts, List<Bell> after) {
        for (var draft : drafts) {
            if (draft.event() instanceof Correction.SetBack back) {
                before.bells().stream()
                        .filter(bell ->
                                bell.kind() == BellKind.RINSE && bell.key().anchor() == back.of())
                        .filter(bell -> isEarlier(back) && isStillOn(bell))
                        .forEach(bell -> keeps(bell, after));
            }
        }
    }

    private boolean isEarlier(Correction.SetBack back) {
        return before.floor()
                .standing(back.of())
                .filter(fact -> back.to().isBefore(fact.happened()))
                .isPresent();
    }

    /** Set back to before a rinse, it is what that rinse has taken off. */
    private boolean isStillOn(Bell bell) {
        return desk.floor().openVisits().stream()
                .flatMap(visit -> visit.onHair().stream())
                .anyMatch(one -> one.id().value() == bell.key().anchor());
    }

    private static void keeps(Bell bell, List<Bell> after) {
        after.stream()
                .filter(other -> other.kind() == bell.kind()
                        && other.key().subject() == bell.key().subject())
                .forEach(other -> {
                    assertThat(other.key()).isEqualTo(bell.key());
                    assertThat(other.seen()).isEqualTo(bell.seen());
                });
    }

    /** Sentence 2: only instants are stored, so a restart is nothing but the same facts folded again. */
    private void restart() {
        theReplayAgrees();
        var again = Floor.of(dice.shuffled(desk.floor().facts()));
        assertThat(again).as("the floor after a restart").isEqualTo(desk.floor());
        assertThat(again.bells()).as("the bells after a restart").isEqualTo(before.bells());
        desk.stands(again);
    }

    /**
     * The wall clock was wrong: a person says so, every instant moves alike, and no countdown changes. But the hours at the
     * basins are hours of that clock, and with another time other hands are there.
     */
    private void clockIsPutRight() {
        var by = Duration.ofMillis(1 + dice.below(30 * 60_000)).multipliedBy(dice.onceIn(2) ? 1 : -1);
        var left = countdowns(apartFromHours(before.bells()));
        desk.at(desk.now().plus(by));
        var shift = new OnDay(new ClockShifted(by));
        tally.add(shift, desk.plans(shift));
        before = held();
        assertThat(countdowns(apartFromHours(before.bells())))
                .as("countdowns after the clock moved by %s", by)
                .isEqualTo(left);
        timePassedUncounted(by.abs().dividedBy(20));
    }

    private List<Bell> apartFromHours(List<Bell> bells) {
        return bells.stream()
                .filter(bell -> bell.kind() != BellKind.BASINS_CLASH
                        || !desk.floor().salon().basinHours().isSaid())
                .toList();
    }

    /** The machine was off: what was recorded stands, and everything is due so much sooner. */
    private void timePassedUncounted(Duration by) {
        var dues = before.bells().stream().map(Bell::stages).toList();
        var missed = new MissTime(by, desk.now());
        tally.add(missed, desk.plans(missed));
        desk.at(desk.now().plus(by));
        before = held();
        assertThat(before.bells().stream().map(Bell::stages).toList())
                .as("what is due after %s passed uncounted", by)
                .isEqualTo(dues);
    }

    private Map<String, Object> countdowns(List<Bell> bells) {
        return bells.stream()
                .collect(Collectors.toMap(
                        bell -> bell.key().toString(),
                        bell -> bell.stages().stream()
                                .map(stage -> List.of(
                                        Duration.between(desk.now(), stage.from()),
                                        stage.step(),
                                        stage.priority(),
                                        stage.audience()))
                                .toList()));
    }

    /** Sentence 4: in whatever order they arrive, at once or in parts. */
    private void theSameFactsGiveTheSameFloor() {
        theReplayAgrees();
        var shuffled = dice.shuffled(desk.floor().facts());
        assertThat(Floor.of(shuffled)).as("the facts in another order").isEqualTo(desk.floor());
        var parts = Floor.EMPTY;
        for (var part : parts(shuffled)) {
            parts = parts.with(part);
        }
        assertThat(parts).as("the facts in parts").isEqualTo(desk.floor());
    }

    private void theReplayAgrees() {
        new Replay(desk.floor().facts()).agreesWith(desk.floor());
    }

    private <T> List<List<T>> parts(List<T> all) {
        var found = new ArrayList<List<T>>();
        for (var from = 0; from < all.size(); ) {
            var to = Math.min(all.size(), from + 1 + dice.below(12));
            found.add(all.subList(from, to));
            from = to;
        }
        return found;
    }

    private void ends() {
        timeGoesOn();
        var next = desk.floor().salon().dayOf(desk.now()).plusDays(1);
        press(new EndDay(next), Asked.at(desk.now()));
        assertThat(desk.floor().openVisits())
                .as("who is left at the end has something on")
                .allMatch(visit -> !visit.onHair().isEmpty());
        theSameFactsGiveTheSameFloor();
        turns(desk.now().plus(Duration.ofHours(MORE_THAN_A_DAY_HAS)));
    }

    /** Who is left rings on through the night. */
    private void turns(Instant morning) {
        var turned = desk.floor().turned(morning);
        assertThat(turned).isEqualTo(Floor.of(dice.shuffled(turned.facts())).numberedFrom(turned.lastSeq()));
        assertThat(turned.openVisits()).isEqualTo(desk.floor().openVisits());
        assertThat(rinses(turned)).as("rinses in the morning").isEqualTo(rinses(desk.floor()));
    }

    private static List<Bell> rinses(Floor floor) {
        return floor.bells().stream()
                .filter(bell -> bell.kind() == BellKind.RINSE || bell.kind() == BellKind.BURNING)
                .toList();
    }
}
