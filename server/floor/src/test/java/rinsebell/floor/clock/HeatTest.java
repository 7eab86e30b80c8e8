package rinsebell.floor.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.product.Develops.Counted.FROM_FIRST_ON;
import static rinsebell.floor.product.Develops.Counted.FROM_LAST_ON;
import static rinsebell.floor.product.Heat.DRYER;
import static rinsebell.floor.product.Heat.GENTLE_STEAM;
import static rinsebell.floor.product.Heat.WARM_AIR;
import static rinsebell.floor.product.Kind.PERMANENT_COLOUR;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rinsebell.floor.product.Heat;
import rinsebell.floor.testing.Leaflet;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;

/**
 * Development under heat. House rule: a heated minute counts as plain figure / heated figure minutes. Plain 20 - 40
 * minutes; under gentle steam 10 - 20 (a minute counts two), under warm air 15 - 30 (a minute counts 4/3).
 */
class HeatTest {
    private static Leaflet colour() {
        return leaflet("permanent", PERMANENT_COLOUR)
                .develops(FROM_FIRST_ON, minutes(20), minutes(40))
                .developsUnder(GENTLE_STEAM, minutes(10), minutes(20))
                .developsUnder(WARM_AIR, minutes(15), minutes(30))
                .figuresUnder(DRYER, minutes(5), minutes(10));
    }

    /** A press on the heat: a heat that begins, or "off". */
    private record Press(String clock, String what) {}

    private static List<Press> presses(String... clockAndWhat) {
        var found = new ArrayList<Press>();
        for (var press : clockAndWhat) {
            found.add(new Press(press.substring(0, press.indexOf(' ')), press.substring(press.indexOf(' ') + 1)));
        }
        return found;
    }

    static Stream<Object[]> heats() {
        return Stream.of(
                new Object[] {"none", presses(), "10:20", "10:40"},
                new Object[] {"throughout", presses("10:00 GENTLE_STEAM"), "10:10", "10:20"},
                new Object[] {"already on before", presses("09:55 GENTLE_STEAM"), "10:10", "10:20"},
                new Object[] {"over before", presses("09:50 GENTLE_STEAM", "09:58 off"), "10:20", "10:40"},
                new Object[] {"just over before", presses("09:50 GENTLE_STEAM", "10:00 off"), "10:20", "10:40"},
                new Object[] {"across the start", presses("09:50 GENTLE_STEAM", "10:04 off"), "10:16", "10:36"},
                new Object[] {"from half way", presses("10:10 GENTLE_STEAM"), "10:15", "10:25"},
                new Object[] {"off midway", presses("10:10 GENTLE_STEAM", "10:14 off"), "10:16", "10:36"},
                new Object[] {"two heats in turn", presses("10:04 GENTLE_STEAM", "10:08 WARM_AIR"), "10:14", "10:29"},
                new Object[] {
                    "two heats with a pause",
                    presses("10:00 GENTLE_STEAM", "10:05 off", "10:09 GENTLE_STEAM", "10:11 off"),
                    "10:13",
                    "10:33"
                },
                new Object[] {"just before ready", presses("10:19:59.998 GENTLE_STEAM"), "10:19:59.999", "10:29:59.999"
                },
                new Object[] {"at ready", presses("10:20 GENTLE_STEAM"), "10:20", "10:30"},
                new Object[] {"just after ready", presses("10:20:00.002 GENTLE_STEAM"), "10:20", "10:30:00.001"},
                new Object[] {"after the end", presses("10:40 GENTLE_STEAM"), "10:20", "10:40"},
                // 4/3 does not divide: what is left of a millisecond goes to the earlier end.
                new Object[] {"a fraction", presses("10:00:00.001 WARM_AIR"), "10:15", "10:30"},
                new Object[] {
                    "a fraction, off", presses("10:00 WARM_AIR", "10:00:00.001 off"), "10:19:59.999", "10:39:59.999"
                },
                new Object[] {"forbidden, with figures", presses("10:00 DRYER"), "10:20", "10:40"});
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("heats")
    void heatShortensDevelopment(String row, List<Press> presses, String readyFrom, String rinseBy) {
        var story = Story.begins();
        var head = story.at("09:40").arrivesFine();
        story.at("09:45");
        var bowl = story.mixes(g(60, colour().typedIn()));
        story.at("10:00");
        var application = head.puts(bowl, offScalp(Area.LENGTHS));
        head.lastOn(application);
        for (var press : presses) {
            story.at(press.clock());
            if (press.what().equals("off")) {
                head.heatOff();
            } else {
                head.heats(Heat.valueOf(press.what()));
            }
        }
        assertThat(head.timing(application).ready()).as(row).contains(at(readyFrom));
        assertThat(head.timing(application).rinseBy().map(Limit::at)).as(row).contains(at(rinseBy));
    }

    @Test
    void allowedHeatWithoutFiguresOfItsOwnChangesNothing() {
        assertThat(rinseBy(leaflet("permanent", PERMANENT_COLOUR)
                        .develops(FROM_FIRST_ON, minutes(20), minutes(40))
                        .allows(WARM_AIR)))
                .isEqualTo(at("10:40"));
    }

    @Test
    void heatCountsFromLastOnWhereTheLeafletCountsSo() {
        // Last on at 10:00 as well; steam is on from then.
        assertThat(rinseBy(leaflet("permanent", PERMANENT_COLOUR)
                        .develops(FROM_LAST_ON, minutes(20), minutes(40))
                        .developsUnder(WARM_AIR, minutes(10), minutes(30))))
                .isEqualTo(at("10:30"));
    }

    @Test
    void heatThatAPartnerInTheBowlForbidsChangesNothing() {
        var partner = leaflet("no heat", PERMANENT_COLOUR);
        var story = Story.begins();
        var head = story.at("09:40").arrivesFine();
        var bowl = story.mixes(g(60, colour().typedIn()), g(7, partner.typedIn()));
        story.at("10:00");
        var application = head.puts(bowl, offScalp(Area.LENGTHS));
        head.heats(GENTLE_STEAM);
        assertThat(head.timing(application).rinseBy().map(Limit::at)).contains(at("10:40"));
    }

    private static Instant rinseBy(Leaflet leaflet) {
        var story = Story.begins();
        var head = story.at("09:40").arrivesFine();
        story.at("09:45");
        var bowl = story.mixes(g(60, leaflet.typedIn()));
        story.at("10:00");
        var application = head.puts(bowl, offScalp(Area.LENGTHS));
        head.lastOn(application);
        head.heats(WARM_AIR);
        return head.timing(application).rinseBy().orElseThrow().at();
    }
}
