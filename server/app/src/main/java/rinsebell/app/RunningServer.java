package rinsebell.app;

import java.io.IOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.app.asset.AssetRoutes;
import rinsebell.app.copy.Compacting;
import rinsebell.app.copy.HourlyCopies;
import rinsebell.app.desk.Caretaker;
import rinsebell.app.desk.PressMemory;
import rinsebell.app.desk.Snapshot;
import rinsebell.app.door.CertificateUnfit;
import rinsebell.app.door.Door;
import rinsebell.app.door.HostNames;
import rinsebell.app.door.ProblemText;
import rinsebell.app.door.Routes;
import rinsebell.app.door.WebServer;
import rinsebell.app.lead.Days;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.time.AliveMarker;
import rinsebell.app.time.ClockMark;
import rinsebell.app.time.ClockProof;
import rinsebell.app.time.MachineTime;
import rinsebell.app.time.SalonClock;
import rinsebell.app.trust.SecureDoor;
import rinsebell.app.trust.TrustRoutes;
import rinsebell.app.trust.WayIn;
import rinsebell.db.Rebuild;
import rinsebell.db.SalonStore;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.TextId;
import rinsebell.web.Assets;
import rinsebell.web.Pages;
import rinsebell.web.Screen;
import rinsebell.web.TimeStyle;
import rinsebell.web.Words;
import rinsebell.web.board.TrustTelling;
import rinsebell.web.view.ProblemPage;

/** One server with everything in it, from an opened data folder to a closed one. */
public final class RunningServer implements AutoCloseable {

    private final OpenStore kept;
    private final LiveSalon salon;
    private final Caretaker caretaker;
    private final HourlyCopies copies;
    private final WebServer web;
    private final @Nullable SecureDoor secure;
    private final String url;
    private int port;
    private int securePort;

    private RunningServer(OpenStore kept, Settings settings, int speed) throws CannotStart {
        this.kept = kept;
        MachineTime machine = new MachineTime();
        this.secure = secure(settings, machine);
        this.copies = new HourlyCopies(
                kept.store().copies(), new Compacting(kept.store().compactions(), this::isQuiet), machine);
        LiveSalon.Kept loaded = kept(kept, copies);
        AliveMarker marker = new AliveMarker(kept.folder().path());
        Optional<ClockMark> mark =
                marker.last(ClockProof.of(loaded.loaded().floor(), Instant.ofEpochMilli(machine.wallMillis())));
        SalonClock clock = clock(mark, machine, speed);
        LiveFloor.Paper paper = new LiveFloor.Paper(new Pages(), Words.british(), Assets.under(AssetRoutes.PREFIX));
        this.salon = new LiveSalon(loaded, clock, paper, marker, this::wayIn);
        this.caretaker = new Caretaker(salon.desk(), clock, marker, salon.pressing()::whileClockStands);
        caretaker.begin(mark.map(ClockMark::salon).orElse(clock.now()));
        this.web = new WebServer(
                new Door(hostNames(settings), problemText(paper), salon.known(), settings.isBehindProxy()),
                routes(paper));
        listen(settings);
        this.url = "http://" + settings.shownHost() + ":" + port;
        copies.begin();
        salon.beginRetention();
    }

    private boolean isQuiet() {
        return salon.isQuiet();
    }

    private HostNames hostNames(Settings settings) {
        return secure == null || !settings.reachesNetwork()
                ? HostNames.loopbackAnd(settings.names())
                : HostNames.loopbackAnd(secure::callable);
    }

    private List<Routes> routes(LiveFloor.Paper paper) {
        List<Routes> all = new ArrayList<>(salon.routes());
        if (secure != null) {
            all.add(new TrustRoutes(
                    () -> secure.wayIn(port, securePort),
                    secure.authority(),
                    new TrustTelling(paper.words()),
                    view -> paper.pages().render(view, ofNoSalon(paper))));
        }
        return all;
    }

