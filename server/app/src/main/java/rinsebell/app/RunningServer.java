package rinsebell.app;

import java.io.IOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import rinsebell.app.asset.AssetRoutes;
import rinsebell.app.door.Door;
import rinsebell.app.door.HostNames;
import rinsebell.app.door.ProblemText;
import rinsebell.app.door.WebServer;
import rinsebell.web.Assets;
import rinsebell.web.Pages;
import rinsebell.web.Screen;
import rinsebell.web.TimeStyle;
import rinsebell.web.Words;
import rinsebell.web.view.ProblemPage;

/** One server with everything in it, from an open port to a closed one. */
public final class RunningServer implements AutoCloseable {

    private final DataFolder folder;
    private final WebServer web;
    private final String url;

    private RunningServer(DataFolder folder, WebServer web, String url) {
        this.folder = folder;
        this.web = web;
        this.url = url;
    }

    /**
     * Starts a server; when this returns, it answers.
     *
     * @throws CannotStart with a reason that a person can mend
     */
    public static RunningServer start(Settings settings, int speed) throws CannotStart {
        DataFolder folder = DataFolder.hold(settings.data());
        Words words = Words.british();
        Assets assets = Assets.under(AssetRoutes.PREFIX);
        Door door = new Door(HostNames.loopbackAnd(settings.names()), problemText(words, assets));
        WebServer web = new WebServer(door, List.of(new AssetRoutes(assets)));
        int port = listen(web, settings, folder);
        return new RunningServer(folder, web, "http://" + settings.shownHost() + ":" + port);
    }

    private static ProblemText problemText(Words words, Assets assets) {
        Pages pages = new Pages();
        // A page about a problem shows no time, so it needs neither the salon's clock nor its zone.
        Screen screen = new Screen(words, assets, new TimeStyle(ZoneOffset.UTC, false), Instant.EPOCH, "", null);
        return new ProblemText(words, (title, detail) -> pages.render(new ProblemPage(title, detail), screen));
    }

    private static int listen(WebServer web, Settings settings, DataFolder folder) throws CannotStart {
        try {
            return web.listen(settings.bindAddress(), settings.port());
        } catch (IOException e) {
            folder.close();
            throw new CannotStart("Port " + settings.port() + " is taken by another program or may not be used. "
                    + "Stop that program, or choose another port with --port.");
        }
    }

    /** Where a browser on this machine finds it. */
    public String url() {
        return url;
    }

    /** Lets requests in flight finish, then closes everything. */
    @Override
    public void close() {
        web.close();
        folder.close();
    }
}
