package rinsebell.floor.report;

import static rinsebell.floor.testing.Saturday.at;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bell.Ear;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.command.Acknowledge;
import rinsebell.floor.command.Mix;
import rinsebell.floor.command.Report;
import rinsebell.floor.command.Rinse;
import rinsebell.floor.command.Weighed;
import rinsebell.floor.command.Welcome;
import rinsebell.floor.product.Zone;
import rinsebell.floor.report.SaturdayClient.Job;
import rinsebell.floor.report.SaturdayClient.Stage;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.testing.Desk;
import rinsebell.floor.testing.Gates;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitEvent;
import rinsebell.floor.visit.VisitId;
import rinsebell.floor.visit.WorkEvent;

/**
 * A full Saturday of eight chairs, three stylists, two assistants and a desk, in which people do one thing at a time and
 * answer bells as people do: a glance at the screen each minute or so between two foils, a bell within seconds when a hand
 * is free, prompts that are now and then overlooked. Every press is decided by the floor. The same seed gives the same day.
 */
final class OrdinarySaturday {
    private static final Duration STEP = Duration.ofSeconds(5);
    private static final Duration CLIENTS_APART = Duration.ofMinutes(47);
    private static final Instant LAST_ARRIVAL = at("16:15");
    private static final Instant CLOSED = at("20:30");

    private final Random dice;
    private final Desk desk;
    private final List<SaturdayStaff> staff = new ArrayList<>();
    private final Map<StaffId, Instant> nextArrival = new HashMap<>();
    private final List<SaturdayClient> clients = new ArrayList<>();
    private final Set<SaturdayClient> attended = new HashSet<>();
    private Floor rung = Floor.EMPTY;
    private List<Bell> bells = List.of();

    private OrdinarySaturday(long seed) {
        dice = new Random(seed);
        var story = Story.stocked().at("08:30");
        enter(story, story.stylist(), Role.STYLIST);
        Stream.of(Role.STYLIST, Role.STYLIST, Role.ASSISTANT, Role.ASSISTANT, Role.DESK)
                .forEach(role -> enter(
                        story,
                        new StaffId(story.tells(rinsebell.floor.Stream.SALON, new SalonEvent.StaffEntered(role))),
                        role));
        desk = Desk.after(story).at("09:00");
    }

    private void enter(Story story, StaffId id, Role role) {
        staff.add(new SaturdayStaff(id, role));
        if (role == Role.STYLIST) {
            nextArrival.put(id, at("09:00").plus(seconds(0, 1500)));
        }
    }

    /** Every fact of the day that this seed gives. */
    static List<Fact> lived(long seed) {
        var day = new OrdinarySaturday(seed);
        for (var now = at("09:00"); now.isBefore(CLOSED); now = now.plus(STEP)) {
            day.step(now);
        }
        return day.desk.floor().facts();
    }

    private void step(Instant now) {
        desk.at(now);
        for (var person : staff) {
            if (person.isFree(now)) {
                next(person, now);
            }
        }
    }

    private void next(SaturdayStaff person, Instant now) {
        if (answers(person, now) || (person.role == Role.ASSISTANT && fetches(person, now))) {
            return;
        }
        if (person.role == Role.STYLIST) {
            if (!welcomes(person, now)) {
                worksOn(person, now);
            }
        }
    }

    private Duration seconds(int least, int most) {
        return Duration.ofSeconds(least + dice.nextInt(most - least));
    }

    private boolean oftenEnough(double chance) {
        return dice.nextDouble() < chance;
    }

    // Bells and prompts.

    private List<Bell> bells() {
        if (rung != desk.floor()) {
            rung = desk.floor();
            bells = rung.bells();
        }
        return bells;
    }

    private boolean answers(SaturdayStaff person, Instant now) {
        return bells().stream()
                .filter(bell -> bell.ring(now).isPresent() && isForHands(bell, person, now))
                .max(Comparator.comparing((Bell bell) -> bell.isRinging(now))
                        .thenComparing(bell -> bell.at(now).orElseThrow().priority()))
                .filter(bell -> bell.isRinging(now) || oftenEnough(0.75))
                .map(bell -> answer(bell, person, now))
                .orElse(false);
    }

    /** It rings for them, or is a silent prompt about a client of theirs; and nobody sees to it already. */
    private boolean isForHands(Bell bell, SaturdayStaff person, Instant now) {
        var client = client(bell);
        if (client.isEmpty() || attended.contains(client.get())) {
            return false;
        }
        if (bell.isRinging(now)) {
            return bell.ring(now).orElseThrow().reach().reaches(new Ear.Of(person.id))
                    && (bell.kind() != BellKind.RINSE || person.role != Role.STYLIST || isLong(bell, now));
        }
        return bell.at(now).orElseThrow().priority() == Priority.SILENT
                && bell.kind() != BellKind.RINSE
                && person.id.equals(visit(client.get()).stay().stylist());
    }

