package rinsebell.app.desk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import rinsebell.db.DatabaseAway;

/**
 * Presses that were answered before: the latest ones at hand, older ones from the store. The desk's thread writes, any
 * thread may ask.
 */
public final class PressMemory {
    private static final int AT_HAND = 4_096;
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Function<String, Optional<Stored>> store;
    private final Map<String, KnownPress> latest = Collections.synchronizedMap(new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, KnownPress> eldest) {
            return size() > AT_HAND;
        }
    });

    /**
     * A press as the store keeps it.
     *
     * @param payloadHash what was asked, as a hash
     * @param outcome what it was answered, as the desk wrote it
     */
    public record Stored(String payloadHash, String outcome) {}

    /** @param store finds older presses by id */
    public PressMemory(Function<String, Optional<Stored>> store) {
        this.store = store;
    }

    /** Nobody can say just now whether a press came before. */
    static final class OutOfReach extends RuntimeException {

        private static final long serialVersionUID = 1L;

        OutOfReach(DatabaseAway cause) {
            super(cause.getMessage(), cause);
        }
    }

    /** @throws OutOfReach when it is none of the latest and the store can't be asked */
    Optional<KnownPress> find(String id) {
        return Optional.ofNullable(latest.get(id)).or(() -> stored(id).map(PressMemory::read));
    }

    private Optional<Stored> stored(String id) {
        try {
            return store.apply(id);
        } catch (DatabaseAway e) {
            throw new OutOfReach(e);
        }
    }

    void keep(String id, KnownPress press) {
        latest.put(id, press);
    }

    private static KnownPress read(Stored stored) {
        try {
            return new KnownPress(stored.payloadHash(), JSON.readValue(stored.outcome(), Outcome.class));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a kept outcome can't be read: " + stored.outcome(), e);
        }
    }
}
