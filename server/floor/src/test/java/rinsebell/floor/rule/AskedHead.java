package rinsebell.floor.rule;

import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Shelf.DEV10;
import static rinsebell.floor.testing.Shelf.DEV20;
import static rinsebell.floor.testing.Shelf.DEV30;
import static rinsebell.floor.testing.Shelf.MILD_CREAM;
import static rinsebell.floor.testing.Shelf.POWDER;
import static rinsebell.floor.testing.Shelf.TONER;

import java.util.List;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Zone;
import rinsebell.floor.testing.Gates;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.ClientId;

/** A head with a fine gate, of a client known to the house, whose restrictions are asked for. */
abstract class AskedHead {
    final Story story = Story.stocked().at("09:50");
    final Head head = story.arrives(new ClientId(70));

    AskedHead() {
        head.answers(Gates.FINE);
    }

    BowlId cream() {
        return story.mixes(g(60, MILD_CREAM), g(60, DEV20));
    }

    BowlId powder() {
        return story.mixes(g(60, POWDER), g(60, DEV30));
    }

    BowlId toner() {
        return story.mixes(g(60, TONER), g(60, DEV10));
    }

    Restrictions restrictions(Head whose) {
        return new Restrictions(story.floor(), whose.visit());
    }

    List<ReasonCode> against(BowlId bowl, Zone zone) {
        return against(head, bowl, zone, Cover.OPEN);
    }

    List<ReasonCode> against(Head whose, BowlId bowl, Zone zone, Cover cover) {
        return codes(restrictions(whose).against(new Restrictions.Putting(bowl, zone, cover, story.now())));
    }

    List<ReasonCode> brokenBy(ApplicationId application) {
        return codes(restrictions(head)
                .brokenBy(head.visit().application(application).orElseThrow()));
    }

    List<ReasonCode> gatePassedBy(ApplicationId application) {
        return codes(restrictions(head)
                .gatePassedBy(head.visit().application(application).orElseThrow()));
    }

    static List<ReasonCode> codes(List<Reason> reasons) {
        return reasons.stream().map(Reason::code).toList();
    }
}
