package rinsebell.db.journal;

import java.nio.file.Path;

/**
 * A batch could neither be saved nor be taken back, so nobody can say whether it counts. The process has to stop
 * without answering the presses of the batch; the next start decides by what is on disk.
 */
public final class MustStop extends RuntimeException {

    private static final long serialVersionUID = 1;

    MustStop(Path file, Throwable cause) {
        super("the journal file " + file + " could neither be written nor cut back: " + cause.getMessage(), cause);
    }
}
