package rinsebell.floor.testing;

import static java.time.Duration.ofMinutes;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import rinsebell.floor.basin.Basin;
import rinsebell.floor.basin.Hands;
import rinsebell.floor.basin.Job;
import rinsebell.floor.basin.Station;
import rinsebell.floor.basin.Work;
import rinsebell.floor.bowl.Announced;
import rinsebell.floor.bowl.Pin;
import rinsebell.floor.visit.VisitId;

/** A station as chance makes it, in whole minutes. */
public final class RandomStation {
    /** When it begins. */
    public static final Instant BEGIN = Instant.parse("2026-06-13T12:00:00Z");

    private final RandomGenerator dice;

    public RandomStation(RandomGenerator dice) {
        this.dice = dice;
    }

    /**
     * @param jobs how many
     * @param basins how many
     * @param minutes in which all of them fall due
     */
    public Station of(int jobs, int basins, int minutes) {
        var all = new ArrayList<Job>();
        for (var i = 1; i <= jobs; i++) {
            all.add(job(i, minutes));
        }
        return new Station(
                BEGIN, basins(basins), hands(minutes), all, pins(all, basins), announced(all, basins, minutes));
    }

    private Job job(int number, int minutes) {
        var ready = dice.nextInt(minutes);
        var latest = ready + dice.nextInt(12) - 2;
        var isBurning = dice.nextInt(25) == 0;
        var work = dice.nextInt(5) == 0
                ? Work.withToner(ofMinutes(dice.nextInt(3)), ofMinutes(2), ofMinutes(1), ofMinutes(1 + dice.nextInt(5)))
                : Work.rinse(ofMinutes(dice.nextInt(4)), ofMinutes(1 + dice.nextInt(5)));
        var harm = isBurning ? Job.Harm.NOW : dice.nextBoolean() ? Job.Harm.HAIR : Job.Harm.RESULT;
        var earliest = at(isBurning ? 0 : Math.min(ready, Math.max(0, latest)));
        var by = at(isBurning ? 0 : latest);
        var wanted = by.isAfter(earliest) && dice.nextInt(3) == 0 ? by : earliest;
        // Now and then the second stay of a head.
        var visit = number > 1 && dice.nextInt(10) == 0 ? number - 1 : number;
        return new Job(new VisitId(visit), 100 + number, BEGIN, earliest, wanted, by, harm, work);
    }

    private List<Basin> basins(int count) {
        var all = new ArrayList<Basin>();
        for (var number = 1; number <= count; number++) {
            var from = dice.nextInt(3) == 0 ? at(dice.nextInt(6)) : Instant.MIN;
            all.add(new Basin(number, from, BEGIN));
        }
        return all;
    }

    private Hands hands(int minutes) {
        if (dice.nextInt(3) == 0) {
            return Hands.UNKNOWN;
        }
        var steps = new ArrayList<Hands.Step>();
        steps.add(new Hands.Step(BEGIN.minus(ofMinutes(60)), 1 + dice.nextInt(3)));
        var at = 0;
        for (var i = 0; i < dice.nextInt(3); i++) {
            at += 1 + dice.nextInt(minutes);
            steps.add(new Hands.Step(at(at), dice.nextInt(3)));
        }
        steps.add(new Hands.Step(at(at + minutes), dice.nextInt(10) == 0 ? 0 : 1 + dice.nextInt(2)));
        return Hands.of(steps);
    }

    private Map<VisitId, Pin> pins(List<Job> jobs, int basins) {
        var pins = new HashMap<VisitId, Pin>();
        for (var job : jobs) {
            if (dice.nextInt(6) == 0) {
                var basin = dice.nextBoolean() ? Integer.valueOf(1 + dice.nextInt(basins + 1)) : null;
                var other = jobs.get(dice.nextInt(jobs.size())).visit();
                var before = dice.nextInt(3) == 0 && !other.equals(job.visit()) ? other : null;
                pins.put(job.visit(), new Pin(basin, before, BEGIN));
            }
        }
        return pins;
    }

    private Map<Long, Announced> announced(List<Job> jobs, int basins, int minutes) {
        var told = new HashMap<Long, Announced>();
        for (var job : jobs) {
            if (dice.nextInt(3) == 0) {
                told.put(job.anchor(), new Announced(1 + dice.nextInt(basins), at(dice.nextInt(minutes))));
            }
        }
        return told;
    }

    private static Instant at(int minute) {
        return BEGIN.plus(ofMinutes(minute));
    }
}
