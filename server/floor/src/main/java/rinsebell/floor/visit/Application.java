package rinsebell.floor.visit;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Zone;

/**
 * A bowl on a section of one head.
 *
 * @param id its name
 * @param bowl what is on
 * @param area where
 * @param zone whether it touches the scalp
 * @param firstOn when the first of it went on
 * @param lastOn when the last of it went on; null until that is recorded
 * @param covers what lay over it, oldest first; never empty
 * @param planned the time the stylist plans; null for none
 * @param checks looks at a strand, oldest first
 * @param foilsOut when foils were taken out, oldest first
 * @param ending how it ended; null while it is on
 */
public record Application(
        ApplicationId id,
        BowlId bowl,
        Area area,
        Zone zone,
        Instant firstOn,
        @Nullable Instant lastOn,
        List<CoverSpan> covers,
        @Nullable Duration planned,
        List<StrandCheck> checks,
        List<Instant> foilsOut,
        @Nullable Ending ending) {
    public Application {
        covers = List.copyOf(covers);
        checks = List.copyOf(checks);
        foilsOut = List.copyOf(foilsOut);
    }

    /** It is on and nothing has ended it. */
    public boolean isLive() {
        return ending == null;
    }

    /** Some of it is still on the hair: live, or covered by a later bowl. */
    public boolean isOnHair() {
        return ending == null || !ending.isOff();
    }

    public boolean isOnScalp() {
        return zone == Zone.ON_SCALP;
    }

    public CoverSpan cover() {
        return covers.get(covers.size() - 1);
    }

    public Optional<StrandCheck> lastCheck() {
        return checks.isEmpty() ? Optional.empty() : Optional.of(checks.get(checks.size() - 1));
    }

    /** The same, had the last of it gone on then. */
    Application lastOnAt(Instant at) {
        return new Application(id, bowl, area, zone, firstOn, at, covers, planned, checks, foilsOut, ending);
    }

    Application covered(long seq, Cover cover, Instant at) {
        return new Application(
                id,
                bowl,
                area,
                zone,
                firstOn,
                lastOn,
                with(covers, new CoverSpan(seq, cover, at)),
                planned,
                checks,
                foilsOut,
                ending);
    }

    Application checked(StrandCheck check) {
        return new Application(
                id, bowl, area, zone, firstOn, lastOn, covers, planned, with(checks, check), foilsOut, ending);
    }

    Application foilsOutAt(Instant at) {
        return new Application(
                id, bowl, area, zone, firstOn, lastOn, covers, planned, checks, with(foilsOut, at), ending);
    }

    Application planning(@Nullable Duration time) {
        return new Application(id, bowl, area, zone, firstOn, lastOn, covers, time, checks, foilsOut, ending);
    }

    Application ended(Ending how) {
        return new Application(id, bowl, area, zone, firstOn, lastOn, covers, planned, checks, foilsOut, how);
    }

    private static <T> List<T> with(List<T> list, T one) {
        var next = new ArrayList<>(list);
        next.add(one);
        return next;
    }
}
