package rinsebell.app.api;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import rinsebell.app.trail.TrailDays;
import rinsebell.db.Trail;
import rinsebell.floor.salon.StaffId;

/**
 * What was recorded on a day.
 *
 * @param facts on the floor, by number
 * @param steps beside it, in the order in which they were kept
 */
record TrailJson(String day, List<PressedJson> facts, List<StepJson> steps) {

    /**
     * A fact, and how it came in.
     *
     * @param device which device; empty when not known, and for what the program told itself
     */
    record PressedJson(FactJson fact, String press, String device) {}

    /**
     * A look at what is about people, or something that was done beside the floor.
     *
     * @param by whose PIN had opened it, or who was named; absent for nobody
     * @param device which device; empty for a stranger
     * @param matter what it was about
     * @param route method and pattern of the address
     * @param subject the number in the address; absent for none
     */
    record StepJson(
            String at,
            @Nullable Long by,
            String device,
            String matter,
            String route,
            @Nullable Long subject,
            int status) {

        static StepJson of(Trail.Step step) {
            return new StepJson(
                    Json.instant(step.at()),
                    step.who().map(StaffId::value).orElse(null),
                    step.device(),
                    step.matter().toLowerCase(Locale.ROOT).replace('_', '-'),
                    step.route(),
                    step.subject(),
                    step.status());
        }
    }

    static TrailJson of(TrailDays.Told told) {
        return new TrailJson(
                told.day().toString(),
                told.pressed().stream()
                        .map(one -> new PressedJson(FactJson.of(one.fact(), told.moment()), one.press(), one.device()))
                        .toList(),
                told.steps().stream().map(StepJson::of).toList());
    }
}