    /** Rinses are the assistants' work, until nobody comes. */
    private static boolean isLong(Bell bell, Instant now) {
        return !bell.ring(now).orElseThrow().from().plusSeconds(45).isAfter(now);
    }

    private boolean answer(Bell bell, SaturdayStaff person, Instant now) {
        var client = client(bell).orElseThrow();
        return switch (bell.kind()) {
            case STRAND_CHECK, READY -> looks(person, client, now);
            case SCALP_CHECK, TINGLING, SCALP_AFTER_RINSE -> looksAtScalp(person, client, now);
            case RINSE -> rinses(person, client, now) || hears(bell, person, now);
            case BOWL_WAITING -> false;
            default -> hears(bell, person, now);
        };
    }

    private boolean hears(Bell bell, SaturdayStaff person, Instant now) {
        if (bell.isRinging(now)) {
            person.does(now, seconds(5, 15), () -> {
                if (bells().stream().anyMatch(one -> one.key().equals(bell.key()) && one.isRinging(desk.now()))) {
                    press(new Acknowledge(bell.key(), null), person);
                }
            });
        }
        return bell.isRinging(now);
    }

    private boolean looks(SaturdayStaff person, SaturdayClient client, Instant now) {
        attend(person, client, now, seconds(40, 80), () -> {
            for (var one : visit(client).live()) {
                var done = !one.firstOn().plus(client.job.done).isAfter(desk.now());
                report(
                        client,
                        person,
                        new LookEvent.StrandChecked(
                                one.id(), StrandFinding.NOTHING_SAID, done ? CheckDecision.RINSE : null));
            }
        });
        return true;
    }

    private boolean looksAtScalp(SaturdayStaff person, SaturdayClient client, Instant now) {
        attend(
                person,
                client,
                now,
                seconds(25, 50),
                () -> report(client, person, new LookEvent.ScalpChecked(ScalpCheck.Finding.FINE, null)));
        return true;
    }

    private void attend(SaturdayStaff person, SaturdayClient client, Instant now, Duration time, Runnable press) {
        attended.add(client);
        person.does(now, time, () -> {
            attended.remove(client);
            press.run();
        });
    }

    // The basins.

    /** The basin screen says whom to rinse next: most are fetched before it rings. */
    private boolean fetches(SaturdayStaff person, Instant now) {
        return clients.stream()
                .filter(client -> client.stage == Stage.DEVELOPING && !attended.contains(client))
                .filter(client -> isSoon(client, now))
                .findFirst()
                .filter(client -> oftenEnough(0.3))
                .map(client -> rinses(person, client, now))
                .orElse(false);
    }

    private boolean isSoon(SaturdayClient client, Instant now) {
        return HeadTiming.of(desk.floor(), visit(client))
                .startBy(desk.floor())
                .filter(start -> start.minus(Duration.ofSeconds(90)).isBefore(now))
                .isPresent();
    }

    private boolean rinses(SaturdayStaff person, SaturdayClient client, Instant now) {
        var basin = Stream.of(1, 2).filter(this::isFree).findFirst();
        if (basin.isEmpty() || visit(client).onHair().isEmpty()) {
            return false;
        }
        var foils = client.job == Job.FOILS;
        report(client, person, new StayEvent.Moved(Place.basin(basin.get())));
        attend(person, client, now, foils ? seconds(170, 280) : seconds(35, 60), () -> waterOn(person, client));
        return true;
    }

    private boolean isFree(int basin) {
        return desk.floor().at(Place.basin(basin)).isEmpty();
    }

    private void waterOn(SaturdayStaff person, SaturdayClient client) {
        var on = new HashSet<>(
                visit(client).onHair().stream().map(Application::id).toList());
        press(new Rinse(client.visit, on, null, null), person);
        client.stage = Stage.RINSED;
        attend(person, client, desk.now(), seconds(300, 420), () -> {
            if (client.job.zone == Zone.ON_SCALP) {
                report(client, person, new LookEvent.ScalpChecked(ScalpCheck.Finding.FINE, null));
            }
            var chair = freeChair();
            report(client, person, new StayEvent.Moved(chair.orElse(Place.BENCH)));
        });
    }

    // What stylists do of their own accord.

    private boolean welcomes(SaturdayStaff person, Instant now) {
        var due = Objects.requireNonNull(nextArrival.get(person.id));
        var chair = freeChair();
        if (now.isBefore(due) || now.isAfter(LAST_ARRIVAL) || chair.isEmpty()) {
            return false;
        }
        nextArrival.put(person.id, now.plus(CLIENTS_APART).plus(seconds(-300, 300)));
        person.does(now, seconds(120, 300), () -> welcome(person));
        return true;
    }

