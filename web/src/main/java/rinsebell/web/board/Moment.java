package rinsebell.web.board;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.ClockTrust;
import rinsebell.floor.Floor;
import rinsebell.floor.TextId;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.Returned;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.clock.Terms;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Kind;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.visit.Visit;
import rinsebell.web.TimeStyle;
import rinsebell.web.Words;

/**
 * The floor at an instant, with the words to tell it.
 *
 * @param floor as it stands
 * @param texts labels, names and notes; empty for one that was erased
 * @param bells every bell of the floor
 * @param around what is told besides
 * @param now the instant to show
 * @param words the message bundle
 */
public record Moment(
        Floor floor, Function<TextId, String> texts, List<Bell> bells, Around around, Instant now, Words words) {

    /**
     * What is to be told of bells besides the bells.
     *
     * @param returned those that rang and are gone, unseen
     * @param listening devices that are there
     * @param clocks whether the time can be believed
     */
    public record Around(List<Returned> returned, List<Listening> listening, Clocks clocks) {
        public static final Around NOTHING =
                new Around(List.of(), List.of(), new Clocks(ClockTrust.AGREES, Instant.EPOCH));

        public Around {
            returned = List.copyOf(returned);
            listening = List.copyOf(listening);
        }
    }

    /**
     * The salon's clock beside the machine's.
     *
     * @param trust whether the salon's time can be believed
     * @param machine what the machine's clock shows
     */
    public record Clocks(ClockTrust trust, Instant machine) {}

    /** A moment at which there is nothing around. */
    public Moment(Floor floor, Function<TextId, String> texts, List<Bell> bells, Instant now, Words words) {
        this(floor, texts, bells, Around.NOTHING, now, words);
    }

    public List<Listening> listening() {
        return around.listening();
    }

    public String say(String key, Object... arguments) {
        return words.say(key, arguments);
    }

    /** The words for one value of an enum: its type's name, then its own. */
    public String say(Enum<?> value) {
        return words.say(key(value));
    }

    static String key(Enum<?> value) {
        return (value.getDeclaringClass().getSimpleName() + "." + value.name()).toLowerCase(Locale.ROOT);
    }

    /**
     * Several words as people list them.
     *
     * @param joint the bundle key of what stands before the last one
     */
    String listed(String joint, List<String> words) {
        var last = words.size() - 1;
        return last <= 0
                ? String.join("", words)
                : say(joint, String.join(", ", words.subList(0, last)), words.get(last));
    }

    public TimeStyle time() {
        var rooms = floor.salon().rooms();
        return new TimeStyle(rooms.zone(), !rooms.twentyFourHours());
    }

    public String clock(Instant instant) {
        return time().clock(instant);
    }

    /** The salon's name; the product's own while it has none. */
    public String salon() {
        return Optional.ofNullable(floor.salon().name()).map(texts).orElse(say("salon.unnamed"));
    }

    public String label(Visit visit) {
        var label = texts.apply(visit.label());
        return label.isEmpty() ? say("visit.unnamed") : label;
    }

    /**
     * The same instant on another floor, such as that of an earlier day.
     *
     * @param texts of that floor
     */
    public Moment on(Floor other, Map<TextId, String> texts) {
        return new Moment(other, id -> texts.getOrDefault(id, ""), bells, now, words);
    }

    public String name(@Nullable StaffId staff) {
        return Optional.ofNullable(staff)
                .flatMap(floor.salon()::staffMember)
                .map(member -> texts.apply(member.name()))
                .orElse("");
    }

    public boolean isOnBreak(@Nullable StaffId staff) {
        return staff != null && floor.day().onBreak().contains(staff);
    }

    public String place(Place place) {
        if (place instanceof Place.Chair chair) {
            return say("chair.named", String.valueOf(chair.number()));
        }
        return place instanceof Place.Basin basin ? say("basin.named", basin.letter()) : say("bench");
    }

    /** Where a client is; several wait on the bench, so whoever is there goes by their own label. */
    String whereabouts(Visit visit) {
        return visit.place() instanceof Place.Bench ? label(visit) : place(visit.place());
    }

    /** The few letters that stand for a place on a card. */
    public String placeSign(Place place) {
        if (place instanceof Place.Chair chair) {
            return String.valueOf(chair.number());
        }
        return place instanceof Place.Basin basin ? basin.letter() : say("bench.sign");
    }

    /** Who looks after somebody, who helps, and where they are when that is not their chair. */
    public String staff(Visit visit) {
        var stylist = name(visit.stay().stylist());
        var away = isOnBreak(visit.stay().stylist()) ? say("staff.break", stylist) : stylist;
        var helper = name(visit.stay().helper());
        var elsewhere = visit.place() instanceof Place.Basin ? say("staff.at", place(visit.place())) : "";
        return joined(" · ", away, helper.isEmpty() ? "" : say("staff.helps", helper), elsewhere);
    }

    /** Those parts that say something, one after the other. */
    static String joined(String joint, String... parts) {
        return Stream.of(parts).filter(part -> !part.isEmpty()).collect(Collectors.joining(joint));
    }

    /** What is in a bowl, by the products that do the work. */
    public String bowl(Optional<Bowl> bowl) {
        return bowl.filter(Bowl::isRecipeKnown)
                .map(known -> names(Terms.of(known, floor.salon())))
                .filter(names -> !names.isEmpty())
                .orElse(say("bowl.unknown"));
    }

    private static String names(Terms terms) {
        return terms.directions().stream()
                .filter(one -> one.kind() != Kind.DEVELOPER && one.kind() != Kind.CLEAR_ADDITIVE)
                .map(Directions::name)
                .collect(Collectors.joining(" + "));
    }

    /** The second zero of every ribbon: the beginning of the salon's day. */
    public Instant epoch() {
        var salon = floor.salon();
        return salon.dayOf(now).atStartOfDay(salon.zone()).toInstant();
    }

    long second(Instant instant) {
        return Duration.between(epoch(), instant).toSeconds();
    }

    /** The bells of one visit that are in a stage now. */
    List<Bell> ringing(Visit visit) {
        return bells.stream()
                .filter(bell -> visit.id().equals(bell.visit()) && bell.at(now).isPresent())
                .toList();
    }
}
