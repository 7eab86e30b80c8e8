package rinsebell.floor.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Stream;
import rinsebell.floor.bell.Audience;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.bell.Seen;
import rinsebell.floor.bell.Stage;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.clock.Limit;
import rinsebell.floor.rule.Restrictions;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Visit;

/** What holds of every floor, whatever was pressed. */
final class Sentences {
    private final Floor floor;
    private final Instant now;
    private final List<Bell> bells;

    Sentences(Floor floor, Instant now) {
        this.floor = floor;
        this.now = now;
        this.bells = floor.bells();
    }

    private Sentences(Floor floor, Instant now, List<Bell> bells) {
        this.floor = floor;
        this.now = now;
        this.bells = bells;
    }

    /** The same floor at another instant: its bells know no now. */
    Sentences at(Instant later) {
        return new Sentences(floor, later, bells);
    }

    Floor floor() {
        return floor;
    }

    List<Bell> bells() {
        return bells;
    }

    void hold() {
        var standing = standing();
        nothingHangsOnWhatDidNotHappen(standing);
        nothingHappensInTheFuture(standing);
        everyBellIsOneAndGetsNoQuieter();
        bells.forEach(this::isQuietOnlyForAReason);
        floor.day().bowls().forEach(this::aBowlThatWaitsRings);
        floor.visits().forEach(this::rings);
    }

    private void rings(Visit visit) {
        if (!visit.isOpen()) {
            assertThat(of(visit))
                    .as("a closed visit rings nothing: %s", visit.id())
                    .isEmpty();
            return;
        }
        aLimitRings(visit);
        visit.severeComplaints().forEach(complaint -> discomfortRings(visit, complaint));
        visit.onHair().forEach(application -> whatIsForbiddenRings(visit, application));
        visit.live().stream()
                .filter(application -> application.lastOn() == null)
                .forEach(application -> assertThat(of(visit))
                        .as("last-on of %s is missing", application.id())
                        .anyMatch(bell -> bell.kind() == BellKind.LAST_ON_MISSING
                                && bell.key().subject() == application.id().value()));
    }

    private static void nothingHangsOnWhatDidNotHappen(Map<Long, Fact> standing) {
        for (var fact : standing.values()) {
            assertThat(fact.event().hangsOn().stream().filter(seq -> !standing.containsKey(seq)))
                    .as("what %s hangs on and did not happen", fact)
                    .isEmpty();
            if (fact.stream() instanceof Stream.OfVisit of) {
                assertThat(standing.containsKey(of.visit().value()))
                        .as("the arrival before %s", fact)
                        .isTrue();
            }
        }
    }

    private void nothingHappensInTheFuture(Map<Long, Fact> standing) {
        standing.values()
                .forEach(fact -> assertThat(fact.happened()).as("%s", fact).isBeforeOrEqualTo(now));
    }

    private Map<Long, Fact> standing() {
        var found = new HashMap<Long, Fact>();
        floor.facts().stream()
                .map(Fact::stream)
                .distinct()
                .flatMap(stream -> floor.standing(stream).stream())
                .forEach(fact -> found.put(fact.seq(), fact));
        return found;
    }

    private void everyBellIsOneAndGetsNoQuieter() {
        var keys = new HashSet<BellKey>();
        for (var bell : bells) {
            assertThat(keys.add(bell.key())).as("one bell of %s", bell.key()).isTrue();
            assertThat(bell.stages()).as("stages of %s", bell.key()).isSorted();
            assertThat(bell.stages().stream().map(Stage::priority).toList())
                    .as("loudness of %s", bell.key())
                    .isSorted();
        }
    }

    /** What rings is quiet only while somebody has seen it, within the house's interval, or put it on the shelf. */
    private void isQuietOnlyForAReason(Bell bell) {
        var stage = bell.at(now).filter(one -> one.priority() != Priority.SILENT);
        var ring = bell.ring(now);
        switch (bell.state(now)) {
            case NORMAL, RETURNED_UNACKNOWLEDGED ->
                assertThat(stage).as("%s rings", bell.key()).isEmpty();
            case UNACKNOWLEDGED ->
                assertThat(ring.filter(one -> one.reach().isNobody()))
                        .as("%s reaches somebody", bell.key())
                        .isEmpty();
            case ACKNOWLEDGED ->
                assertThat(bell.seen())
                        .as("somebody has seen %s not long ago", bell.key())
                        .anyMatch(seen -> !seen.at().isAfter(now) && isRecent(seen, stage.orElseThrow()));
            case SHELVED -> {
                assertThat(stage.orElseThrow().priority()).isLessThan(Priority.HIGH);
                assertThat(bell.shelved())
                        .as("somebody has put %s off", bell.key())
                        .anyMatch(off -> !off.at().isAfter(now) && off.until().isAfter(now));
            }
        }
    }

    private boolean isRecent(Seen seen, Stage stage) {
        var again = stage.priority().again(floor.salon().policy().ringing());
        return seen.what().ends() || seen.at().plus(again).isAfter(now);
    }

