package rinsebell.demo;

import static rinsebell.app.shelf.InventedProducts.BEIGE;
import static rinsebell.app.shelf.InventedProducts.CLEAR;
import static rinsebell.app.shelf.InventedProducts.DARK_BROWN;
import static rinsebell.app.shelf.InventedProducts.DEVELOPER_10;
import static rinsebell.app.shelf.InventedProducts.DEVELOPER_20;
import static rinsebell.app.shelf.InventedProducts.DEVELOPER_30;
import static rinsebell.app.shelf.InventedProducts.MILD_CREAM;
import static rinsebell.app.shelf.InventedProducts.POWDER;
import static rinsebell.app.shelf.InventedProducts.STRONG_CREAM;
import static rinsebell.app.shelf.InventedProducts.TONER;
import static rinsebell.floor.bowl.BowlReason.ANOTHER_ROUND;
import static rinsebell.floor.bowl.BowlReason.FIRST;
import static rinsebell.floor.bowl.BowlReason.NEXT_AREA;
import static rinsebell.floor.bowl.BowlReason.TONE;
import static rinsebell.floor.product.Cover.FOIL;
import static rinsebell.floor.product.Cover.OPEN;
import static rinsebell.floor.product.Zone.OFF_SCALP;
import static rinsebell.floor.product.Zone.ON_SCALP;
import static rinsebell.floor.visit.StrandFinding.Tone.ORANGE;
import static rinsebell.floor.visit.StrandFinding.Tone.PALE_ORANGE;
import static rinsebell.floor.visit.StrandFinding.Tone.YELLOW;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import rinsebell.floor.Floor;
import rinsebell.floor.Ledger;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.Left;
import rinsebell.floor.bowl.Left.Quarters;
import rinsebell.floor.command.EndDay;
import rinsebell.floor.command.Mix;
import rinsebell.floor.command.ThrowAway;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.Gate.Metal;
import rinsebell.floor.visit.Gate.Scalp;
import rinsebell.floor.visit.Gate.SkinTest;
import rinsebell.floor.visit.Gate.YesNo;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.WorkEvent;

/**
 * An invented salon in the middle of its Saturday. Every state that a floor can be in is there, relative to the instant
 * at which it is told.
 */
public final class Saturday {
    private static final int WEEK = 7;
    private static final Duration TEN_MINUTES = Duration.ofMinutes(10);
    private static final Duration FIVE_MINUTES = Duration.ofMinutes(5);

    private final Script script;
    private final Cast cast;
    private final Instant now;
    private final Gate fine;

    private Saturday(Instant now, ZoneId zone) {
        script = new Script(now);
        cast = new Cast(script, zone);
        this.now = now;
        fine = fineOn(Duration.ZERO);
    }

    /**
     * The day as it was pressed in, from the set-up to now.
     *
     * @param now the instant that the day has come to
     * @param zone where the salon's clock hangs
     */
    public static List<Ledger.Entry> until(Instant now, ZoneId zone) {
        return told(now, zone).script.entries();
    }

    /** The floor that the same day makes. */
    public static Floor floorAt(Instant now, ZoneId zone) {
        return told(now, zone).script.floor();
    }

    private static Saturday told(Instant now, ZoneId zone) {
        var saturday = new Saturday(now, zone);
        saturday.tell();
        saturday.script.play();
        return saturday;
    }

    private void tell() {
        twoBowlsOnOneHead();
        lateCheck();
        seated();
        lastMinute();
        anotherRound();
        underSteam();
        mixedNotOn();
        atTheBasin();
        onTheBench();
        goneHome();
        weeksAgo();
        theDaysBefore();
    }

    /** Foils, and the regrowth between them coloured; a look at the foils is due now. */
    private void twoBowlsOnOneHead() {
        guest("A. K.", cast.tamsin)
                .known(Regulars.A_K)
                .arrives(ago(52), Place.chair(1), fine)
                .mixes(ago(37), FIRST, cast.grams(60, POWDER), cast.grams(64, DEVELOPER_20))
                .putsOn(ago(35), Area.FOILS_TOP, OFF_SCALP, FOIL)
                .lastOn(ago(30))
                .mixes(ago(29), NEXT_AREA, cast.grams(40, DARK_BROWN), cast.grams(40, DEVELOPER_10))
                .putsOn(ago(28), Area.REGROWTH, ON_SCALP, OPEN)
                .lastOn(ago(22))
                .looks(ago(20), 6, ORANGE, TEN_MINUTES)
                .looks(ago(10, 20), 7, PALE_ORANGE, TEN_MINUTES);
    }

    /** Foils that somebody should have looked at some minutes ago. */
    private void lateCheck() {
        guest("J. M.", cast.piet)
                .arrives(ago(48), Place.chair(2), fine)
                .mixes(ago(28), FIRST, cast.grams(90, POWDER), cast.grams(95, DEVELOPER_20))
                .putsOn(ago(26), Area.FOILS_ALL, OFF_SCALP, FOIL)
                .lastOn(ago(14))
                .looks(ago(13), 6, ORANGE, TEN_MINUTES);
    }

