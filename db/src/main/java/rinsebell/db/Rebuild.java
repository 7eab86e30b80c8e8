package rinsebell.db;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The tables were made again from the journal. Places, clocks and bells are what they were; labels, names, notes and
 * client records from before may be missing.
 *
 * @param at when
 * @param reason why the database could not be used, for people
 * @param setAside where its file is kept; null when there was none
 */
public record Rebuild(Instant at, String reason, @Nullable Path setAside) {

    public Optional<Path> kept() {
        return Optional.ofNullable(setAside);
    }
}
