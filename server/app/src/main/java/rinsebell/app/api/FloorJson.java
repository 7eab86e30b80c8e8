package rinsebell.app.api;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.db.Rebuild;
import rinsebell.floor.basin.Job;
import rinsebell.floor.basin.Outlook;
import rinsebell.floor.basin.Turn;
import rinsebell.floor.bowl.Day;
import rinsebell.floor.bowl.Pin;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.turnaround.Turnaround;
import rinsebell.floor.visit.VisitId;
import rinsebell.web.Codes;
import rinsebell.web.board.Moment;

/**
 * The floor as it is now.
 *
 * @param now the salon's time
 * @param clock whether the salon's time can be believed
 * @param rebuilt when the tables had to be made again, so that labels and records from before may be missing; absent for
 *     never
 * @param missingSince up to when a copy could help then; absent when none could
 * @param lastFact the number of the newest fact
 * @param visits everybody who is here, or went today
 * @param turns whom to rinse next, in this order
 * @param pins what somebody decided about a head's next turn
 * @param chairs when each taken chair is free
 * @param gaps times in which no server ran and nobody has caught up on yet
 */
record FloorJson(
        String now,
        String clock,
        @Nullable String rebuilt,
        @Nullable String missingSince,
        long lastFact,
        List<VisitJson> visits,
        List<BasinJson> basins,
        List<TurnJson> turns,
        List<PinJson> pins,
        List<ChairJson> chairs,
        List<Long> onBreak,
        List<GapJson> gaps,
        List<BellJson> bells) {

    record BasinJson(String basin, boolean closed, List<Long> visits) {}

    /**
     * @param basin absent where no basin can be kept for it
     * @param begin when the work before the basin begins
     * @param water when water is to be on
     * @param mustStart when it must be on, so that those behind it are in time
     * @param clash whether no basin can be kept free for it in time
     */
    record TurnJson(
            long visit,
            @Nullable String basin,
            String earliest,
            @Nullable String begin,
            @Nullable String water,
            @Nullable String mustStart,
            String rinseBy,
            boolean clash) {
        static List<TurnJson> all(Outlook outlook) {
            return Stream.concat(
                            outlook.plan().turns().stream().map(turn -> of(turn, outlook)),
                            outlook.plan().without().stream().map(TurnJson::of))
                    .toList();
        }

        private static TurnJson of(Turn turn, Outlook outlook) {
            return new TurnJson(
                    turn.visit().value(),
                    Codes.of(Place.basin(turn.basin())),
                    Json.instant(turn.job().earliest()),
                    Json.instant(turn.begin()),
                    Json.instant(turn.water()),
                    Json.instant(outlook.mustStart(turn)),
                    Json.instant(turn.job().latest()),
                    turn.isLate());
        }

        private static TurnJson of(Job without) {
            var earliest = Json.instant(without.earliest());
            var rinseBy = Json.instant(without.latest());
            return new TurnJson(without.visit().value(), null, earliest, null, null, null, rinseBy, true);
        }
    }

    /**
     * @param basin at which; absent for any
     * @param before the head that it goes before; absent for none
     */
    record PinJson(
            long visit, @Nullable String basin, @Nullable Long before) {
        static List<PinJson> all(Day day) {
            return day.pins().entrySet().stream()
                    .sorted(Comparator.comparing(pin -> pin.getKey().value()))
                    .map(pin -> of(pin.getKey(), pin.getValue()))
                    .toList();
        }

        private static PinJson of(VisitId visit, Pin pin) {
            var basin = pin.at().map(number -> Codes.of(Place.basin(number))).orElse(null);
            var before = Optional.ofNullable(pin.before()).map(VisitId::value).orElse(null);
            return new PinJson(visit.value(), basin, before);
        }
    }

    /**
     * @param likely free as often sooner as later
     * @param latest free by then nine times of ten
     */
    record ChairJson(String chair, String likely, String latest) {
        static List<ChairJson> all(Turnaround turnaround) {
            return turnaround.chairs().entrySet().stream()
                    .map(chair -> new ChairJson(
                            Codes.of(Place.chair(chair.getKey())),
                            Json.instant(chair.getValue().likely()),
                            Json.instant(chair.getValue().latest())))
                    .toList();
        }
    }

    record GapJson(String from, String until) {
        static GapJson of(Day.Gap gap) {
            return new GapJson(Json.instant(gap.from()), Json.instant(gap.until()));
        }
    }

    static FloorJson of(Moment moment, @Nullable Rebuild rebuilt) {
        var floor = moment.floor();
        return new FloorJson(
                Json.instant(moment.now()),
                Codes.of(moment.around().clocks().trust()),
                Json.instantOrNull(rebuilt == null ? null : rebuilt.at()),
                Json.instantOrNull(rebuilt == null ? null : rebuilt.copied()),
                floor.lastSeq(),
                floor.visits().stream()
                        .map(visit -> VisitJson.of(visit, moment))
                        .toList(),
                IntStream.rangeClosed(1, floor.salon().rooms().basins())
                        .mapToObj(number -> basin(number, moment))
                        .toList(),
                TurnJson.all(floor.outlook(moment.now())),
                PinJson.all(floor.day()),
                ChairJson.all(floor.turnaround(moment.now())),
                floor.day().onBreak().stream().map(StaffId::value).sorted().toList(),
                floor.day().gaps().stream().map(GapJson::of).toList(),
                BellJson.all(moment));
    }

    private static BasinJson basin(int number, Moment moment) {
        var place = Place.basin(number);
        return new BasinJson(
                Codes.of(place),
                moment.floor().day().closedBasins().containsKey(number),
                moment.floor().at(place).stream()
                        .map(visit -> visit.id().value())
                        .toList());
    }
}
