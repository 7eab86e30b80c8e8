package rinsebell.app.shelf;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rinsebell.floor.product.Active;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.Mixture;
import rinsebell.floor.product.Pairing;
import rinsebell.floor.product.Span;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.unit.Percent;

/** Lines that the leaflets of several products share. */
final class Lines {
    static final Percent NONE = Percent.of("0");

    /** As much developer as product, and not a gram more. Common practice for creams and colour, no source. */
    static final Mixture EQUAL_PARTS = new Mixture("equal parts", Grams.of(60), Grams.NONE);

    private Lines() {}

    static Duration minutes(long minutes) {
        return Duration.ofMinutes(minutes);
    }

    static Span span(long fromMinutes, long toMinutes) {
        return new Span(minutes(fromMinutes), minutes(toMinutes));
    }

    /** Lightener stays active for one hour from mixing and is rinsed then. Common practice, no source. */
    static Active oneHourThenRinse() {
        return new Active(minutes(60), Active.AtEnd.RINSE);
    }

    static Active thenPutNoMoreOn(long minutes) {
        return new Active(minutes(minutes), Active.AtEnd.PUT_NO_MORE_ON);
    }

    static Set<Percent> volumes(Integer... volumes) {
        return Arrays.stream(volumes).map(Percent::ofVolumes).collect(Collectors.toUnmodifiableSet());
    }

    static Pairing atMost(long gramsPer60, Kind with) {
        return new Pairing(with, Pairing.Rule.ALLOWED, Grams.of(gramsPer60));
    }

    static Pairing neverOnScalp(Kind with) {
        return new Pairing(with, Pairing.Rule.NEVER_ON_SCALP, null);
    }

    static Stream<Pairing> never(Kind... kinds) {
        return Arrays.stream(kinds).map(kind -> new Pairing(kind, Pairing.Rule.NEVER, null));
    }

    static List<Pairing> pairings(Stream<Pairing> nevers, Pairing... others) {
        return Stream.concat(nevers, Arrays.stream(others)).toList();
    }
}
