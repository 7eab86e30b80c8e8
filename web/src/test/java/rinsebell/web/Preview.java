package rinsebell.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import rinsebell.web.view.ChairPage;
import rinsebell.web.view.KeptPage;
import rinsebell.web.view.Look;
import rinsebell.web.view.LookClosedPage;
import rinsebell.web.view.View;

/** Writes every sample page with its assets into a folder, to be looked at in a browser. */
final class Preview {
    private Preview() {}

    public static void main(String[] arguments) throws IOException {
        var folder = Path.of(arguments.length > 0 ? arguments[0] : "target/preview");
        Files.createDirectories(folder);
        var assets = Assets.under("assets");
        for (var asset : assets.all().entrySet()) {
            var file = folder.resolve(asset.getKey());
            Files.createDirectories(file.getParent());
            Files.write(file, asset.getValue().bytes());
        }
        var pages = new Pages();
        for (var page : samples().entrySet()) {
            Files.writeString(
                    folder.resolve(page.getKey() + ".html"), pages.render(page.getValue(), Samples.screen(assets)));
        }
    }

    static Map<String, View> samples() {
        var samples = new LinkedHashMap<String, View>();
        samples.put("floor", Samples.floor(Look.DARK));
        samples.put("floor-light", Samples.floor(Look.LIGHT));
        samples.put("chair", HeadSamples.calm());
        samples.put("chair-rinse", HeadSamples.rinseNow());
        samples.put("basins", HeadSamples.basins());
        samples.put("desk", DeskSamples.desk());
        samples.put("pocket", HeadSamples.pocket());
        samples.put("check", FormSamples.check());
        samples.put("bowl-wrong", FormSamples.wrongBowl());
        samples.put("kept", new KeptPage());
        samples.put("lead", LeadSamples.page());
        samples.put("lead-nothing", LeadSamples.nothing());
        samples.put("use", UseSamples.page());
        samples.put("use-nothing", UseSamples.nothing());
        samples.put("look", LookSamples.page());
        samples.put("look-closed", new LookClosedPage());
        samples.put("look-ins", LookSamples.links());
        samples.put("look-ins-made", LookSamples.made());
        samples.put("trust", TrustSamples.page());
        samples.put("trust-at-once", TrustSamples.atOnce());
        samples.put("join", AccessSamples.stranger());
        samples.put("join-invited", AccessSamples.invited());
        samples.put("join-plain", AccessSamples.plainly());
        samples.put("devices", AccessSamples.devices());
        samples.put("key", AccessSamples.key());
        samples.put("trail", AccessSamples.trail());
        samples.put("unlock", AccessSamples.unlock());
        samples.put("rights", AccessSamples.rights());
        samples.put("privacy", PrivacySamples.page());
        samples.put("privacy-nothing", PrivacySamples.nothing());
        samples.put("everything", PrivacySamples.everything());
        var calm = HeadSamples.calm();
        samples.put("chair-done", new ChairPage(FormSamples.answered(calm.shell(), FormSamples.done()), calm.panel()));
        samples.put(
                "chair-refused",
                new ChairPage(FormSamples.answered(calm.shell(), FormSamples.refused()), calm.panel()));
        return samples;
    }
}
