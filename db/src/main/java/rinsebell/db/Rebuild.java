package rinsebell.db;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The tables were made again, and what may be missing since.
 *
 * @param at when
 * @param reason why the database could not be used, for people
 * @param setAside where its file is kept; null when there was none
 * @param copied up to when a copy could help; null when there was none, so that labels, notes and client records from
 *     any time before may be missing
 * @param lacking how many facts a copy has more than the journal, which therefore lost its end, unless that copy is not
 *     of this salon; 0 as a rule
 */
public record Rebuild(
        Instant at,
        String reason,
        @Nullable Path setAside,
        Source source,
        @Nullable Instant copied,
        long lacking) {

    /** What they were made again from. */
    public enum Source {
        /** Places, clocks and bells are what they were; labels, notes and client records may be missing. */
        JOURNAL,
        /** Places, clocks and bells are what they were; labels, notes and client records since the copy may be missing. */
        COPY_AND_JOURNAL,
        /** A person restored a copy: nothing that was recorded after it is there. */
        COPY_ALONE
    }

    /** From the journal alone, as far as is known yet. */
    Rebuild(Instant at, String reason, @Nullable Path setAside) {
        this(at, reason, setAside, Source.JOURNAL, null, 0);
    }

    Rebuild with(Copy copy) {
        return new Rebuild(at, reason, setAside, Source.COPY_AND_JOURNAL, copy.at(), lacking);
    }

    Rebuild lacking(long facts) {
        return new Rebuild(at, reason, setAside, source, copied, Math.max(lacking, facts));
    }

    public Optional<Path> kept() {
        return Optional.ofNullable(setAside);
    }
}
