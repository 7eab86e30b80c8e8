package rinsebell.floor.bowl;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.visit.VisitId;

/**
 * A recipe that was really mixed, at a time.
 *
 * @param id its name
 * @param root the bowl that was mixed, when this one was divided from it; itself otherwise
 * @param mixedAt when the mixing happened
 * @param portions what is in it; empty while the recipe is not known
 * @param reason why it was mixed
 * @param forVisit whom for; null for nobody yet
 * @param divided whether some of it went into another bowl
 * @param thrownAwayAt when it was thrown away; null while it stands
 */
public record Bowl(
        BowlId id,
        BowlId root,
        Instant mixedAt,
        List<Portion> portions,
        BowlReason reason,
        @Nullable VisitId forVisit,
        boolean divided,
        @Nullable Instant thrownAwayAt) {
    public Bowl {
        portions = List.copyOf(portions);
    }

    public boolean isRecipeKnown() {
        return !portions.isEmpty();
    }

    public boolean isThrownAway() {
        return thrownAwayAt != null;
    }

    Bowl filled(List<Portion> recipe) {
        return new Bowl(id, root, mixedAt, recipe, reason, forVisit, divided, thrownAwayAt);
    }

    Bowl dividedFrom() {
        return new Bowl(id, root, mixedAt, portions, reason, forVisit, true, thrownAwayAt);
    }

    Bowl thrownAway(Instant at) {
        return new Bowl(id, root, mixedAt, portions, reason, forVisit, divided, at);
    }

    Bowl part(BowlId part, BowlReason why, @Nullable VisitId whom) {
        return new Bowl(part, root, mixedAt, portions, why, whom, false, null);
    }
}
