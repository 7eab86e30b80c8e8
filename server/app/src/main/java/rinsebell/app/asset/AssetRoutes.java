package rinsebell.app.asset;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import rinsebell.app.door.EntityTag;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Numbered;
import rinsebell.app.door.Routes;
import rinsebell.web.Asset;
import rinsebell.web.Assets;

/**
 * The files that pages load. They come from a fixed list in memory, so no address can reach any other file; their
 * addresses name their content, so a browser may keep them for good.
 */
public final class AssetRoutes implements Routes {

    /** Where they lie. */
    public static final String PREFIX = "/assets";

    private static final String FOR_GOOD = "public, max-age=31536000, immutable";

    private final Assets assets;

    public AssetRoutes(Assets assets) {
        this.assets = assets;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(PREFIX + "/<path>", this::send, Matter.OPEN);
        routes.get("/worker.js", ctx -> send(ctx, assets.worker()), Matter.OPEN);
    }

    private void send(Context ctx) {
        Asset asset = assets.at(ctx.path()).orElseThrow(Numbered::nowhere);
        // The address itself changes with the content, so it is as good a tag as a hash.
        EntityTag tag = EntityTag.ofAddress(ctx.path());
        ctx.header("Cache-Control", FOR_GOOD).header("ETag", tag.text());
        if (tag.isHeldBy(ctx)) {
            ctx.status(304);
        } else {
            send(ctx, asset);
        }
    }

    private static void send(Context ctx, Asset asset) {
        ctx.contentType(asset.type()).result(asset.bytes());
    }
}
