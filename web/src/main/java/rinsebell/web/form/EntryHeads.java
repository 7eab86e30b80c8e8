package rinsebell.web.form;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitId;

/** Reads what is on a head. */
final class EntryHeads {
    private static final ApplicationId NO_APPLICATION = new ApplicationId(0);
    private static final int LONGEST_AGAIN_MINUTES = 60;

    /** What a decision says besides minutes. */
    static final String RINSE = "rinse";

    private static final String DECISION = "decision";

    private EntryHeads() {}

    static VisitId visit(Entries entries) {
        return new VisitId(entries.id());
    }

    private static List<Application> onHair(Entries entries) {
        return entries.floor().visit(visit(entries)).map(Visit::onHair).orElse(List.of());
    }

    private static boolean isVisitKnown(Entries entries) {
        return entries.floor().visit(visit(entries)).isPresent();
    }

    /** Which application is meant; need not be said where only one is on. Of an unknown visit the floor has its word. */
    static ApplicationId application(Entries entries) {
        entries.all("application");
        if (!isVisitKnown(entries)) {
            return NO_APPLICATION;
        }
        var said = entries.number("application").flatMap(seq -> known(entries, "application", seq));
        return entries.needed("application", said.or(() -> onlyOne(entries)), NO_APPLICATION);
    }

    private static Optional<ApplicationId> onlyOne(Entries entries) {
        var live = onHair(entries).stream().filter(Application::isLive).toList();
        return live.size() == 1 && entries.value("application").isEmpty()
                ? Optional.of(live.get(0).id())
                : Optional.empty();
    }

    private static Optional<ApplicationId> known(Entries entries, String field, long seq) {
        var id = new ApplicationId(seq);
        var visit = entries.floor().visit(visit(entries));
        return entries.known(field, visit.flatMap(head -> head.application(id)).map(Application::id), Fault.NOT_KNOWN);
    }

    /** Which applications are meant; all that are on the hair where none is named. */
    static Set<ApplicationId> applications(Entries entries) {
        entries.all("applications");
        if (!isVisitKnown(entries)) {
            return Set.of(NO_APPLICATION);
        }
        var named = entries.numbers("applications").stream()
                .flatMap(seq -> known(entries, "applications", seq).stream())
                .collect(Collectors.toUnmodifiableSet());
        return named.isEmpty() ? everything(entries) : named;
    }

    /** With nothing on no field is wrong: that nothing is on is what there is to say. */
    private static Set<ApplicationId> everything(Entries entries) {
        var all = onHair(entries).stream().map(Application::id).collect(Collectors.toUnmodifiableSet());
        return all.isEmpty() ? Set.of(NO_APPLICATION) : all;
    }

    /** Look again in so many minutes, or rinse; null for "by the directions". */
    static @Nullable CheckDecision decision(Entries entries) {
        var rinses = entries.value(DECISION).filter(RINSE::equals).isPresent();
        var again = rinses ? Optional.<CheckDecision>empty() : again(entries, DECISION);
        var alsoAgain = again(entries, "again");
        if (alsoAgain.isPresent() && (rinses || again.isPresent())) {
            entries.fault("again", Fault.TWO_ANSWERS);
        }
        return rinses ? CheckDecision.RINSE : again.or(() -> alsoAgain).orElse(null);
    }

    private static Optional<CheckDecision> again(Entries entries, String field) {
        return entries.whole(field, 1, LONGEST_AGAIN_MINUTES)
                .map(minutes -> CheckDecision.lookAgain(Duration.ofMinutes(minutes)));
    }

    static BowlId neededBowl(Entries entries, String field) {
        var bowl = entries.number(field)
                .map(BowlId::new)
                .flatMap(id -> entries.known(field, entries.floor().bowl(id).map(one -> one.id()), Fault.NOT_KNOWN));
        return entries.needed(field, bowl, new BowlId(0));
    }

    static @Nullable VisitId visitOrNull(Entries entries, String field) {
        return entries.number(field)
                .map(VisitId::new)
                .flatMap(id -> entries.known(field, entries.floor().visit(id).map(Visit::id), Fault.NOT_KNOWN))
                .orElse(null);
    }
}
