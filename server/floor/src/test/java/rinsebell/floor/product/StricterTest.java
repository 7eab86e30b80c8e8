package rinsebell.floor.product;

import static java.time.Duration.ofMinutes;
import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Leaflet.leaflet;

import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rinsebell.floor.testing.Leaflet;

/** Each row: what one edition says, what the next one says, and in what that is stricter. The other way round too. */
class StricterTest {
    private record Row(
            UnaryOperator<Leaflet> older, UnaryOperator<Leaflet> newer, Set<Stricter> stricter, Set<Stricter> back) {}

    private static final UnaryOperator<Leaflet> NOTHING = said -> said;

    private static Row row(UnaryOperator<Leaflet> older, UnaryOperator<Leaflet> newer, Stricter stricter) {
        return new Row(older, newer, Set.of(stricter), Set.of());
    }

    static Stream<Row> rows() {
        var from = Develops.Counted.FROM_FIRST_ON;
        return Stream.of(
                new Row(NOTHING, NOTHING, Set.of(), Set.of()),
                row(NOTHING, Leaflet::offScalpOnly, Stricter.ZONE),
                row(said -> said.allows(Cover.FOIL), NOTHING, Stricter.COVER),
                row(said -> said.allows(Cover.FILM), said -> said.allows(Cover.FILM, ofMinutes(15)), Stricter.COVER),
                row(said -> said.allows(Heat.DRYER), NOTHING, Stricter.HEAT),
                row(NOTHING, said -> said.usableThenRinse(ofMinutes(60)), Stricter.USABLE),
                row(
                        said -> said.usableThenPutNoMoreOn(ofMinutes(60)),
                        said -> said.usableThenRinse(ofMinutes(60)),
                        Stricter.USABLE),
                row(
                        said -> said.develops(from, ofMinutes(20), ofMinutes(50)),
                        said -> said.develops(from, ofMinutes(30), ofMinutes(49)),
                        Stricter.DEVELOPS),
                new Row(
                        said -> said.develops(from, ofMinutes(20), ofMinutes(50)),
                        said -> said.develops(Develops.Counted.FROM_LAST_ON, ofMinutes(20), ofMinutes(50)),
                        Set.of(Stricter.DEVELOPS),
                        Set.of(Stricter.DEVELOPS)),
                row(said -> said.longestOn(ofMinutes(60)), said -> said.longestOn(ofMinutes(50)), Stricter.LONGEST_ON),
                row(
                        said -> said.strandEvery(ofMinutes(10), null),
                        said -> said.strandEvery(ofMinutes(5), null),
                        Stricter.CHECKS),
                row(said -> said.developerOfVolumes(10, 20), said -> said.developerOfVolumes(10), Stricter.STRENGTH),
                row(
                        said -> said.mixture("equal parts", 60, 0).mixture("free hand", 45, 0),
                        said -> said.mixture("equal parts", 60, 0),
                        Stricter.MIXTURE),
                row(NOTHING, said -> said.never(Kind.HIGH_LIFT_COLOUR), Stricter.PAIRING));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void isFoundAndTheOtherWayRoundIsNone(Row row) {
        var older = typed(row.older);
        var newer = typed(row.newer);
        assertThat(Stricter.than(older, newer)).isEqualTo(row.stricter);
        assertThat(Stricter.than(newer, older)).isEqualTo(row.back);
    }

    private static Directions typed(UnaryOperator<Leaflet> said) {
        return said.apply(leaflet("powder", Kind.POWDER_LIGHTENER)).typedIn();
    }
}
