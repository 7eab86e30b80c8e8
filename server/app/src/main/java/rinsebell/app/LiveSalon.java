package rinsebell.app;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.UUID;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.eclipse.jetty.server.Request;
import org.jspecify.annotations.Nullable;
import rinsebell.app.access.Entrance;
import rinsebell.app.api.ClientReads;
import rinsebell.app.api.DescriptionRoutes;
import rinsebell.app.api.LeadReads;
import rinsebell.app.api.ReadRoutes;
import rinsebell.app.api.RecipeRoutes;
import rinsebell.app.api.TrailReads;
import rinsebell.app.api.UseReads;
import rinsebell.app.asset.AssetRoutes;
import rinsebell.app.desk.BellWatch;
import rinsebell.app.desk.FloorDesk;
import rinsebell.app.desk.PlanWatch;
import rinsebell.app.desk.Press;
import rinsebell.app.desk.PressMemory;
import rinsebell.app.desk.Snapshot;
import rinsebell.app.door.Routes;
import rinsebell.app.feed.Feed;
import rinsebell.app.feed.FeedLimits;
import rinsebell.app.feed.FeedRoutes;
import rinsebell.app.lead.Days;
import rinsebell.app.lead.LeadRoutes;
import rinsebell.app.listen.ListenRoutes;
import rinsebell.app.listen.Listeners;
import rinsebell.app.listen.Seldom;
import rinsebell.app.listen.SoundLog;
import rinsebell.app.listen.SoundedRoutes;
import rinsebell.app.lookin.LookInRoutes;
import rinsebell.app.lookin.LookRoutes;
import rinsebell.app.page.Answers;
import rinsebell.app.page.Erasings;
import rinsebell.app.page.FormRoutes;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.page.PageRoutes;
import rinsebell.app.page.TimeRoutes;
import rinsebell.app.page.Who;
import rinsebell.app.press.ApiPresses;
import rinsebell.app.press.ClientRoutes;
import rinsebell.app.press.ClockRoutes;
import rinsebell.app.press.ErasingRoutes;
import rinsebell.app.press.PressRoutes;
import rinsebell.app.press.Pressing;
import rinsebell.app.privacy.DailyRetention;
import rinsebell.app.privacy.Erasing;
import rinsebell.app.privacy.EverythingRoutes;
import rinsebell.app.privacy.PrivacyRoutes;
import rinsebell.app.time.AliveMarker;
import rinsebell.app.time.ClockProof;
import rinsebell.app.time.MachineTime;
import rinsebell.app.time.SalonClock;
import rinsebell.app.trail.Noting;
import rinsebell.app.trail.TrailDays;
import rinsebell.app.trail.TrailRoutes;
import rinsebell.app.trust.WayIn;
import rinsebell.app.use.UseDays;
import rinsebell.app.use.UseRoutes;
import rinsebell.db.Clients;
import rinsebell.db.Compactions;
import rinsebell.db.Keyring;
import rinsebell.db.LookIns;
import rinsebell.db.Pressed;
import rinsebell.db.Rebuild;
import rinsebell.db.Retention;
import rinsebell.db.Trail;
import rinsebell.floor.Asked;
import rinsebell.floor.Fact;
import rinsebell.floor.Ledger;
import rinsebell.floor.TextId;
import rinsebell.floor.command.Announce;
import rinsebell.planner.BasinPlanner;
import rinsebell.planner.Budget;
import rinsebell.web.board.Moment;
import rinsebell.web.board.ReasonTelling;

/** One floor and everything that lives on it: the desk, the bell watch, the feed, and the routes that lead there. */
final class LiveSalon implements AutoCloseable {

    /** What devices say of themselves may change often; nobody needs to see it sooner. */
    private static final Duration LISTENERS_SHOWN = Duration.ofSeconds(1);

