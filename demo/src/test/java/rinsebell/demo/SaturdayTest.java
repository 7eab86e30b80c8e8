package rinsebell.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import rinsebell.floor.Floor;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.bell.Stage;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Zone;
import rinsebell.floor.salon.Place;
import rinsebell.floor.visit.Visit;

/** Every state that a floor can be in is on the demo's floor. */
class SaturdayTest {
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
    private static final Instant NOW = Instant.parse("2026-05-16T12:20:00Z");

    /** Three hours told across the turn of the salon's day, in a night when the clocks change. */
    private static final Instant AFTER_THE_TURN = Instant.parse("2026-10-25T03:30:00Z");

    private final Floor floor = Saturday.floorAt(NOW, BERLIN);
    private final List<Bell> bells = floor.bells();

    @TestFactory
    Stream<DynamicTest> everyStateOccurs() {
        Map<String, Predicate<SaturdayTest>> states = new TreeMap<>();
        states.put("free", day -> day.isNobodys(Place.chair(8)));
        states.put("seated", day -> day.chairs().anyMatch(SaturdayTest::isOnlySeated));
        states.put("mixed not on", day -> day.rings(BellKind.BOWL_WAITING, Stage.Step.SOON, Duration.ofMinutes(2)));
        states.put("check due", day -> day.rings(BellKind.STRAND_CHECK, Stage.Step.DUE, Duration.ofSeconds(20)));
        states.put("check late", day -> day.ringing(BellKind.STRAND_CHECK).anyMatch(SaturdayTest::isLate));
        states.put("last minute", day -> day.chairs().anyMatch(day::isInItsLastMinute));
        states.put("another round", day -> day.chairs().anyMatch(SaturdayTest::isAnotherRound));
        states.put("gentle steam", day -> day.chairs().anyMatch(SaturdayTest::isUnderSteam));
        states.put(
                "two on one head",
                day -> day.chairs().anyMatch(head -> head.live().size() == 2));
        states.put(
                "at the basin",
                day -> day.heads(Place.basin(1)).anyMatch(head -> !head.onHair().isEmpty()));
        states.put("said what was left", day -> day.thrownAway().anyMatch(bowl -> bowl.left() != null));
        states.put("nobody said what was left", day -> day.thrownAway().anyMatch(bowl -> bowl.left() == null));
        states.put("on the bench", day -> day.heads(Place.BENCH).count() == 2);
        return states.entrySet().stream()
                .map(state -> dynamicTest(
                        state.getKey(), () -> assertThat(state.getValue()).accepts(this)));
    }

    private Stream<Bowl> thrownAway() {
        return floor.day().bowls().stream()
                .filter(Bowl::isThrownAway)
                .filter(bowl ->
                        floor.salon().dayOf(bowl.mixedAt()).equals(floor.salon().dayOf(NOW)));
    }

    @Test
    void nothingOnThisFloorIsForbidden() {
        assertThat(bells.stream().map(Bell::kind).map(Enum::name))
                .noneMatch(name -> name.startsWith("FORBIDDEN") || name.equals("PASSED_GATE"))
                .doesNotContain("BASINS_CLASH", "BURNING", "GATE_OPEN");
    }

    @Test
    void onlyTheLateCheckAndTheLastMinuteAskForSomebodyAtOnce() {
        assertThat(bells.stream()
                        .filter(bell -> bell.at(NOW)
                                .filter(stage -> stage.priority().compareTo(Priority.MEDIUM) >= 0)
                                .isPresent())
                        .map(Bell::kind))
                .containsExactlyInAnyOrder(BellKind.STRAND_CHECK, BellKind.RINSE);
    }

    @Test
    void theFactsFoldToTheFloorThatTheyWereDecidedOn() {
        var facts = Saturday.until(NOW, BERLIN).stream()
                .flatMap(entry -> entry.facts().stream())
                .toList();

        assertThat(Floor.of(facts)).isEqualTo(floor);
        assertThat(facts).isSortedAccordingTo((one, other) -> one.recorded().compareTo(other.recorded()));
    }

    @Test
    void theDayCanBeToldAtAnyHour() {
        assertThat(Saturday.floorAt(AFTER_THE_TURN, BERLIN).openVisits()).hasSameSizeAs(floor.openVisits());
    }

    private Stream<Visit> heads(Place place) {
        return floor.at(place).stream();
    }

    /** Nobody sits there, and nobody comes back to it from a basin. */
    private boolean isNobodys(Place chair) {
        return floor.openVisits().stream()
                .noneMatch(head ->
                        chair.equals(head.place()) || chair.equals(head.stay().chair()));
    }

    private Stream<Visit> chairs() {
        return floor.openVisits().stream().filter(head -> head.place() instanceof Place.Chair);
    }

    private Stream<Bell> ringing(BellKind kind) {
        return bells.stream().filter(bell -> bell.kind() == kind);
    }

    private boolean rings(BellKind kind, Stage.Step step, Duration within) {
        var from = ringing(kind).map(bell -> bell.stages().get(0)).filter(stage -> stage.step() == step);
        return from.map(Stage::from)
                .anyMatch(at -> Duration.between(NOW, at).abs().compareTo(within) <= 0);
    }

    private static boolean isLate(Bell bell) {
        return bell.at(NOW).filter(stage -> stage.step() == Stage.Step.LATE).isPresent();
    }

    private boolean isInItsLastMinute(Visit head) {
        return HeadTiming.of(floor, head)
                .rinseBy()
                .map(limit -> Duration.between(NOW, limit.at()))
                .filter(left -> !left.isNegative() && left.compareTo(Duration.ofMinutes(1)) < 0)
                .isPresent();
    }

    private static boolean isOnlySeated(Visit head) {
        return head.applications().isEmpty();
    }

    private static boolean isUnderSteam(Visit head) {
        return head.heat().filter(span -> span.heat() == Heat.GENTLE_STEAM).isPresent();
    }

    private static boolean isAnotherRound(Visit head) {
        return head.applications().stream().anyMatch(one -> one.isOnScalp() && !one.isOnHair())
                && head.live().stream().allMatch(one -> one.zone() == Zone.OFF_SCALP)
                && !head.live().isEmpty();
    }
}
