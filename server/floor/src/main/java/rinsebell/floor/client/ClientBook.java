package rinsebell.floor.client;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.Gate;

/** The records of people who come again, for whoever looks one up. */
public interface ClientBook {
    /** A book with nobody in it. */
    ClientBook EMPTY = new ClientBook() {
        @Override
        public List<KnownClient> search(String letters, int most) {
            return List.of();
        }

        @Override
        public Optional<ClientCard> card(ClientId client) {
            return Optional.empty();
        }
    };

    /**
     * Clients whose label holds these letters, capitals or not; those who came last first.
     *
     * @param letters nothing for everybody
     * @param most how many at most
     */
    List<KnownClient> search(String letters, int most);

    /** All that is known of a client; empty when there is no such record. */
    Optional<ClientCard> card(ClientId client);

    /** What the gate need not ask again; unanswered for a client of whom nothing is known. */
    default Gate known(@Nullable ClientId client) {
        return Optional.ofNullable(client)
                .flatMap(this::card)
                .map(ClientCard::known)
                .orElse(Gate.UNANSWERED);
    }
}
