package rinsebell.demo.faults;

import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.UnaryOperator;
import rinsebell.app.desk.Snapshot;
import rinsebell.app.time.ClockProof;
import rinsebell.floor.Correction;
import rinsebell.floor.Ledger;
import rinsebell.floor.bell.AlarmState;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bell.Ring;

/** Bugs that could have been written, each with the rule that it breaks and the seed of a day that shows it. */
enum Bug {
    /** The disk says that it forced, and has not. */
    FORCE_NOT_DONE(Rule.ANSWERED_IS_KEPT, 1, new Parts() {
        @Override
        boolean forces() {
            return false;
        }
    }),
    /** A press is answered before it is saved. */
    ANSWERED_BEFORE_SAVED(Rule.ANSWERED_IS_KEPT, 1, new Parts() {
        @Override
        boolean savesFirst() {
            return false;
        }
    }),
    /** What the disk did not take is answered as if it had. */
    FULL_DISK_HUSHED_UP(Rule.ANSWERED_IS_KEPT, 21, new Parts() {
        @Override
        boolean tellsNotSaved() {
            return false;
        }
    }),
    /** A start cuts off the last whole press together with the torn one. */
    LAST_PRESS_CUT_OFF(Rule.ANSWERED_IS_KEPT, 2, new Parts() {
        @Override
        List<Ledger.Entry> read(List<Ledger.Entry> found) {
            return found.subList(0, found.size() - 1);
        }
    }),
    /** A start forgets what was corrected. */
    CORRECTIONS_NOT_READ(Rule.ANSWERED_IS_KEPT, 3, new Parts() {
        @Override
        List<Ledger.Entry> read(List<Ledger.Entry> found) {
            return found.stream()
                    .filter(entry -> entry.facts().stream().noneMatch(fact -> fact.event() instanceof Correction))
                    .toList();
        }
    }),
    /** Presses that came before a start are not known after it. */
    PRESSES_FORGOTTEN_AT_START(Rule.COUNTS_ONCE, 1, new Parts() {
        @Override
        boolean remembers() {
            return false;
        }
    }),
    /** A press is sent again under a new id. */
    SENT_UNDER_NEW_ID(Rule.COUNTS_ONCE, 1, new Parts() {
        @Override
        String idOfAgain(String id, int times) {
            return id + "-" + times;
        }
    }),
    /** What waits to be sent is lost when the page is loaded again. */
    QUEUE_LOST_ON_RELOAD(Rule.PRESS_ARRIVES, 7, new Parts() {
        @Override
        boolean keepsQueue() {
            return false;
        }
    }),
    /** A press without an answer is given up. */
    GIVEN_UP_WITHOUT_ANSWER(Rule.PRESS_ARRIVES, 1, new Parts() {
        @Override
        boolean sendsAgain() {
            return false;
        }
    }),
    /** A press that had to wait counts from when it was sent. */
    COUNTS_FROM_SENDING(Rule.HAPPENED_WHEN_PRESSED, 1, new Parts() {
        @Override
        boolean saysAge() {
            return false;
        }
    }),
    /** A press that was held up on its way counts from when it came. */
    COUNTS_FROM_COMING(Rule.HAPPENED_WHEN_PRESSED, 20_266_284, new Parts() {
        @Override
        boolean countsTheWay() {
            return false;
        }
    }),
    /** A hand that sets a device's clock makes what waits there older. */
    HAND_TAKEN_FOR_SLEEP(Rule.HAPPENED_WHEN_PRESSED, 481, new Parts() {
        @Override
        boolean tellsHandFromSleep() {
            return false;
        }
    }),
    /** An older piece takes the place of a newer one. */
    OLDER_PIECE_SHOWN(Rule.SOUNDS_IN_TIME, 4, new Parts() {
        @Override
        boolean isOlder(boolean byRule, Plan is, Plan was) {
            return false;
        }
    }),
    /** A server that has started again counts from 1, and its pieces are taken for old. */
    NEW_RUN_TAKEN_FOR_OLD(Rule.SOUNDS_IN_TIME, 2, new Parts() {
        @Override
        boolean isOlder(boolean byRule, Plan is, Plan was) {
            return is.number() < was.number();
        }
    }),
    /** A feed that was lost is never opened again. */
    FEED_NOT_REOPENED(Rule.SCREENS_COME_BACK, 2, new Parts() {
        @Override
        boolean reopens() {
            return false;
        }
    }),
    /** What fell due while no server ran does not ring any more. */
    DUE_WHILE_DOWN_DROPPED(Rule.SOUNDS_IN_TIME, 1, new Parts() {
        @Override
        List<Bell> sent(Snapshot snapshot, Instant since) {
            return with(
                    snapshot.bells(),
                    rings -> rings.stream()
                            .filter(ring -> !ring.isRinging() || !ring.from().isBefore(since))
                            .toList());
        }
    }),
    /** A bell stays in its first stage. */
    NO_SECOND_STAGE(Rule.SOUNDS_IN_TIME, 1, new Parts() {
        @Override
        List<Bell> sent(Snapshot snapshot, Instant since) {
            return with(
                    snapshot.bells(),
                    rings -> rings.stream()
                            .filter(ring -> ring.stage().equals(rings.get(0).stage()))
                            .toList());
        }
    }),
    /** A bell that nobody answers calls nobody else. */
    NEVER_WIDER(Rule.SOUNDS_IN_TIME, 1, new Parts() {
        @Override
        List<Bell> sent(Snapshot snapshot, Instant since) {
            return without(
                    snapshot.bells(),
                    (before, ring) -> before.isRinging()
                            && ring.isRinging()
                            && before.stage().equals(ring.stage()));
        }
    }),
    /** A bell that somebody has seen never rings again. */
    SEEN_ENDS_IT(Rule.SOUNDS_IN_TIME, 1, new Parts() {
        @Override
        List<Bell> sent(Snapshot snapshot, Instant since) {
            return without(snapshot.bells(), (before, ring) -> before.state() == AlarmState.ACKNOWLEDGED);
        }
    }),
    /** A bell that was put off does not return. */
    PUT_OFF_FOR_EVER(Rule.SOUNDS_IN_TIME, 3, new Parts() {
        @Override
        List<Bell> sent(Snapshot snapshot, Instant since) {
            return without(snapshot.bells(), (before, ring) -> before.state() == AlarmState.SHELVED);
        }
    }),
    /** A device counts by its time of day, which people set. */
    COUNTS_BY_TIME_OF_DAY(Rule.SOUNDS_IN_TIME, 2, new Parts() {
        @Override
        double count(double steady, double date) {
            return date;
        }
    }),
    /** Of several answers the one that took longest tells the time. */
    LEAST_SURE_ANSWER_COUNTS(Rule.SOUNDS_IN_TIME, 2, new Parts() {
        @Override
        boolean takesSurest() {
            return false;
        }
    }),
    /** A device does not notice that it slept. */
    SLEEP_NOT_NOTICED(Rule.SOUNDS_IN_TIME, 1, new Parts() {
        @Override
        boolean looksForSleep() {
            return false;
        }
    }),
    /** A device that slept, and wakes without a server, goes on as if it had not. */
    SLEEP_ALONE_NOT_COUNTED(Rule.SOUNDS_IN_TIME, 1, new Parts() {
        @Override
        boolean countsSleepAlone() {
            return false;
        }
    }),
    /** A device that wakes without a server waits for it as long as for any answer before it reckons with its sleep. */
    WAKES_AND_WAITS(Rule.SOUNDS_IN_TIME, 7, new Parts() {
        @Override
        long wakePatience(long byRule) {
            return 3_000;
        }
    }),
    /** A look at a strand puts off the rinse as well. */
    LOOK_QUIETS_RINSE(Rule.SOUNDS_IN_TIME, 3, new Parts() {
        @Override
        boolean lookQuiets(BellKind look, BellKind bell) {
            return look == bell || bell == BellKind.RINSE;
        }
    }),
    /** What was answered on a device stays quiet there. */
    QUIET_FOR_EVER(Rule.SOUNDS_IN_TIME, 8, new Parts() {
        @Override
        long quietMillis(long byRule) {
            return 100 * byRule;
        }
    }),
    /** What was answered on a device stays quiet until the salon's time says so, however far that was put back. */
    QUIET_BY_THE_SALONS_TIME_ALONE(Rule.SOUNDS_IN_TIME, 711, new Parts() {
        @Override
        boolean isQuietByOwnCount(double passed, long millis) {
            return true;
        }
    }),
    /** A wall clock that was set is taken for a machine that slept. */
    STEP_TAKEN_FOR_SLEEP(Rule.CLOCK_HOLDS, 1, new Parts() {
        @Override
        OptionalLong uptime(long trueMillis, long wallAhead) {
            return OptionalLong.of(trueMillis + wallAhead);
        }
    }),
    /** A server that was suspended goes on as if it had not been. */
    SUSPEND_NOT_SEEN(Rule.CLOCK_HOLDS, 1, new Parts() {
        @Override
        OptionalLong uptime(long trueMillis, long wallAhead) {
            return OptionalLong.empty();
        }
    }),
    /** A start takes whatever the wall clock shows. */
    START_BY_THE_WALL(Rule.CLOCK_HOLDS, 1, new Parts() {
        @Override
        boolean goesOnFromMark() {
            return false;
        }
    }),
    /** When the clock is put right the facts move, and the clock does not. */
    FACTS_MOVE_ALONE(Rule.CLOCK_HOLDS, 3, new Parts() {
        @Override
        boolean clockFollows() {
            return false;
        }
    }),
    /** A crash soon after the clock was put right brings the time before back. */
    MARK_OF_BEFORE(Rule.CLOCK_HOLDS, 7, new Parts() {
        @Override
        boolean marksAtOnce() {
            return false;
        }

        @Override
        ClockProof proof(ClockProof read) {
            return withoutSteps(read);
        }
    }),
    /** A crash between the fact that the clock was put right and its mark brings the time before back. */
    FACT_WITHOUT_MARK(Rule.CLOCK_HOLDS, 327, new Parts() {
        @Override
        ClockProof proof(ClockProof read) {
            return withoutSteps(read);
        }
    }),
    /** Devices hear seconds later that the clock was put right. */
    CLOCK_PUT_RIGHT_UNHEARD(Rule.SOUNDS_IN_TIME, 8, new Parts() {
        @Override
        boolean beatsAtOnce() {
            return false;
        }
    });

    final Rule breaks;
    final long seed;
    final Parts parts;

    Bug(Rule breaks, long seed, Parts parts) {
        this.breaks = breaks;
        this.seed = seed;
        this.parts = parts;
    }

    private static ClockProof withoutSteps(ClockProof read) {
        return new ClockProof(read.newest(), Collections.emptySortedMap(), read.wall());
    }

    @FunctionalInterface
    private interface Dropped {
        boolean is(Ring before, Ring ring);
    }

    private static List<Bell> without(List<Bell> bells, Dropped dropped) {
        return with(bells, rings -> {
            var left = new java.util.ArrayList<Ring>();
            for (var i = 0; i < rings.size(); i++) {
                if (i == 0 || !dropped.is(rings.get(i - 1), rings.get(i))) {
                    left.add(rings.get(i));
                }
            }
            return left;
        });
    }

    private static List<Bell> with(List<Bell> bells, UnaryOperator<List<Ring>> rings) {
        return bells.stream()
                .map(bell -> new Bell(
                        bell.key(),
                        bell.round(),
                        bell.visit(),
                        bell.reasons(),
                        bell.stages(),
                        bell.seen(),
                        bell.shelved(),
                        rings.apply(bell.rings())))
                .toList();
    }
}
