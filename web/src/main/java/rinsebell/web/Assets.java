package rinsebell.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The style sheet, scripts and fonts, under addresses that name their content.
 *
 * <p>All files share one folder named after a hash of everything in it. So relative imports between modules and font
 * addresses in the style sheet keep working, and a browser may keep every file for ever.
 */
public final class Assets {
    /** The order in which the parts of the style sheet are joined: later ones may refine earlier ones. */
    static final List<String> STYLES = List.of(
            "tokens", "base", "shell", "panel", "urgency", "ribbon", "floor", "chair", "heads", "desk", "forms",
            "sheet", "bowl", "lead", "look-in", "trust", "motion");

    static final List<String> FILES = List.of(
            "main.js",
            "clock.js",
            "offset.js",
            "sync.js",
            "ribbon.js",
            "feed.js",
            "events.js",
            "ours.js",
            "press.js",
            "awake.js",
            "bench.js",
            "lock.js",
            "file.js",
            "scan.js",
            "queue.js",
            "turn.js",
            "send.js",
            "join.js",
            "kept.js",
            "answered.js",
            "device.js",
            "listen.js",
            "ring.js",
            "sound.js",
            "sounded.js",
            "offline.js",
            "worker.js",
            "look.js",
            "icon.svg",
            "fonts/b612-latin-400-normal.woff2",
            "fonts/b612-latin-700-normal.woff2",
            "fonts/b612-mono-latin-400-normal.woff2",
            "fonts/b612-mono-latin-700-normal.woff2",
            "fonts/B612-OFL.txt",
            "fonts/B612-Mono-OFL.txt");

    private static final String HTMX = "/META-INF/resources/webjars/htmx.org/2.0.10/dist/htmx.min.js";
    private static final Map<String, String> TYPES = Map.of(
            "css", "text/css; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "woff2", "font/woff2",
            "svg", "image/svg+xml",
            "txt", "text/plain; charset=utf-8");

    private final String root;
    private final Map<String, Asset> files;

    private Assets(String prefix, Map<String, Asset> files) {
        this.files = files;
        this.root = prefix + "/" + hash(files) + "/";
    }

    /**
     * Reads every file from the class path.
     *
     * @param prefix the path under which they are served, such as {@code /assets}
     */
    public static Assets under(String prefix) {
        var files = new LinkedHashMap<String, Asset>();
        files.put("rinsebell.css", new Asset(type("rinsebell.css"), styleSheet()));
        files.put("htmx.js", new Asset(type("htmx.js"), read(HTMX)));
        FILES.forEach(path -> files.put(path, new Asset(type(path), read("assets/" + path))));
        return new Assets(prefix, Collections.unmodifiableMap(files));
    }

    /**
     * The address of a file.
     *
     * @throws IllegalArgumentException when there is no such file
     */
    public String url(String path) {
        if (!files.containsKey(path)) {
            throw new IllegalArgumentException("there is no asset " + path);
        }
        return root + path;
    }

    /** The file behind an address made by {@link #url}; nothing for any other address. */
    public Optional<Asset> at(String url) {
        return url.startsWith(root) ? Optional.ofNullable(files.get(url.substring(root.length()))) : Optional.empty();
    }

    /** Every file by its address. */
    public Map<String, Asset> all() {
        var all = new LinkedHashMap<String, Asset>();
        files.forEach((path, file) -> all.put(root + path, file));
        return all;
    }

    /**
     * The service worker, to be served from the root. It begins with the addresses of all files: so a browser, which
     * compares it byte by byte, notices when one of them is another.
     */
    public Asset worker() {
        var list = all().keySet().stream().collect(Collectors.joining("\", \"", "const ASSETS = [\"", "\"];\n"));
        var file = Objects.requireNonNull(files.get("worker.js"));
        return new Asset(
                file.type(),
                (list + new String(file.bytes(), StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8));
    }

    private static byte[] styleSheet() {
        var joined = new ByteArrayOutputStream();
        STYLES.forEach(name -> joined.writeBytes(read("assets/css/" + name + ".css")));
        return joined.toByteArray();
    }

    private static byte[] read(String resource) {
        try (var in = Assets.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the asset " + resource + " is not on the class path");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String type(String path) {
        var ending = path.substring(path.lastIndexOf('.') + 1);
        var type = TYPES.get(ending);
        if (type == null) {
            throw new IllegalArgumentException("no media type is known for " + path);
        }
        return type;
    }

    private static String hash(Map<String, Asset> files) {
        try {
            var digest = MessageDigest.getInstance("SHA-256");
            files.forEach((path, file) -> digest.update(file.bytes()));
            return HexFormat.of().formatHex(digest.digest(), 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
