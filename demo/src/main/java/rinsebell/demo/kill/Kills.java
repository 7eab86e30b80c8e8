package rinsebell.demo.kill;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Random;

/**
 * {@code java -cp rinsebell-demo.jar rinsebell.demo.kill.Kills [kills [seed]]}: so many kills -9 of the real server, on
 * folders in the system's place for temporary files. A folder in which something was lost is left for a look.
 */
public final class Kills {
    /** A floor grows by every press of its day; after these a new day begins in a new folder. */
    private static final int IN_ONE_FOLDER = 25;

    private final Path jar;
    private final Path place;
    private final Random dice;
    private final Tally tally = new Tally();

    private Kills(Path jar, Path place, long seed) {
        this.jar = jar;
        this.place = place;
        this.dice = new Random(seed);
    }

    public static void main(String... arguments) throws IOException, InterruptedException {
        var kills = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1_000;
        var seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : new Random().nextLong();
        System.out.println("seed " + seed);
        run(ownJar(), kills, seed);
    }

    private static Path ownJar() {
        return Path.of(System.getProperty("java.class.path")).toAbsolutePath();
    }

    /**
     * Kills the program in a jar so many times.
     *
     * @param seed the instants of the kills and what is pressed hang on it; how threads overlap does not
     * @return the figures
     * @throws IllegalStateException when something that was answered is not there, naming the folder
     */
    static Tally run(Path jar, int kills, long seed) throws IOException, InterruptedException {
        var place = Files.createTempDirectory("rinsebell-kills");
        var run = new Kills(jar, place, seed);
        try {
            run.all(kills);
        } catch (IOException | RuntimeException e) {
            throw new IllegalStateException(
                    "seed " + seed + ", kill " + run.tally.kills() + ", look into " + place + ": " + e.getMessage(), e);
        }
        delete(place);
        return run.tally;
    }

    private void all(int kills) throws IOException, InterruptedException {
        var archive = place.resolve("classes.jsa");
        var first = Files.createDirectory(place.resolve("first"));
        Life.archive(new Life.Way(jar, archive, first.resolve("data"), 0));
        for (var chapter = 0; tally.kills() < kills; chapter++) {
            var folder = Files.createDirectory(place.resolve("chapter-" + chapter));
            var way = new Life.Way(jar, archive, folder.resolve("data"), freePort());
            new Chapter(way, dice, tally).live(Math.min(IN_ONE_FOLDER, kills - tally.kills()));
            delete(folder);
            System.out.println(tally);
        }
    }

    private static int freePort() throws IOException {
        try (var any = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return any.getLocalPort();
        }
    }

    private static void delete(Path folder) throws IOException {
        try (var inside = Files.walk(folder)) {
            inside.sorted(Comparator.reverseOrder()).forEach(Kills::deleteOne);
        }
    }

    private static void deleteOne(Path file) {
        try {
            Files.delete(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
