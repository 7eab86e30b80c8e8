package rinsebell.app.api;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** Texts that came with the program. */
final class Resource {

    private Resource() {}

    /** @param path on the class path, from its root */
    static String text(String path) {
        try (var in = Resource.class.getResourceAsStream(path)) {
            return new String(
                    Objects.requireNonNull(in, () -> path + " is not on the class path")
                            .readAllBytes(),
                    StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
