package rinsebell.floor.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.stream.Stream;
import rinsebell.floor.Floor;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.bell.Stage;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.product.Active;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Times;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Visit;

/**
 * The latest instants at which the rinse of a head must ring, reckoned from the leaflets without the floor's clocks: the
 * house, heat and other bowls can only make them earlier.
 */
final class LimitsByHand {
    private final Floor floor;
    private final Visit visit;
    private final Bell rinse;

    LimitsByHand(Floor floor, Visit visit, Bell rinse) {
        this.floor = floor;
        this.visit = visit;
        this.rinse = rinse;
    }

    void ring() {
        visit.onHair()
                .forEach(one -> floor.bowl(one.bowl()).ifPresent(bowl -> {
                    usableEndRings(bowl);
                    longestOnRings(one, bowl);
                }));
        visit.live().forEach(this::decisionRings);
    }

    private void usableEndRings(Bowl bowl) {
        leaflets(bowl)
                .map(Times::active)
                .flatMap(Stream::ofNullable)
                .filter(active -> active.atEnd() == Active.AtEnd.RINSE)
                .forEach(active ->
                        rings(bowl.mixedAt().plus(active.usableFor()), Priority.HIGH, "usable end of " + bowl));
    }

    private void longestOnRings(Application application, Bowl bowl) {
        leaflets(bowl)
                .map(Times::longestOn)
                .flatMap(Stream::ofNullable)
                .forEach(longest ->
                        rings(application.firstOn().plus(longest), Priority.HIGH, "longest on of " + application.id()));
    }

    private void decisionRings(Application application) {
        var working = floor.salon().policy().working();
        var atMost = working.walk().plus(working.foilsOut());
        application
                .lastCheck()
                .filter(check -> check.saysRinse())
                .ifPresent(check -> rings(check.at().plus(atMost), Priority.MEDIUM, "the decision to rinse"));
    }

    private Stream<Times> leaflets(Bowl bowl) {
        return bowl.portions().stream()
                .flatMap(portion -> floor.salon().product(portion.product()).stream()
                        .map(product -> product.directions(portion.edition())))
                .map(Directions::times);
    }

    private void rings(Instant at, Priority atLeast, String why) {
        assertThat(rinse.at(at).map(Stage::priority))
                .as("%s rings of %s at %s", visit.id(), why, at)
                .hasValueSatisfying(priority -> assertThat(priority).isGreaterThanOrEqualTo(atLeast));
    }
}
