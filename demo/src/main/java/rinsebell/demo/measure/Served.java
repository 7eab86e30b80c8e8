package rinsebell.demo.measure;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import picocli.CommandLine;
import rinsebell.app.CannotStart;
import rinsebell.app.RunningServer;
import rinsebell.app.Settings;
import rinsebell.app.time.MachineTime;
import rinsebell.db.DataFolder;
import rinsebell.db.SalonStore;
import rinsebell.demo.BusyDay;
import rinsebell.floor.Ledger;

/** The whole server in this process, on a folder of its own, with every chair taken. */
final class Served implements AutoCloseable {
    private final Path place;
    private final BusyDay day;
    private final RunningServer server;

    private Served(Path place, BusyDay day, RunningServer server) {
        this.place = place;
        this.day = day;
        this.server = server;
    }

    static Served with(int chairs) throws IOException, Ledger.NotSaved, CannotStart {
        return with(BusyDay.of(chairs, now(), ZoneOffset.UTC));
    }

    static Served with(BusyDay day) throws IOException, Ledger.NotSaved, CannotStart {
        var place = Files.createTempDirectory("rinsebell-measure");
        try (var folder = DataFolder.open(place.resolve("data"));
                var store = SalonStore.open(folder, now())) {
            store.append(day.entries());
        }
        var settings = CommandLine.populateCommand(
                new Settings(), "--port", "0", "--data", place.resolve("data").toString());
        return new Served(place, day, RunningServer.start(settings, 1));
    }

    static Instant now() {
        return Instant.ofEpochMilli(new MachineTime().wallMillis());
    }

    BusyDay day() {
        return day;
    }

    String url() {
        return server.url();
    }

    int port() {
        return Integer.parseInt(url().substring(url().lastIndexOf(':') + 1));
    }

    /** How long the journal is. */
    long journalBytes() throws IOException {
        try (var files = Files.list(place.resolve("data").resolve("journal"))) {
            return files.mapToLong(Served::length).sum();
        }
    }

    private static long length(Path file) {
        try {
            return Files.size(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() throws IOException {
        server.close();
        delete(place);
    }

    static void delete(Path folder) throws IOException {
        try (var inside = Files.walk(folder)) {
            for (var file : inside.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