    private void welcome(SaturdayStaff person) {
        var chair = freeChair();
        if (chair.isPresent()) {
            var arrival = new StayEvent.Arrived(chair.get(), person.id, null, null);
            var visit = new VisitId(desk.last() + 1);
            press(new Welcome(arrival, "guest", Gates.FINE), person);
            var jobs = List.of(Job.ROOTS, Job.FOILS, Job.FOILS, Job.LIGHTER_ROOTS);
            clients.add(new SaturdayClient(visit, jobs.get(dice.nextInt(jobs.size()))));
        }
    }

    private Optional<Place> freeChair() {
        return IntStream.rangeClosed(1, 8)
                .mapToObj(Place::chair)
                .map(Place.class::cast)
                .filter(chair -> desk.floor().openVisits().stream()
                        .noneMatch(visit -> chair.equals(visit.place())
                                || (chair.equals(visit.stay().chair()) && visit.place() instanceof Place.Basin)))
                .findFirst();
    }

    /** A bowl that is mixed comes first, then what has been begun, then the next thing. */
    private void worksOn(SaturdayStaff person, Instant now) {
        clients.stream()
                .filter(client -> person.id.equals(visit(client).stay().stylist()) && !attended.contains(client))
                .filter(client -> client.stage != Stage.DEVELOPING && client.stage != Stage.GONE)
                .filter(client -> !(visit(client).place() instanceof Place.Basin))
                .min(Comparator.comparingInt(
                        client -> List.of(Stage.APPLYING, Stage.MIXED, Stage.RINSED, Stage.SEATED, Stage.STYLING)
                                .indexOf(client.stage)))
                .ifPresent(client -> workOn(client, person, now));
    }

    private void workOn(SaturdayClient client, SaturdayStaff person, Instant now) {
        switch (client.stage) {
            case SEATED -> attend(person, client, now, seconds(150, 240), () -> mix(client, person));
            case MIXED -> attend(person, client, now, seconds(20, 60), () -> putOn(client, person));
            case APPLYING -> goesOn(client, person, now, () -> lastOn(client, person));
            case RINSED -> afterRinse(client);
            default -> goesOn(client, person, now, () -> leave(client, person));
        }
    }

    /** In pieces of a minute or so, since people look up in between. */
    private void goesOn(SaturdayClient client, SaturdayStaff person, Instant now, Runnable last) {
        var piece = seconds(45, 90);
        attend(person, client, now, piece, () -> {
            client.left = client.left.minus(piece);
            if (client.left.isNegative()) {
                last.run();
            }
        });
    }

    private void mix(SaturdayClient client, SaturdayStaff person) {
        client.bowl = new BowlId(desk.last() + 1);
        var weighed = client.job.recipe.stream()
                .map(scoop -> new Weighed(
                        desk.floor().salon().products().stream()
                                .filter(product -> product.directions().equals(scoop.of()))
                                .findFirst()
                                .orElseThrow()
                                .id(),
                        scoop.grams()))
                .toList();
        press(new Mix(weighed, client.job == Job.TONER ? BowlReason.TONE : BowlReason.FIRST, client.visit), person);
        client.stage = Stage.MIXED;
    }

    private void putOn(SaturdayClient client, SaturdayStaff person) {
        var job = client.job;
        client.on = new ApplicationId(desk.last() + 1);
        report(
                client,
                person,
                new WorkEvent.PutOn(Objects.requireNonNull(client.bowl), job.area, job.zone, job.cover, null));
        client.left = job.applying.minus(seconds(60, 180));
        client.stage = Stage.APPLYING;
    }

    private void lastOn(SaturdayClient client, SaturdayStaff person) {
        report(client, person, new WorkEvent.LastOn(Objects.requireNonNull(client.on)));
        client.stage = Stage.DEVELOPING;
        if (client.job == Job.LIGHTER_ROOTS && oftenEnough(0.1)) {
            report(client, person, new LookEvent.Complained(Complaint.Grade.TINGLING));
        }
    }

    private void afterRinse(SaturdayClient client) {
        if (client.job.isToned()) {
            client.job = Job.TONER;
            client.stage = Stage.SEATED;
        } else {
            client.left = Duration.ofMinutes(20);
            client.stage = Stage.STYLING;
        }
    }

    private void leave(SaturdayClient client, SaturdayStaff person) {
        report(client, person, new StayEvent.Left());
        client.stage = Stage.GONE;
    }

    private Visit visit(SaturdayClient client) {
        return desk.floor().visit(client.visit).orElseThrow();
    }

    private Optional<SaturdayClient> client(Bell bell) {
        return clients.stream()
                .filter(client -> client.visit.equals(bell.visit()))
                .findFirst();
    }

    private void report(SaturdayClient client, SaturdayStaff person, VisitEvent event) {
        press(Report.of(client.visit, event), person);
    }

    private void press(Command command, SaturdayStaff person) {
        var decision = desk.presses(command, Asked.at(desk.now()).by(person.id));
        if (decision instanceof Decision.Refused refused) {
            throw new AssertionError("an ordinary day has no refusal: " + desk.now() + " " + command + " " + refused);
        }
    }
}
