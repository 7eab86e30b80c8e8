package rinsebell.floor.bowl;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.unit.Grams;
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
 * @param left what was left in it then; null while nobody has said
 */
public record Bowl(
        BowlId id,
        BowlId root,
        Instant mixedAt,
        List<Portion> portions,
        BowlReason reason,
        @Nullable VisitId forVisit,
        boolean divided,
        @Nullable Instant thrownAwayAt,
        @Nullable Left left) {
    public Bowl {
        portions = List.copyOf(portions);
    }

    public boolean isRecipeKnown() {
        return !portions.isEmpty();
    }

    /** All that was mixed, for whatever parts it was divided into; nothing while the recipe is not known. */
    public Grams mixed() {
        return portions.stream().map(Portion::grams).reduce(Grams.NONE, Grams::plus);
    }

    public boolean isThrownAway() {
        return thrownAwayAt != null;
    }

    Bowl filled(List<Portion> recipe) {
        return new Bowl(id, root, mixedAt, recipe, reason, forVisit, divided, thrownAwayAt, left);
    }

    Bowl dividedFrom() {
        return new Bowl(id, root, mixedAt, portions, reason, forVisit, true, thrownAwayAt, left);
    }

    /** Whoever throws it away without a word takes back nothing that was said of it before. */
    Bowl thrownAway(Instant at, @Nullable Left said) {
        return new Bowl(id, root, mixedAt, portions, reason, forVisit, divided, at, said == null ? left : said);
    }

    Bowl left(Left said) {
        return new Bowl(id, root, mixedAt, portions, reason, forVisit, divided, thrownAwayAt, said);
    }

    Bowl part(BowlId part, BowlReason why, @Nullable VisitId whom) {
        return new Bowl(part, root, mixedAt, portions, why, whom, false, null, null);
    }
}
