package rinsebell.floor.client;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.Gate.SkinTest;
import rinsebell.floor.visit.Gate.YesNo;

/**
 * What is known of a client.
 *
 * @param notes tests and reactions told of outside a visit, newest first
 * @param visits ended visits, newest first; no more than the last twenty
 */
public record ClientCard(ClientId id, String label, List<ClientNote> notes, List<EarlierVisit> visits) {

    public ClientCard {
        notes = List.copyOf(notes);
        visits = List.copyOf(visits);
    }

    /**
     * Answers to the gate's questions that need not be asked again: the newest skin test and whether they ever reacted.
     * What changes from visit to visit, or that nothing is known of, is null in it.
     */
    public Gate known() {
        return new Gate(newestTest().orElse(null), null, reacted(), null, null);
    }

    private Optional<SkinTest> newestTest() {
        return Stream.concat(notes.stream().flatMap(ClientCard::test), gates().map(Gate::skinTest))
                .filter(test -> test != null && test.applied() != null)
                .max(Comparator.comparing(ClientCard::appliedOn));
    }

    private Stream<Gate> gates() {
        return visits.stream().map(EarlierVisit::gate);
    }

    private static LocalDate appliedOn(SkinTest test) {
        LocalDate applied = test.applied();
        return applied == null ? LocalDate.MIN : applied;
    }

    private static Stream<SkinTest> test(ClientNote note) {
        return switch (note.kind()) {
            case SKIN_TEST_FINE -> Stream.of(new SkinTest(SkinTest.Result.NO_REACTION, note.on()));
            case SKIN_TEST_REACTED -> Stream.of(new SkinTest(SkinTest.Result.REACTED, note.on()));
            case REACTION -> Stream.empty();
        };
    }

    private @Nullable YesNo reacted() {
        boolean noted = notes.stream().anyMatch(note -> note.kind() != ClientNote.Kind.SKIN_TEST_FINE);
        boolean told = gates().anyMatch(gate -> gate.earlierReaction() == YesNo.YES || testReacted(gate));
        return noted || told ? YesNo.YES : null;
    }

    private static boolean testReacted(Gate gate) {
        return gate.skinTest() != null && gate.skinTest().result() == SkinTest.Result.REACTED;
    }
}