    private final Listeners listeners = new Listeners(new MachineTime());
    private final Seldom listenersShown;
    private final LiveFloor live;
    private final Feed feed;
    private final FeedRoutes feedRoutes;
    private final BellWatch watch;
    private final PlanWatch plans;
    private final FloorDesk desk;
    private final SoundLog sounds;
    private final Pressing pressing;
    private final Erasings erasings;
    private final Noting noting;
    private final Erasing erasing;
    private final DailyRetention retention;
    private final Entrance entrance;
    private final List<Routes> routes;

    /**
     * What was kept of the salon until now.
     *
     * @param loaded the floor as it was told so far
     * @param ledger where the next presses are made durable
     * @param memory of presses that were answered
     * @param clients people who come again
     * @param lookIns links by which a phone or a calendar looks in
     * @param retention what is past its time
     * @param compactions of the database's file
     * @param keyring the devices that are in, and PINs
     * @param trail who looked at what is private
     * @param pressed what was recorded in a stretch of time, whose end is not counted in
     * @param days that are over
     * @param rebuilt how the tables were made again the last time; null for never
     * @param copiesFailingSince since when no copy of the tables could be made
     */
    record Kept(
            Snapshot loaded,
            Ledger ledger,
            PressMemory memory,
            Clients clients,
            LookIns lookIns,
            Retention retention,
            Compactions compactions,
            Keyring keyring,
            Trail trail,
            BiFunction<Instant, Instant, List<Pressed>> pressed,
            Days.Kept days,
            @Nullable Rebuild rebuilt,
            Supplier<Optional<Instant>> copiesFailingSince) {}

    /**
     * When this returns every bell has been evaluated, and those that are due ring.
     *
     * @param wayIn how other devices reach the server, once it listens; empty where they can't
     */
    LiveSalon(Kept kept, SalonClock clock, LiveFloor.Paper paper, AliveMarker marker, Supplier<Optional<WayIn>> wayIn) {
        erasings = new Erasings(kept.clients().erasings());
        live = new LiveFloor(kept.loaded(), clock, paper, listeners::all, erasings::number);
        feed = new Feed(live, FeedLimits.usual());
        feedRoutes = new FeedRoutes(feed, live);
        listenersShown = new Seldom(this::ring, LISTENERS_SHOWN, new MachineTime());
        watch = new BellWatch(() -> live.snapshot().bells(), clock, new BellWatch.Word() {
            @Override
            public void due() {
                ring();
            }

            @Override
            public void soon(Instant due) {
                feed.ahead(due);
            }
        });
        desk = new FloorDesk(
                kept.loaded(),
                new FloorDesk.Tools(
                        kept.ledger(),
                        kept.memory(),
                        (reason, floor, texts) -> ReasonTelling.say(
                                reason,
                                new Moment(
                                        floor,
                                        id -> texts.getOrDefault(id, ""),
                                        List.of(),
                                        clock.now(),
                                        paper.words())),
                        facts -> followClock(facts, clock, marker, feed),
                        this::show,
                        LiveSalon::stopAtOnce));
        plans = new PlanWatch(
                () -> live.snapshot().floor(),
                clock::now,
                new BasinPlanner(Budget.QUICK, new MachineTime()::monotonicNanos),
                told -> announce(told, clock));
        plans.moved();
        pressing = new Pressing(desk, clock, kept.clients());
        erasing = new Erasing(kept.clients(), () -> desk.snapshot().floor(), this::forget);
        retention = new DailyRetention(
                kept.retention(), erasing, this::forget, () -> desk.snapshot().floor(), clock);
        sounds = new SoundLog(kept.days().soundings()::add, clock::now);
        sounds.begin();
        noting = new Noting(
                kept.trail(),
                clock::now,
                ctx -> Who.of(ctx, live.snapshot().floor().salon()));
        entrance = new Entrance(
                kept.keyring(),
                live,
                noting,
                new Entrance.Outside(new MachineTime()::monotonicNanos, feedRoutes::throwOut, wayIn));
        routes = routes(clock, paper, kept);
    }