    private void aBowlThatWaitsRings(Bowl bowl) {
        var waits = !bowl.isThrownAway() && !bowl.divided() && !isOnSomebody(bowl);
        assertThat(bells.stream()
                        .anyMatch(bell -> bell.kind() == BellKind.BOWL_WAITING
                                && bell.key().subject() == bowl.id().value()))
                .as("%s rings while it waits", bowl)
                .isEqualTo(waits);
    }

    private boolean isOnSomebody(Bowl bowl) {
        return floor.visits().stream()
                .flatMap(visit -> visit.applications().stream())
                .anyMatch(application -> application.bowl().equals(bowl.id()));
    }

    private void aLimitRings(Visit visit) {
        var all = HeadTiming.of(floor, visit).limits();
        var limits = all.stream()
                .filter(limit -> limit.why() != Limit.Why.DISCOMFORT)
                .toList();
        if (limits.isEmpty() || (all.size() > limits.size() && isBurningUnseen(visit))) {
            assertThat(of(visit)).noneMatch(bell -> bell.kind() == BellKind.RINSE);
            assertThat(visit.onHair().stream().map(Application::bowl).anyMatch(this::mustBeRinsed) && limits.isEmpty())
                    .as("what is on %s has no end", visit.id())
                    .isFalse();
            return;
        }
        var rinse = one(visit, BellKind.RINSE);
        limits.forEach(limit -> limitRings(rinse, limit));
        new LimitsByHand(floor, visit, rinse).ring();
    }

    /** Discomfort that nobody has seen rings high for everyone; as soon as it is seen the limits ring as ever. */
    private boolean isBurningUnseen(Visit visit) {
        return of(visit).stream()
                .filter(bell -> bell.kind() == BellKind.BURNING || bell.kind() == BellKind.HOT_FOIL)
                .anyMatch(bell -> bell.seen().isEmpty());
    }

    /** Whether a leaflet of what is in it says when at the latest. */
    private boolean mustBeRinsed(BowlId id) {
        return floor.bowl(id).stream()
                .flatMap(bowl -> bowl.portions().stream())
                .flatMap(portion -> floor.salon().product(portion.product()).stream()
                        .map(product -> product.directions(portion.edition()).times()))
                .anyMatch(times -> times.longestOn() != null || times.develops() != null);
    }

    private static void limitRings(Bell rinse, Limit limit) {
        var atLeast = limit.hard() ? Priority.HIGH : Priority.MEDIUM;
        assertThat(rinse.at(limit.at()).map(Stage::priority))
                .as("%s of %s", limit, rinse.key())
                .hasValueSatisfying(priority -> assertThat(priority).isGreaterThanOrEqualTo(atLeast));
        if (limit.hard()) {
            assertThat(rinse.at(limit.at().plus(Duration.ofMinutes(1))).map(Stage::audience))
                    .as("a minute past %s", limit)
                    .contains(Audience.EVERYONE);
        }
    }

    private void discomfortRings(Visit visit, Complaint complaint) {
        var isOff = visit.onHair().stream().noneMatch(one -> !one.firstOn().isAfter(complaint.at()));
        var isLooked = visit.scalpChecks().stream().anyMatch(one -> !one.at().isBefore(complaint.at()));
        var rings = of(visit).stream()
                .filter(bell -> bell.key().anchor() == complaint.seq())
                .filter(bell ->
                        bell.kind() == BellKind.valueOf(complaint.grade().name()))
                .anyMatch(bell -> bell.at(complaint.at())
                        .filter(stage -> stage.priority() == Priority.HIGH && stage.audience() == Audience.EVERYONE)
                        .isPresent());
        assertThat(rings).as("%s of %s rings", complaint, visit.id()).isEqualTo(!(isOff && isLooked));
    }

    private void whatIsForbiddenRings(Visit visit, Application application) {
        var restrictions = new Restrictions(floor, visit);
        if (!restrictions.brokenBy(application).isEmpty()) {
            assertThat(of(visit)).as("what %s breaks", application.id()).anyMatch(Sentences::isForbidden);
        }
        if (!restrictions.gatePassedBy(application).isEmpty()) {
            assertThat(of(visit))
                    .as("the gate that %s passed", application.id())
                    .anyMatch(bell -> bell.kind() == BellKind.PASSED_GATE || bell.kind() == BellKind.GATE_OPEN);
        }
    }

    private static boolean isForbidden(Bell bell) {
        return Set.of(
                                BellKind.FORBIDDEN_HEAT,
                                BellKind.FORBIDDEN_COVER,
                                BellKind.FORBIDDEN_ZONE,
                                BellKind.FORBIDDEN_MIXTURE)
                        .contains(bell.kind())
                && bell.stages().get(0).priority() == Priority.HIGH;
    }

    private Bell one(Visit visit, BellKind kind) {
        var found = of(visit).stream().filter(bell -> bell.kind() == kind).toList();
        assertThat(found).as("%s of %s", kind, visit.id()).hasSize(1);
        return found.get(0);
    }

    private List<Bell> of(Visit visit) {
        return bells.stream()
                .filter(bell -> bell.kind() != BellKind.BOWL_WAITING)
                .filter(bell -> visit.id().equals(bell.visit()))
                .collect(Collectors.toUnmodifiableList());
    }
}