    /**
     * Starts a server; when this returns, it answers, and every bell that is due rings.
     *
     * @param speed salon seconds in a real one: 1, but for a demo
     * @throws CannotStart with a reason that a person can mend
     */
    public static RunningServer start(Settings settings, int speed) throws CannotStart {
        OpenStore kept = OpenStore.in(settings.data(), new MachineTime().wallMillis());
        try {
            return new RunningServer(kept, settings, speed);
        } catch (CannotStart | RuntimeException e) {
            kept.close();
            throw e;
        }
    }

    private static @Nullable SecureDoor secure(Settings settings, MachineTime time) throws CannotStart {
        try {
            return settings.secureDoor(time).orElse(null);
        } catch (CertificateUnfit e) {
            throw new CannotStart(String.valueOf(e.getMessage()));
        }
    }

    private static SalonClock clock(Optional<ClockMark> mark, MachineTime machine, int speed) {
        return mark.map(last -> SalonClock.goingOnFrom(last, machine, speed))
                .orElseGet(() -> SalonClock.startingAtTheWall(machine, speed));
    }

    private static LiveSalon.Kept kept(OpenStore kept, HourlyCopies copies) {
        SalonStore store = kept.store();
        Floor floor = Floor.of(store.load()).numberedFrom(store.lastSeq());
        Map<TextId, String> texts = store.texts(
                floor.facts().stream().map(Fact::seq).map(TextId::new).toList());
        PressMemory memory = new PressMemory(
                id -> store.press(id).map(press -> new PressMemory.Stored(press.payloadHash(), press.outcome())));
        return new LiveSalon.Kept(
                Snapshot.of(floor, texts),
                store,
                memory,
                store.clients(),
                store.lookIns(),
                store.retention(),
                store.compactions(),
                kept.keyring(),
                store.trail(),
                store::pressed,
                new Days.Kept(store::facts, store::facts, store::texts, store.soundings()),
                store.lastRebuild().orElse(null),
                copies::failingSince);
    }

    /** How the database was made again the last time. */
    Optional<Rebuild> rebuilt() {
        return kept.store().lastRebuild();
    }

    private static ProblemText problemText(LiveFloor.Paper paper) {
        return new ProblemText(
                paper.words(),
                (title, detail) -> paper.pages().render(new ProblemPage(title, detail), ofNoSalon(paper)));
    }

    /** A page that shows no time needs neither the salon's clock nor its zone. */
    private static Screen ofNoSalon(LiveFloor.Paper paper) {
        TimeStyle style = new TimeStyle(ZoneOffset.UTC, false);
        return new Screen(paper.words(), paper.assets(), style, Instant.EPOCH, "", null);
    }

    private void listen(Settings settings) throws CannotStart {
        try {
            port = web.listen(settings.bindAddress(), settings.port());
        } catch (IOException e) {
            throw taken(settings.port(), "--port");
        }
        if (secure != null) {
            try {
                securePort = web.listenSecurely(settings.bindAddress(), settings.securePort(), secure.shown());
            } catch (IOException e) {
                web.close();
                throw taken(settings.securePort(), "--secure-port");
            }
            secure.begin();
        }
    }

    private CannotStart taken(int port, String option) {
        closeSalon();
        return new CannotStart("Port " + port + " is taken by another program or may not be used. "
                + "Stop that program, or choose another port with " + option + ".");
    }

    /** A code for the first device of a computer without a screen; empty where somebody is in charge already. */
    Optional<String> firstCode() {
        return salon.firstCode();
    }

    /** Where a browser on this machine finds it. */
    public String url() {
        return url;
    }

    /** How other devices come in over HTTPS; empty where they can't. */
    Optional<WayIn> wayIn() {
        return Optional.ofNullable(secure).map(door -> door.wayIn(port, securePort));
    }

    /** Lets requests in flight finish, then closes everything. */
    @Override
    public void close() {
        salon.endStreams();
        web.close();
        closeSalon();
        kept.close();
    }

    private void closeSalon() {
        if (secure != null) {
            secure.close();
        }
        copies.close();
        caretaker.close();
        salon.close();
    }
}
