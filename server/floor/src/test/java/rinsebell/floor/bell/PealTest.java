package rinsebell.floor.bell;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.bell.BellKind.FORBIDDEN_ZONE;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;
import static rinsebell.floor.testing.Where.onScalp;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import rinsebell.floor.salon.Policy;
import rinsebell.floor.testing.Gates;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.Complaint;

/**
 * Whichever way a floor came about, it has the same bells. The random days hold every step against a reckoning from nothing;
 * here is what one head's bells rest on beyond that head, which is rare there, and that the rest is not reckoned again.
 */
class PealTest {
    private static final ClientId CLIENT = new ClientId(70);

    private final Story story = Story.stocked();

    private Head arrivesFine(String clock) {
        var head = story.at(clock).arrives(CLIENT);
        head.answers(Gates.FINE);
        return head;
    }

    @Test
    void whatIsSaidOfAnEarlierVisitRingsOnThisOne() {
        var earlier = arrivesFine("10:00");
        earlier.leaves();
        var later = arrivesFine("15:00");
        later.puts(story.mixes(g(60, Shelf.MILD_CREAM), g(60, Shelf.DEV20)), onScalp(Area.REGROWTH));
        var before = Peal.of(story.floor());
        assertThat(before.bells()).noneMatch(bell -> bell.kind() == FORBIDDEN_ZONE);
        story.at("10:20");
        earlier.complains(Complaint.Grade.BURNING);
        var after = before.on(story.floor()).bells();
        assertThat(after).anyMatch(bell -> bell.kind() == FORBIDDEN_ZONE);
        assertThat(after).isEqualTo(Peal.of(story.floor()).bells());
    }

    @Test
    void theHousesDelaysCountAtOnce() {
        foils();
        var before = Peal.of(story.floor());
        story.policy(callingSooner(Policy.DEFAULT));
        var after = before.on(story.floor()).bells();
        assertThat(after).isEqualTo(Peal.of(story.floor()).bells()).isNotEqualTo(before.bells());
    }

    @Test
    void whatNothingHappenedToIsTheSame() {
        foils();
        var before = Peal.of(story.floor());
        var other = story.at("10:30").arrivesFine();
        other.puts(story.mixes(g(60, Shelf.POWDER), g(60, Shelf.DEV30)), offScalp(Area.FOILS_ALL));
        var after = before.on(story.floor()).bells();
        assertThat(after).isEqualTo(Peal.of(story.floor()).bells());
        assertThat(before.bells())
                .isNotEmpty()
                .allSatisfy(bell -> assertThat(after).anyMatch(one -> one == bell));
    }

    private static Policy callingSooner(Policy house) {
        var ringing = new Policy.Ringing(
                Duration.ofSeconds(5),
                Duration.ofSeconds(20),
                house.ringing().againHigh(),
                house.ringing().againMedium(),
                house.ringing().againLow(),
                house.ringing().longestShelved());
        return new Policy(
                house.applying(),
                house.working(),
                house.bowl(),
                house.checks(),
                ringing,
                house.skinTest(),
                house.longestOn(),
                house.weighingSlackGrams(),
                house.keeping());
    }

    private void foils() {
        var head = story.at("10:00").arrivesFine();
        head.puts(story.mixes(g(60, Shelf.POWDER), g(60, Shelf.DEV30)), offScalp(Area.FOILS_ALL));
    }
}
