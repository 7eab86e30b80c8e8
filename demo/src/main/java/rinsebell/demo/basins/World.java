package rinsebell.demo.basins;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rinsebell.demo.basins.Happened.What;

/** One day, lived by one way. What is physically so is the same for all ways; a step that can't be done ends the day. */
final class World {
    private static final long MINUTE = 60;

    /** Past any end of a day; a day that comes to it would never end. */
    private static final long TOO_LONG = 3 * Day.OPEN;

    private final Day day;
    private final Way way;
    private final List<Course> courses;
    private final List<Happened> log = new ArrayList<>();
    private long now;

    private World(Day day, Way way) {
        this.day = day;
        this.way = way;
        this.courses = day.heads().stream().map(Course::new).toList();
    }

    /** All that happens, in the order of time. */
    static List<Happened> live(Day day, Way way) {
        var world = new World(day, way);
        while (world.courses.stream().anyMatch(course -> course.left == Sight.NOBODY)) {
            world.minute();
        }
        return List.copyOf(world.log);
    }

    private void minute() {
        byItself();
        handsToWhoWaits();
        steps();
        seat();
        mix();
        now = courses.stream().mapToLong(course -> course.next(now)).reduce((now / MINUTE + 1) * MINUTE, Math::min);
        if (now > TOO_LONG) {
            throw new IllegalStateException("day " + day.seed() + " does not end");
        }
    }

    private void happened(What what, Course course) {
        log.add(new Happened(now, what, course.head.number(), course.basin));
    }

    private void byItself() {
        for (var course : courses) {
            if (course.head.arrives() == now) {
                happened(What.ARRIVES, course);
            }
            if (course.firstOn() == now) {
                happened(What.ON, course);
            }
            if (course.prepared() == now) {
                happened(What.PREPARED, course);
            }
            if (course.partEnds() == now) {
                partEnds(course);
            }
        }
    }

    private void partEnds(Course course) {
        var held = course.takesHands(course.part);
        course.part++;
        if (course.part == course.head.parts().size()) {
            course.left = now;
            course.partSince = Sight.NOBODY;
            happened(What.LEAVES, course);
            return;
        }
        var takes = course.takesHands(course.part);
        course.partSince = held || !takes ? now : Sight.NOBODY;
        if (held && !takes) {
            happened(What.HANDS_OFF, course);
        }
    }

    private Stream<Course> all(Predicate<Course> which) {
        return courses.stream().filter(which);
    }

    private int freeHands() {
        return day.hands() - (int) all(course -> course.holdsHands(now)).count();
    }

    /** Whoever holds a basin goes before those who have none. */
    private void handsToWhoWaits() {
        all(Course::waitsForHands)
                .sorted(Comparator.comparingLong(course -> course.water))
                .limit(freeHands())
                .forEach(course -> {
                    course.partSince = now;
                    happened(What.HANDS_ON, course);
                });
    }

    private void steps() {
        for (var step = way.next(sight()); step.isPresent(); step = way.next(sight())) {
            take(step.get());
        }
    }

    private Sight sight() {
        return new Sight(
                now,
                day.hands(),
                day.basins(),
                all(Course::isInSight).map(course -> course.seen(now)).toList());
    }

    private void take(Way.Step step) {
        var course = courses.get(step.head() - 1);
        if (freeHands() <= 0 || !(step.basin() == 0 ? begins(course) : water(course, step.basin()))) {
            throw new IllegalStateException("day " + day.seed() + ", second " + now + ": can't be done: " + step);
        }
    }

    private boolean begins(Course course) {
        var can = course.firstOn() <= now && course.begins == Sight.NOBODY;
        course.begins = now;
        happened(What.BEGINS, course);
        return can;
    }

    private boolean water(Course course, int basin) {
        var can = course.prepared() <= now
                && now >= course.firstOn() + course.head.ready()
                && course.water == Sight.NOBODY
                && basin <= day.basins()
                && all(Course::isThere).noneMatch(other -> other.basin == basin);
        course.basin = basin;
        course.water = now;
        course.partSince = now;
        happened(What.WATER, course);
        return can;
    }

    private void seat() {
        var free = day.chairs()
                - (int) all(course -> course.seated != Sight.NOBODY && course.water == Sight.NOBODY)
                        .count();
        all(course -> course.head.arrives() <= now && course.seated == Sight.NOBODY)
                .limit(free)
                .forEach(course -> {
                    course.seated = now;
                    happened(What.SEATED, course);
                });
    }

    private void mix() {
        var free = day.stylists()
                - (int) all(course -> course.mixes != Sight.NOBODY && now < course.stylistFree())
                        .count();
        for (var course : all(one -> one.seated != Sight.NOBODY && one.mixes == Sight.NOBODY)
                .toList()) {
            if (free > 0 && way.mayMix(sight(), course.head, now - course.seated)) {
                free--;
                course.mixes = now;
                happened(What.MIXES, course);
            }
        }
    }
}
