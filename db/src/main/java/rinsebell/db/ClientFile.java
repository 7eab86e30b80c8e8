package rinsebell.db;

import java.time.Instant;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.TextId;
import rinsebell.floor.client.ClientNote;
import rinsebell.floor.salon.KeptRecipe;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.VisitId;

/**
 * Everything that is kept about a client.
 *
 * @param met by when the record was there; null when nobody looked yet
 * @param notes newest first
 * @param stays all their visits, the open ones too, newest first
 * @param looks who looked at the record, the newest first
 * @param texts labels, names and notes of these visits, of their recipes, and of the salon
 */
public record ClientFile(
        ClientId id,
        String label,
        @Nullable Instant met,
        List<ClientNote> notes,
        List<Stay> stays,
        List<Trail.Step> looks,
        Map<TextId, String> texts) {

    public ClientFile {
        notes = List.copyOf(notes);
        stays = List.copyOf(stays);
        looks = List.copyOf(looks);
        texts = Map.copyOf(texts);
    }

    /** @param floor on which this visit alone is, with the days on which its bowls were mixed */
    public record Stay(VisitId visit, Floor floor) {}

    static Optional<ClientFile> read(Handle handle, ClientId client) {
        return ClientTable.label(handle, client).map(label -> read(handle, client, label));
    }

    private static ClientFile read(Handle handle, ClientId client, String label) {
        List<Stay> stays = VisitTable.of(handle, client).stream()
                .map(visit -> new Stay(visit, History.floor(handle, List.of(visit))))
                .toList();
        Floor salon = Floor.of(FactTable.in(handle, List.of(rinsebell.floor.Stream.SALON)));
        Set<TextId> ids = new HashSet<>(names(salon, client));
        stays.forEach(stay -> ids.addAll(texts(stay)));
        return new ClientFile(
                client,
                label,
                ClientTable.met(handle, client),
                ClientTable.notes(handle, client),
                stays,
                TrailTable.about(handle, client),
                TextTable.find(handle, ids));
    }

    private static List<TextId> texts(Stay stay) {
        return stay.floor().facts(rinsebell.floor.Stream.visit(stay.visit())).stream()
                .map(Fact::seq)
                .map(TextId::new)
                .toList();
    }

    /** Whoever served them is called by name; recipes of others are not theirs. */
    private static List<TextId> names(Floor floor, ClientId client) {
        Stream<TextId> staff = floor.salon().staff().stream().map(member -> member.name());
        Stream<TextId> recipes = floor.salon().recipesOf(client).stream()
                .map(KeptRecipe::versions)
                .flatMap(Collection::stream)
                .map(KeptRecipe.Version::name);
        return Stream.of(Stream.ofNullable(floor.salon().name()), staff, recipes)
                .flatMap(names -> names)
                .toList();
    }
}
