package rinsebell.app;

import java.io.IOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.app.asset.AssetRoutes;
import rinsebell.app.copy.HourlyCopies;
import rinsebell.app.desk.Caretaker;
import rinsebell.app.desk.PressMemory;
import rinsebell.app.desk.Snapshot;
import rinsebell.app.door.Certificate;
import rinsebell.app.door.CertificateUnfit;
import rinsebell.app.door.Door;
import rinsebell.app.door.HostNames;
import rinsebell.app.door.ProblemText;
import rinsebell.app.door.WebServer;
import rinsebell.app.lead.Days;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.time.AliveMarker;
import rinsebell.app.time.ClockMark;
import rinsebell.app.time.ClockProof;
import rinsebell.app.time.MachineTime;
import rinsebell.app.time.SalonClock;
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
import rinsebell.web.view.ProblemPage;

/** One server with everything in it, from an opened data folder to a closed one. */
public final class RunningServer implements AutoCloseable {

    private final OpenStore kept;
    private final LiveSalon salon;
    private final Caretaker caretaker;
    private final HourlyCopies copies;
    private final WebServer web;
    private final String url;

    private RunningServer(OpenStore kept, Settings settings, int speed, @Nullable Certificate certificate)
            throws CannotStart {
        this.kept = kept;
        MachineTime machine = new MachineTime();
        this.copies = new HourlyCopies(kept.store().copies(), machine);
        LiveSalon.Kept loaded = kept(kept, copies);
        AliveMarker marker = new AliveMarker(kept.folder().path());
        Optional<ClockMark> mark =
                marker.last(ClockProof.of(loaded.loaded().floor(), Instant.ofEpochMilli(machine.wallMillis())));
        SalonClock clock = clock(mark, machine, speed);
        LiveFloor.Paper paper = new LiveFloor.Paper(new Pages(), Words.british(), Assets.under(AssetRoutes.PREFIX));
        this.salon = new LiveSalon(loaded, clock, paper, marker);
        this.caretaker = new Caretaker(salon.desk(), clock, marker, salon.pressing()::whileClockStands);
        caretaker.begin(mark.map(ClockMark::salon).orElse(clock.now()));
        this.web = new WebServer(
                new Door(HostNames.loopbackAnd(settings.names()), problemText(paper)), salon.routes(), certificate);
        this.url = (certificate == null ? "http://" : "https://") + settings.shownHost() + ":" + listen(settings);
        copies.begin();
    }

    /**
     * Starts a server; when this returns, it answers, and every bell that is due rings.
     *
     * @param speed salon seconds in a real one: 1, but for a demo
     * @throws CannotStart with a reason that a person can mend
     */
    public static RunningServer start(Settings settings, int speed) throws CannotStart {
        long now = new MachineTime().wallMillis();
        Optional<Certificate> certificate = certificate(settings, now);
        OpenStore kept = OpenStore.in(settings.data(), now);
        try {
            return new RunningServer(kept, settings, speed, certificate.orElse(null));
        } catch (CannotStart | RuntimeException e) {
            kept.close();
            throw e;
        }
    }

    private static Optional<Certificate> certificate(Settings settings, long wallMillis) throws CannotStart {
        try {
            return settings.certificate(Instant.ofEpochMilli(wallMillis));
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
                kept.keyring(),
                new Days.Kept(store::facts, store::facts, store::texts, store.soundings()),
                store.lastRebuild().orElse(null),
                copies::failingSince);
    }

    /** How the database was made again the last time. */
    Optional<Rebuild> rebuilt() {
        return kept.store().lastRebuild();
    }

    private static ProblemText problemText(LiveFloor.Paper paper) {
        // A page about a problem shows no time, so it needs neither the salon's clock nor its zone.
        TimeStyle style = new TimeStyle(ZoneOffset.UTC, false);
        Screen screen = new Screen(paper.words(), paper.assets(), style, Instant.EPOCH, "", null);
        return new ProblemText(
                paper.words(), (title, detail) -> paper.pages().render(new ProblemPage(title, detail), screen));
    }

    private int listen(Settings settings) throws CannotStart {
        try {
            return web.listen(settings.bindAddress(), settings.port());
        } catch (IOException e) {
            closeSalon();
            throw new CannotStart("Port " + settings.port() + " is taken by another program or may not be used. "
                    + "Stop that program, or choose another port with --port.");
        }
    }

    /** A code for the first device of a computer without a screen; empty where somebody is in charge already. */
    Optional<String> firstCode() {
        return salon.firstCode();
    }

    /** Where a browser on this machine finds it. */
    public String url() {
        return url;
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
        copies.close();
        caretaker.close();
        salon.close();
    }
}
