package rinsebell.web.form;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.client.ClientBook;
import rinsebell.floor.client.ClientCard;
import rinsebell.floor.client.ClientNote;
import rinsebell.floor.client.EarlierBowl;
import rinsebell.floor.client.EarlierVisit;
import rinsebell.floor.client.KnownClient;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.VisitId;

/** A book with one record in it: somebody who was here ten weeks ago and whose scalp tingled. */
final class FewClients implements ClientBook {
    static final ClientId KNOWN = new ClientId(7);
    private static final Duration LONG_AGO = Duration.ofDays(70);

    @Override
    public List<KnownClient> search(String letters, int most) {
        var known = new KnownClient(KNOWN, "Q. <i>Z</i>.", Saturday.TEN.minus(LONG_AGO));
        return known.label().contains(letters) ? List.of(known) : List.of();
    }

    @Override
    public Optional<ClientCard> card(ClientId client) {
        return client.equals(KNOWN)
                ? Optional.of(new ClientCard(KNOWN, "Q. <i>Z</i>.", List.of(test()), List.of(visit())))
                : Optional.empty();
    }

    private static ClientNote test() {
        return new ClientNote(ClientNote.Kind.SKIN_TEST_FINE, LocalDate.of(2026, 5, 12));
    }

    private static EarlierVisit visit() {
        var mixed = Saturday.TEN.minus(LONG_AGO);
        var use = new EarlierBowl.Use(Area.REGROWTH, mixed.plusSeconds(300), mixed.plusSeconds(300 + 35 * 60));
        var powder = new EarlierBowl.Part("Powder <1>", Grams.of("62.5"));
        return new EarlierVisit(
                new VisitId(1),
                mixed,
                Gate.UNANSWERED,
                List.of(Complaint.Grade.TINGLING),
                List.of(new EarlierBowl(mixed, BowlReason.FIRST, List.of(powder), List.of(use))));
    }
}
