package rinsebell.db;

import java.nio.file.Path;

/** Another process works on the data folder; two would write over each other. */
public final class FolderInUse extends RuntimeException {

    private static final long serialVersionUID = 1;

    FolderInUse(Path folder, String by) {
        super("the data folder " + folder + " is in use by another Rinsebell"
                + (by.isBlank() ? "" : " (process " + by + ")") + "; stop that one, or choose another folder");
    }
}
