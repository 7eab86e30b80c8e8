package rinsebell.floor.client;

import java.time.Instant;
import java.util.List;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.VisitId;

/**
 * A visit that has ended.
 *
 * @param gate what was answered then; what was not asked is null in it
 * @param complaints discomfort spoken of, in order
 * @param bowls what was mixed for them or put on them, in order
 */
public record EarlierVisit(
        VisitId id, Instant arrived, Gate gate, List<Complaint.Grade> complaints, List<EarlierBowl> bowls) {

    public EarlierVisit {
        complaints = List.copyOf(complaints);
        bowls = List.copyOf(bowls);
    }
}
