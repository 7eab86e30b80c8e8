package rinsebell.web.board;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rinsebell.floor.bell.Crowd;
import rinsebell.floor.bell.Ear;
import rinsebell.floor.report.BellLateness;
import rinsebell.floor.report.DayReport;
import rinsebell.floor.report.Quantile;
import rinsebell.web.view.LeadPage.Part;
import rinsebell.web.view.Table;
import rinsebell.web.view.Table.Row;

/** Tells how soon devices sounded what rang, and what none of them sounded. */
final class SoundsTelling {
    private final Moment moment;
    private final DayReport report;

    SoundsTelling(Moment moment, DayReport report) {
        this.moment = moment;
        this.report = report;
    }

    Part part() {
        return report.sounds().isEmpty()
                ? new Part("sounds", moment.say("lead.sounds.none"), List.of(), null)
                : new Part("sounds", moment.say("lead.sounds"), List.of(table()), null);
    }

    private Table table() {
        var heads = Stream.of("ear", "devices", "sounded", "soon", "sooner", "last")
                .map(head -> moment.say("lead.head." + head))
                .toList();
        var rows = new ArrayList<Row>();
        rows.add(row(moment.say("lead.sounds.all"), report.sounds()));
        report.sounds().stream()
                .map(one -> one.sounded().ear())
                .distinct()
                .sorted()
                .forEach(ear -> rows.add(row(ear(ear), of(ear))));
        rows.add(new Row(
                moment.say("lead.sounds.unheard"),
                "–",
                String.valueOf(report.unheard().size()),
                "–",
                "–",
                "–"));
        return new Table(moment.say("lead.sounds"), heads, rows, false);
    }

    private List<BellLateness> of(String ear) {
        return report.sounds().stream()
                .filter(one -> one.sounded().ear().equals(ear))
                .toList();
    }

    private Row row(String who, List<BellLateness> sounds) {
        var late = sounds.stream().mapToDouble(one -> one.late().toMillis()).toArray();
        var devices = sounds.stream().map(one -> one.sounded().device()).distinct();
        return new Row(
                who,
                String.valueOf(devices.count()),
                String.valueOf(sounds.size()),
                seconds(Quantile.of(late, 0.5)),
                seconds(Quantile.of(late, 0.9)),
                seconds(Quantile.of(late, 1)));
    }

    private String seconds(double millis) {
        return LeadTelling.fine(moment, Duration.ofMillis(Math.round(millis)));
    }

    private String ear(String code) {
        return EarCode.read(code).map(this::ear).orElse(code);
    }

    private String ear(Ear ear) {
        if (ear instanceof Ear.Of one) {
            return moment.name(one.person());
        }
        if (ear instanceof Ear.At at) {
            return moment.place(at.place());
        }
        return ear instanceof Ear.Shared shared ? crowd(shared.crowd()) : moment.say("device.ear.all");
    }

    private String crowd(Crowd crowd) {
        return moment.say(crowd);
    }
}
