package rinsebell.planner;

import static java.time.Duration.ofMinutes;
import static java.time.Duration.ofSeconds;

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

/** A busy station as chance makes it, to the second. */
final class FullHouse {
    static final Instant BEGIN = Instant.parse("2026-06-13T12:00:00Z");

    private final RandomGenerator dice;

    FullHouse(RandomGenerator dice) {
        this.dice = dice;
    }

    /** @param use what part of the basins' time is asked for, from when the first head is ready to the last */
    Station of(int chairs, int basins, int hands, double use) {
        var works = new ArrayList<Work>();
        for (var i = 0; i < chairs; i++) {
            works.add(work());
        }
        var asked = works.stream().mapToLong(work -> work.stay().toSeconds()).sum();
        var seconds = (int) Math.max(600, asked / use / basins);
        var jobs = new ArrayList<Job>();
        for (var i = 0; i < chairs; i++) {
            jobs.add(job(i + 1, works.get(i), seconds));
        }
        return new Station(BEGIN, basins(basins), Hands.always(hands), jobs, pins(jobs, basins), told(jobs, basins));
    }

    private Work work() {
        return dice.nextInt(3) == 0
                ? Work.withToner(ofMinutes(2), ofMinutes(4), ofMinutes(1), ofMinutes(5 + dice.nextInt(6)))
                : Work.rinse(ofMinutes(dice.nextInt(4)), ofMinutes(5 + dice.nextInt(3)));
    }

    private Job job(int number, Work work, int seconds) {
        var ready = at(dice.nextInt(seconds));
        var latest = ready.plus(ofSeconds(180 + dice.nextInt(720)));
        var harm = dice.nextInt(40) == 0 ? Job.Harm.NOW : dice.nextBoolean() ? Job.Harm.HAIR : Job.Harm.RESULT;
        return new Job(new VisitId(number), 1_000 + number, BEGIN, ready, ready, latest, harm, work);
    }

    private static Instant at(int second) {
        return BEGIN.plus(ofSeconds(second));
    }

    private List<Basin> basins(int count) {
        var basins = new ArrayList<Basin>();
        for (var number = 1; number <= count; number++) {
            basins.add(new Basin(number, at(dice.nextInt(300)), BEGIN));
        }
        return basins;
    }

    private Map<VisitId, Pin> pins(List<Job> jobs, int basins) {
        var pins = new HashMap<VisitId, Pin>();
        if (dice.nextInt(3) == 0) {
            var job = jobs.get(dice.nextInt(jobs.size()));
            pins.put(job.visit(), new Pin(1 + dice.nextInt(basins), null, java.time.Instant.EPOCH));
        }
        return pins;
    }

    private Map<Long, Announced> told(List<Job> jobs, int basins) {
        var told = new HashMap<Long, Announced>();
        for (var job : jobs) {
            if (dice.nextInt(3) == 0) {
                var water = job.earliest().plus(ofSeconds(dice.nextInt(600)));
                told.put(job.anchor(), new Announced(1 + dice.nextInt(basins), water));
            }
        }
        return told;
    }
}
