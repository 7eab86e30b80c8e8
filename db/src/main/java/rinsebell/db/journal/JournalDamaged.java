package rinsebell.db.journal;

import java.nio.file.Path;

/** The journal holds something it never wrote, or lacks something it wrote; it can't be opened as it is. */
public final class JournalDamaged extends RuntimeException {

    private static final long serialVersionUID = 1;

    JournalDamaged(Path file, long line, String reason) {
        super("the journal is damaged: file " + file + ", line " + line + ": " + reason);
    }
}
