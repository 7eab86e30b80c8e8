package rinsebell.db.codec;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import rinsebell.floor.Event;

/** Constants stand in journals by name: one that was released can't be renamed or taken away. */
final class StoredConstantsTest {

    private static final String KEPT = "/rinsebell/db/codec/constants-1.txt";

    private final Set<Class<?>> seen = new HashSet<>();
    private final Set<String> constants = new TreeSet<>();

    @Test
    void everyConstantThatWasEverStoredIsStillThere() throws Exception {
        look(Event.class);

        try (InputStream kept = StoredConstantsTest.class.getResourceAsStream(KEPT)) {
            assertThat(constants)
                    .as("add new constants to the kept file; never take one out")
                    .containsExactlyInAnyOrderElementsOf(
                            new String(Objects.requireNonNull(kept).readAllBytes(), UTF_8)
                                    .lines()
                                    .toList());
        }
    }

    private void look(Type type) {
        if (type instanceof ParameterizedType generic) {
            Arrays.stream(generic.getActualTypeArguments()).forEach(this::look);
        } else if (type instanceof Class<?> plain && seen.add(plain)) {
            into(plain);
        }
    }

    private void into(Class<?> type) {
        if (type.isEnum()) {
            Arrays.stream(type.getEnumConstants())
                    .forEach(each -> constants.add(type.getSimpleName() + " " + ((Enum<?>) each).name()));
        }
        if (type.getPermittedSubclasses() != null) {
            Arrays.stream(type.getPermittedSubclasses()).forEach(this::look);
        }
        if (type.isRecord()) {
            Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getGenericType)
                    .forEach(this::look);
        }
    }
}
