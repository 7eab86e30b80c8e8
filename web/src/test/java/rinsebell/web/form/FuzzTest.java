package rinsebell.web.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Random garbage in every field of every form: it is read or told, never thrown at anybody, and decided too. */
class FuzzTest {
    private static final List<String> NAMES = List.of(
            "press",
            "by",
            "minutesAgo",
            "at",
            "intent",
            "note",
            "label",
            "place",
            "stylist",
            "helper",
            "client",
            "skinTest",
            "skinTestOn",
            "scalp",
            "earlierReaction",
            "metal",
            "under16",
            "bowl",
            "area",
            "zone",
            "cover",
            "planned",
            "application",
            "applications",
            "level",
            "tone",
            "stretch",
            "dryness",
            "decision",
            "again",
            "finding",
            "heat",
            "basin",
            "reached",
            "grade",
            "portions.0.product",
            "portions.0.grams",
            "portions.99.grams",
            "portions.100.grams",
            "reason",
            "visit",
            "earlier",
            "along",
            "all",
            "kind",
            "subject",
            "anchor",
            "name",
            "chairs",
            "basins",
            "bench",
            "twentyFourHours",
            "role",
            "working",
            "usableFor",
            "atEnd",
            "develops.from",
            "develops.to",
            "develops.counted",
            "heats.dryer.from",
            "heats.dryer.to",
            "heats.dryer.allowed",
            "longestOn",
            "covers.cap.allowed",
            "covers.cap.upTo",
            "mixtures.0.name",
            "mixtures.0.developerPer60",
            "strengths",
            "pairings.developer.rule",
            "pairings.developer.atMostPer60",
            "checks.strandEvery",
            "dye",
            "peroxide",
            "ammonia",
            "offered",
            "applying",
            "bowl.low",
            "checks.high",
            "skinTest.validDays",
            "longestOn.developer",
            "staff",
            "weighingSlackGrams");
    private static final List<String> VALUES = List.of(
            "",
            " ",
            "0",
            "1",
            "2",
            "3",
            "7",
            "60",
            "-1",
            "1e9",
            "NaN",
            "-Infinity",
            "9".repeat(400),
            "0.0000001",
            "1,5",
            "null",
            "true",
            "no",
            "yes",
            "fine",
            "rinse",
            "rinsed",
            "chair-1",
            "basin-A",
            "bench",
            "regrowth",
            "on-scalp",
            "open",
            "first",
            "tingling",
            "gentle-steam",
            "dryer",
            "developer",
            "powder-lightener",
            "permanent-colour",
            "from-mixing",
            "put-no-more-on",
            "stylist",
            "strand-check",
            "reacted",
            "2026-05-14",
            "2026-02-30",
            "14:05",
            "9999-12-31T23:59:60Z",
            "2026-05-16T09:30:00+02:00",
            "Europe/Berlin",
            "\u0000",
            "\ud83d",
            "\u202e",
            "👩‍🦰",
            "עברית",
            "<script>alert(1)</script>",
            "' or 1=1 --",
            "{0}",
            "plan",
            "fact",
            "x".repeat(100_000));

    private final PressTable table = new PressTable();

    @Test
    void noGarbageIsEverThrown() {
        var seed = 20_260_516L;
        var random = new Random(seed);
        var read = 0;
        for (var round = 0; round < 400; round++) {
            for (var name : Presses.all(List.of()).names()) {
                read += reads(name, garbage(random), random.nextInt(40)) ? 1 : 0;
            }
        }
        assertThat(read).as("some garbage makes sense, seed %d", seed).isPositive();
    }

    private boolean reads(Presses.Name name, Fields fields, long id) {
        var reading = table.read(name.resource(), name.press(), id, fields);
        if (reading instanceof Reading.Read sense) {
            sense.command().decide(table.floor(), sense.asked());
            return true;
        }
        assertThat(((Reading.Wrong) reading).errors()).isNotEmpty();
        return false;
    }

    private static Fields garbage(Random random) {
        var typed = new LinkedHashMap<String, List<String>>();
        var many = random.nextInt(NAMES.size());
        for (var i = 0; i < many; i++) {
            var values = new ArrayList<String>();
            for (var j = 0; j <= random.nextInt(2) * random.nextInt(3); j++) {
                values.add(VALUES.get(random.nextInt(VALUES.size())));
            }
            typed.put(NAMES.get(random.nextInt(NAMES.size())), values);
        }
        return Fields.of(typed);
    }

    @Test
    void nothingTypedIsNeverThrown() {
        for (var name : Presses.all(List.of()).names()) {
            for (var id : new long[] {Long.MIN_VALUE, -1, 0, 1, table.visit.value(), Long.MAX_VALUE}) {
                reads(name, Fields.NONE, id);
            }
        }
    }
}