    /** Just sat down; the gate is not answered yet. */
    private void seated() {
        guest("R. O.", cast.orla).arrives(ago(3), Place.chair(3), Gate.UNANSWERED);
    }

    /** Free-hand work that has to be rinsed before a minute is over. */
    private void lastMinute() {
        guest("S. V.", cast.noor)
                .arrives(ago(66), Place.chair(4), fine)
                .mixes(ago(52), FIRST, cast.grams(60, POWDER), cast.grams(7, CLEAR), cast.grams(45, DEVELOPER_30))
                .putsOn(ago(49, 10), Area.FREE_HAND, OFF_SCALP, OPEN)
                .lastOn(ago(35))
                .looks(ago(30), 6, ORANGE, TEN_MINUTES)
                .looks(ago(20), 7, PALE_ORANGE, TEN_MINUTES)
                .looks(ago(10), 8, YELLOW, TEN_MINUTES);
    }

    /** The first round on scalp was not enough; the second keeps off it. */
    private void anotherRound() {
        guest("L. B.", cast.tamsin)
                .arrives(ago(112), Place.chair(5), fine)
                .mixes(ago(104), FIRST, cast.grams(60, MILD_CREAM), cast.grams(60, DEVELOPER_20))
                .putsOn(ago(102), Area.WHOLE_HEAD, ON_SCALP, OPEN)
                .scalpIs(ago(92), ScalpCheck.Finding.FINE)
                .lastOn(ago(88))
                .looks(ago(82), 6, ORANGE, TEN_MINUTES)
                .tells(ago(75), new LookEvent.Complained(Complaint.Grade.TINGLING))
                .scalpIs(ago(74), ScalpCheck.Finding.FINE)
                .looks(ago(72), 7, PALE_ORANGE, TEN_MINUTES)
                .looks(ago(62), 8, YELLOW, TEN_MINUTES)
                .moves(ago(53), Place.basin(1))
                .rinses(ago(52))
                .scalpIs(ago(46), ScalpCheck.Finding.FINE)
                .throwsAway(ago(45), new Left.Estimated(Quarters.QUARTER))
                .tells(ago(44), new WorkEvent.TowelDried())
                .moves(ago(43), Place.chair(5))
                .tells(ago(42), new LookEvent.LiftJudged(false))
                .mixes(ago(24), ANOTHER_ROUND, cast.grams(40, MILD_CREAM), cast.grams(40, DEVELOPER_20))
                .putsOn(ago(22), Area.LENGTHS, OFF_SCALP, OPEN)
                .lastOn(ago(14))
                .looks(ago(13), 8, YELLOW, TEN_MINUTES)
                .looks(ago(4), 8, YELLOW, TEN_MINUTES);
    }

    /** The stronger cream on scalp, with gentle steam. */
    private void underSteam() {
        guest("T. W.", cast.noor)
                .arrives(ago(40), Place.chair(6), fine)
                .mixes(ago(24), FIRST, cast.grams(60, STRONG_CREAM), cast.grams(60, DEVELOPER_20))
                .putsOn(ago(22), Area.WHOLE_HEAD, ON_SCALP, OPEN)
                .scalpIs(ago(14), ScalpCheck.Finding.FINE)
                .lastOn(ago(12))
                .looks(ago(12), 5, ORANGE, TEN_MINUTES)
                .scalpIs(ago(6), ScalpCheck.Finding.FINE)
                .steams(ago(5, 30))
                .looks(ago(1, 30), 7, ORANGE, FIVE_MINUTES)
                .scalpIs(ago(1, 20), ScalpCheck.Finding.FINE);
    }

    /** A bowl that stands ready, and a brush that has not touched it. */
    private void mixedNotOn() {
        guest("D. F.", cast.piet)
                .arrives(ago(13), Place.chair(7), fine)
                .mixes(ago(4), FIRST, cast.grams(50, BEIGE), cast.grams(50, DEVELOPER_20));
    }

    /** Foils rinsed, and the toner on at the basin; somebody else sits in that chair by now. */
    private void atTheBasin() {
        guest("E. S.", cast.orla)
                .arrives(ago(78), Place.chair(7), fine)
                .mixes(ago(57), FIRST, cast.grams(60, POWDER), cast.grams(60, DEVELOPER_20))
                .putsOn(ago(55), Area.FOILS_ALL, OFF_SCALP, FOIL)
                .lastOn(ago(40))
                .looks(ago(32), 7, PALE_ORANGE, TEN_MINUTES)
                .looks(ago(22), 8, YELLOW, TEN_MINUTES)
                .moves(ago(15), Place.basin(1))
                .rinses(ago(14))
                .throwsAway(ago(12), new Left.Weighed(Grams.of(18)))
                .tells(ago(10), new WorkEvent.TowelDried())
                .tells(ago(9), new LookEvent.LiftJudged(true))
                .mixes(ago(4), TONE, cast.grams(30, TONER), cast.grams(30, DEVELOPER_10))
                .putsOn(ago(3), Area.LENGTHS, ON_SCALP, OPEN)
                .lastOn(ago(1));
    }

