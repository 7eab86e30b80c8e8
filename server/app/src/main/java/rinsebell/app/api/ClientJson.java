package rinsebell.app.api;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.client.ClientCard;
import rinsebell.floor.client.ClientNote;
import rinsebell.floor.client.EarlierBowl;
import rinsebell.floor.client.EarlierVisit;
import rinsebell.floor.client.KnownClient;
import rinsebell.web.Codes;

/**
 * A client's record.
 *
 * @param known what the gate need not ask again
 * @param visits ended ones, newest first
 */
record ClientJson(long id, String label, GateJson known, List<Note> notes, List<Past> visits) {

    static ClientJson of(ClientCard card) {
        return new ClientJson(
                card.id().value(),
                card.label(),
                GateJson.of(card.known()),
                card.notes().stream().map(Note::of).toList(),
                card.visits().stream().map(Past::of).toList());
    }

    /** @param lastHere absent for never */
    record Found(long id, String label, @Nullable String lastHere) {
        static Found of(KnownClient client) {
            return new Found(client.id().value(), client.label(), Json.instantOrNull(client.lastHere()));
        }
    }

    /** @param on the salon's date */
    record Note(String kind, String on) {
        static Note of(ClientNote note) {
            return new Note(Codes.of(note.kind()), note.on().toString());
        }
    }

    /** @param complaints discomfort spoken of, in order */
    record Past(long id, String arrivedAt, GateJson gate, List<String> complaints, List<PastBowl> bowls) {
        static Past of(EarlierVisit visit) {
            return new Past(
                    visit.id().value(),
                    Json.instant(visit.arrived()),
                    GateJson.of(visit.gate()),
                    visit.complaints().stream().map(Codes::of).toList(),
                    visit.bowls().stream().map(PastBowl::of).toList());
        }
    }

    /** @param portions empty when nobody knew */
    record PastBowl(String mixedAt, String reason, List<Part> portions, List<Use> uses) {
        static PastBowl of(EarlierBowl bowl) {
            return new PastBowl(
                    Json.instant(bowl.mixed()),
                    Codes.of(bowl.reason()),
                    bowl.portions().stream().map(Part::of).toList(),
                    bowl.uses().stream().map(Use::of).toList());
        }
    }

    record Part(String product, BigDecimal grams) {
        static Part of(EarlierBowl.Part part) {
            return new Part(part.product(), part.grams().amount());
        }
    }

    /** @param minutes how long it was on; absent when nobody wrote down its end */
    record Use(String area, String firstOn, @Nullable Long minutes) {
        static Use of(EarlierBowl.Use use) {
            return new Use(
                    Codes.of(use.area()),
                    Json.instant(use.firstOn()),
                    use.time().map(Duration::toMinutes).orElse(null));
        }
    }
}