    private List<Routes> routes(SalonClock clock, LiveFloor.Paper paper, Kept kept) {
        Clients clients = kept.clients();
        Answers answers = new Answers(kept.rebuilt(), kept.copiesFailingSince());
        FormRoutes forms = new FormRoutes(live, answers, clients);
        ApiPresses programs = new ApiPresses(pressing, live);
        PressRoutes presses = new PressRoutes(pressing, live, answers, forms);
        Days days = new Days(live::snapshot, clock, kept.days());
        TrailDays trail = new TrailDays(live, days, kept.pressed(), kept.trail(), kept.keyring());
        UseDays use = new UseDays(days, () -> live.snapshot().floor().salon());
        List<Routes> rooms = List.of(
                noting,
                erasings,
                new AssetRoutes(paper.assets()),
                feedRoutes,
                new PageRoutes(live, answers),
                new LeadRoutes(live, days),
                new LeadReads(live, days),
                new UseRoutes(live, use),
                new UseReads(live, use),
                new TrailRoutes(live, trail),
                new TrailReads(live, trail),
                new LookInRoutes(live, kept.lookIns()),
                new LookRoutes(live, kept.lookIns()),
                new TimeRoutes(clock),
                new ListenRoutes(listeners, listenersShown::ask),
                new SoundedRoutes(sounds::take, clock::now),
                forms,
                new ClockRoutes(pressing, programs),
                presses,
                new ClientRoutes(clients, live, presses, programs),
                new ErasingRoutes(erasing, clock::now, programs),
                programs,
                new ReadRoutes(live, kept.rebuilt()),
                new RecipeRoutes(live),
                new ClientReads(clients, live),
                new PrivacyRoutes(live, kept.retention(), kept.compactions()),
                new EverythingRoutes(live, clients),
                new DescriptionRoutes());
        return Stream.of(entrance.routes(), rooms).flatMap(List::stream).toList();
    }

    /** The clock moves in the same breath as the facts do, so that no countdown jumps, after a restart neither. */
    private static void followClock(List<Fact> facts, SalonClock clock, AliveMarker marker, Feed feed) {
        SortedMap<Long, Duration> steps = ClockProof.steps(facts);
        steps.forEach((fact, step) -> clock.confirm(step, fact));
        if (!steps.isEmpty()) {
            feed.beatAtOnce();
            marker.writeForCertain(clock.mark());
        }
    }

    /** Whoever does not listen any more is told of by then, too. */
    private void ring() {
        listeners.forgetGone();
        live.fellDue();
        feed.publish();
    }

    /** A press like any other, but nobody waits for its answer. Its id has a space, which no other has. */
    private void announce(Announce told, SalonClock clock) {
        var id = "turns for " + told.floor() + " " + UUID.randomUUID();
        var unused = desk.press(new Press(id, "", id, told, Asked.at(clock.now())));
    }

    /** Devices that are there hear at once that what they kept may show it. */
    private void forget(Set<TextId> texts) {
        desk.forget(texts);
        erasings.more();
        feed.beatAtOnce();
    }

    private void show(Snapshot next) {
        live.show(next);
        feed.publish();
        watch.moved();
        plans.moved();
    }

    /** Nobody knows what is on disk, so nothing more may be said: not even what an orderly stop would still send. */
    private static void stopAtOnce() {
        Runtime.getRuntime().halt(3);
    }

    /** Erases from now on what is past its time. */
    void beginRetention() {
        retention.begin();
    }

    /** Whether nobody has anything on. */
    boolean isQuiet() {
        return desk.snapshot().floor().openVisits().stream()
                .allMatch(visit -> visit.onHair().isEmpty());
    }

    FloorDesk desk() {
        return desk;
    }

    Pressing pressing() {
        return pressing;
    }

    /** A code for the first device of a computer without a screen. */
    Optional<String> firstCode() {
        return entrance.firstCode();
    }

    List<Routes> routes() {
        return routes;
    }

    /** Whether a request comes from a device that is in. */
    Predicate<Request> known() {
        return entrance.known();
    }

    /** Ends every stream; requests must have ended before. */
    void endStreams() {
        feed.close();
    }

    @Override
    public void close() {
        retention.close();
        listenersShown.close();
        watch.close();
        plans.close();
        desk.close();
        sounds.close();
    }
}