    /** One waits for a chair; another waits there while her colour develops. */
    private void onTheBench() {
        guest("H. N.", cast.piet).known(Regulars.H_N).arrives(ago(6), Place.BENCH, Gate.UNANSWERED);
        guest("M. C.", cast.orla)
                .arrives(ago(58), Place.chair(3), fine)
                .mixes(ago(38), FIRST, cast.grams(40, BEIGE), cast.grams(40, DEVELOPER_20))
                .putsOn(ago(36), Area.REGROWTH, ON_SCALP, OPEN)
                .lastOn(ago(26))
                .throwsAway(ago(25), null)
                .looks(ago(16), 7, ORANGE, TEN_MINUTES)
                .looks(ago(6), 8, ORANGE, TEN_MINUTES)
                .moves(ago(15), Place.BENCH);
    }

    /** Came, was coloured, and left. */
    private void goneHome() {
        guest("P. G.", cast.noor)
                .arrives(ago(200), Place.chair(8), fine)
                .mixes(ago(190), FIRST, cast.grams(50, DARK_BROWN), cast.grams(50, DEVELOPER_20))
                .putsOn(ago(188), Area.REGROWTH, ON_SCALP, OPEN)
                .lastOn(ago(178))
                .throwsAway(ago(177), new Left.Estimated(Quarters.NOTHING))
                .moves(ago(144), Place.basin(2))
                .rinses(ago(143))
                .leaves(ago(100));
    }

    /** What the records of two who come again tell. */
    private void weeksAgo() {
        guest("A. K.", cast.tamsin)
                .known(Regulars.A_K)
                .arrives(weeks(6, 0), Place.chair(1), fineOn(weeks(6, 0)))
                .mixes(weeks(6, 9), FIRST, cast.grams(60, POWDER), cast.grams(60, DEVELOPER_20))
                .putsOn(weeks(6, 12), Area.FOILS_ALL, OFF_SCALP, FOIL)
                .lastOn(weeks(6, 30))
                .looks(weeks(6, 35), 8, YELLOW, TEN_MINUTES)
                .moves(weeks(6, 47), Place.basin(1))
                .rinses(weeks(6, 48))
                .leaves(weeks(6, 90));
        dayIsOver(weeks(6, 24 * 60));
        guest("H. N.", cast.piet)
                .known(Regulars.H_N)
                .arrives(weeks(5, 0), Place.chair(2), fineOn(weeks(5, 0)))
                .mixes(weeks(5, 8), FIRST, cast.grams(50, BEIGE), cast.grams(50, DEVELOPER_20))
                .putsOn(weeks(5, 10), Area.REGROWTH, ON_SCALP, OPEN)
                .lastOn(weeks(5, 22))
                .tells(weeks(5, 31), new LookEvent.Complained(Complaint.Grade.TINGLING))
                .scalpIs(weeks(5, 32), ScalpCheck.Finding.PINK)
                .moves(weeks(5, 33), Place.basin(2))
                .rinses(weeks(5, 34))
                .leaves(weeks(5, 80));
        dayIsOver(weeks(5, 24 * 60));
    }

    /** Bowls for try-outs on strands of loose hair, and what was left of them: so that the weeks before have something. */
    private void theDaysBefore() {
        for (var day = 1; day < 27; day++) {
            if (day % WEEK != 0 && day % WEEK != 6) {
                tried(Duration.ofDays(day), 3 + day * 7 % 31);
            }
        }
    }

    private void tried(Duration ago, long left) {
        script.at(ago, () -> {
            var mix = new Mix(List.of(cast.grams(30, POWDER), cast.grams(30, DEVELOPER_20)), FIRST, null);
            var bowl = new BowlId(script.press(mix, ago, cast.tamsin));
            script.press(new ThrowAway(bowl, new Left.Weighed(Grams.of(left))), ago, cast.tamsin);
        });
    }

    /** The next morning, as the server does it. */
    private void dayIsOver(Duration ago) {
        script.at(ago, () -> script.press(new EndDay(script.floor().salon().dayOf(now.minus(ago))), ago, null));
    }

    /** So many minutes into a visit that began so many weeks ago. */
    private static Duration weeks(long weeks, long minutes) {
        return Duration.ofDays(7 * weeks).minusMinutes(minutes);
    }

    private Guest guest(String initials, StaffId stylist) {
        return new Guest(script, initials, stylist);
    }

    private static Duration ago(long minutes) {
        return ago(minutes, 0);
    }

    private static Duration ago(long minutes, long seconds) {
        return Duration.ofMinutes(minutes).plusSeconds(seconds);
    }

    /** Every question answered so that nothing stands in the way; the skin test is three days old. */
    private Gate fineOn(Duration ago) {
        LocalDate tested = script.floor().salon().dayOf(now.minus(ago)).minusDays(3);
        return new Gate(new SkinTest(SkinTest.Result.NO_REACTION, tested), Scalp.FINE, YesNo.NO, Metal.NONE, YesNo.NO);
    }
}
