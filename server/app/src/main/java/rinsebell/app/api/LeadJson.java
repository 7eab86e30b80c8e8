package rinsebell.app.api;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.report.BellLateness;
import rinsebell.floor.report.DayReport;
import rinsebell.floor.report.Flood;
import rinsebell.floor.report.RingFigures;
import rinsebell.floor.report.RinseLateness;
import rinsebell.floor.report.Standing;
import rinsebell.floor.salon.StaffId;

/**
 * How a day rang, as programs read it.
 *
 * @param day of the salon, as ISO 8601 has it
 * @param from when work began; absent on a day on which nothing was done
 * @param until when it ended
 * @param salon every bell once
 * @param people everybody for whom something rang
 */
record LeadJson(
        String day,
        @Nullable String from,
        @Nullable String until,
        FiguresJson salon,
        List<PersonJson> people,
        List<StandingJson> standing,
        List<RinseJson> rinses,
        List<SoundJson> sounds,
        List<BellJson.RoundJson> unheard) {

    static LeadJson of(DayReport report) {
        return new LeadJson(
                report.day().toString(),
                report.isEmpty() ? null : Json.instant(report.from()),
                report.isEmpty() ? null : Json.instant(report.until()),
                FiguresJson.of(report.of(null)),
                report.people().stream()
                        .map(person -> PersonJson.of(person, report))
                        .toList(),
                report.standing().stream().map(StandingJson::of).toList(),
                report.rinses().stream().map(RinseJson::of).toList(),
                report.sounds().stream().map(SoundJson::of).toList(),
                report.unheard().stream().map(BellJson.RoundJson::of).toList());
    }

    /** @param staff the number of the member of staff */
    record PersonJson(long staff, FiguresJson figures) {
        static PersonJson of(StaffId person, DayReport report) {
            return new PersonJson(person.value(), FiguresJson.of(report.of(person)));
        }
    }

    /**
     * The figures of ISA-18.2; parts are from 0 to 1.
     *
     * @param halfAnswered seconds within which half of those that were answered were; absent when none was
     * @param mostAnswered the same for nine of ten
     */
    record FiguresJson(
            int bells,
            double inTenMinutes,
            int mostInTenMinutes,
            double partOverTen,
            List<SpanJson> floods,
            double partInFlood,
            int chattering,
            @Nullable Double halfAnswered,
            @Nullable Double mostAnswered,
            @Nullable Double low,
            @Nullable Double medium,
            @Nullable Double high) {
        static FiguresJson of(RingFigures figures) {
            return new FiguresJson(
                    figures.bells(),
                    figures.perTenMinutes(),
                    figures.mostInTenMinutes(),
                    figures.partOver(),
                    figures.floods().stream().map(SpanJson::of).toList(),
                    figures.partInFlood(),
                    figures.chattering(),
                    answered(figures, 0.5),
                    answered(figures, 0.9),
                    figures.part(Priority.LOW).orElse(null),
                    figures.part(Priority.MEDIUM).orElse(null),
                    figures.part(Priority.HIGH).orElse(null));
        }

        private static @Nullable Double answered(RingFigures figures, double part) {
            return figures.toAnswer(part)
                    .map(length -> length.toMillis() / 1000.0)
                    .orElse(null);
        }
    }

    record SpanJson(String from, String until) {
        static SpanJson of(Flood flood) {
            return new SpanJson(Json.instant(flood.began()), Json.instant(flood.ended()));
        }
    }

    /**
     * For how long what a bell rang for stood.
     *
     * @param gone absent while it stands
     */
    record StandingJson(
            BellJson.RoundJson bell,
            @Nullable Long visit,
            String since,
            @Nullable String gone) {
        static StandingJson of(Standing one) {
            return new StandingJson(
                    BellJson.RoundJson.of(one.bell()),
                    one.visit() == null ? null : one.visit().value(),
                    Json.instant(one.since()),
                    Json.instantOrNull(one.gone()));
        }
    }

    /** @param late seconds; below zero for early */
    record RinseJson(
            long visit,
            long application,
            @Nullable Long stylist,
            String rinseBy,
            boolean hard,
            String ended,
            double late) {
        static RinseJson of(RinseLateness one) {
            var stylist = one.stylist();
            return new RinseJson(
                    one.visit().id().value(),
                    one.application().value(),
                    stylist == null ? null : stylist.value(),
                    Json.instant(one.rinseBy().at()),
                    one.rinseBy().hard(),
                    Json.instant(one.ended()),
                    one.late().toMillis() / 1000.0);
        }
    }

    /**
     * A device that sounded a turn of a bell.
     *
     * @param device empty for one that keeps no cookie
     * @param ear for whom it rings
     * @param from since when the turn was
     * @param late seconds after it could have sounded it
     */
    record SoundJson(BellJson.RoundJson bell, String from, String device, String ear, String at, double late) {
        static SoundJson of(BellLateness one) {
            var sounded = one.sounded();
            BellKey bell = sounded.turn().bell();
            return new SoundJson(
                    BellJson.RoundJson.of(bell),
                    Json.instant(sounded.turn().from()),
                    sounded.device(),
                    sounded.ear(),
                    Json.instant(sounded.at()),
                    one.late().toMillis() / 1000.0);
        }
    }
}
