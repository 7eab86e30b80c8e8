package rinsebell.floor.testing;

import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.product.Active;
import rinsebell.floor.product.Allowance;
import rinsebell.floor.product.Checks;
import rinsebell.floor.product.Contents;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Develops;
import rinsebell.floor.product.Develops.Counted;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.Limits;
import rinsebell.floor.product.Mixing;
import rinsebell.floor.product.Mixture;
import rinsebell.floor.product.Pairing;
import rinsebell.floor.product.Span;
import rinsebell.floor.product.Times;
import rinsebell.floor.product.Zone;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.unit.Percent;

/**
 * The leaflet of an invented product, read out line by line. What is not read out is absent: no times, on scalp allowed,
 * open, no heat, no developer, nothing in the tub.
 */
public final class Leaflet {
    private final String name;
    private final Kind kind;
    private @Nullable Active active;
    private @Nullable Counted counted;
    private @Nullable Span develops;
    private final Map<Heat, Span> heated = new EnumMap<>(Heat.class);
    private @Nullable Duration longestOn;
    private Zone zone = Zone.ON_SCALP;
    private final Map<Cover, Allowance> covers = new EnumMap<>(Cover.class);
    private final Map<Heat, Allowance> heats = new EnumMap<>(Heat.class);
    private final List<Mixture> mixtures = new ArrayList<>();
    private Set<Percent> strengths = Set.of();
    private Set<Percent> strengthsOnScalp = Set.of();
    private final List<Pairing> pairings = new ArrayList<>();
    private Checks checks = Checks.NONE;
    private boolean dye;
    private @Nullable Percent peroxide = Percent.of("0");
    private @Nullable Percent ammonia = Percent.of("0");

    private Leaflet(String name, Kind kind) {
        this.name = name;
        this.kind = kind;
    }

    public static Leaflet leaflet(String name, Kind kind) {
        return new Leaflet(name, kind);
    }

    /** Its work is over then: what is on is rinsed. */
    public Leaflet usableThenRinse(Duration usableFor) {
        active = new Active(usableFor, Active.AtEnd.RINSE);
        return this;
    }

    /** No more is put on then; what is on goes on developing. */
    public Leaflet usableThenPutNoMoreOn(Duration usableFor) {
        active = new Active(usableFor, Active.AtEnd.PUT_NO_MORE_ON);
        return this;
    }

    public Leaflet develops(Counted from, Duration earliest, Duration latest) {
        counted = from;
        develops = new Span(earliest, latest);
        return this;
    }

    /** Shorter figures of its own under a heat, which is thereby allowed. */
    public Leaflet developsUnder(Heat heat, Duration earliest, Duration latest) {
        heated.put(heat, new Span(earliest, latest));
        return allows(heat);
    }

    /** Shorter figures of its own under a heat, whether or not that is allowed. */
    public Leaflet figuresUnder(Heat heat, Duration earliest, Duration latest) {
        heated.put(heat, new Span(earliest, latest));
        return this;
    }

    public Leaflet longestOn(Duration longest) {
        longestOn = longest;
        return this;
    }

    public Leaflet offScalpOnly() {
        zone = Zone.OFF_SCALP;
        return this;
    }

    public Leaflet allows(Cover... which) {
        for (var cover : which) {
            covers.put(cover, Allowance.YES);
        }
        return this;
    }

    public Leaflet allows(Cover cover, Duration upTo) {
        covers.put(cover, Allowance.upTo(upTo));
        return this;
    }

    public Leaflet allows(Heat... which) {
        for (var heat : which) {
            heats.put(heat, Allowance.YES);
        }
        return this;
    }

    public Leaflet allows(Heat heat, Duration upTo) {
        heats.put(heat, Allowance.upTo(upTo));
        return this;
    }

    /** Whatever it goes with decides: for developers and additives. */
    public Leaflet followsItsPartner() {
        covers.putAll(Limits.FREE.covers());
        heats.putAll(Limits.FREE.heats());
        return this;
    }

    public Leaflet mixture(String called, long developerPer60, long extraPer60) {
        mixtures.add(new Mixture(called, Grams.of(developerPer60), Grams.of(extraPer60)));
        return this;
    }

    public Leaflet developerOfVolumes(int... volumes) {
        strengths = percents(volumes);
        return this;
    }

    public Leaflet onScalpOfVolumes(int... volumes) {
        strengthsOnScalp = percents(volumes);
        return this;
    }

    private static Set<Percent> percents(int... volumes) {
        var found = new HashSet<Percent>();
        for (var volume : volumes) {
            found.add(Percent.ofVolumes(volume));
        }
        return found;
    }

    public Leaflet never(Kind... kinds) {
        for (var other : kinds) {
            pairings.add(new Pairing(other, Pairing.Rule.NEVER, null));
        }
        return this;
    }

    public Leaflet neverOnScalpWith(Kind other) {
        pairings.add(new Pairing(other, Pairing.Rule.NEVER_ON_SCALP, null));
        return this;
    }

    public Leaflet takesAtMost(long gramsPer60, Kind other) {
        pairings.add(new Pairing(other, Pairing.Rule.ALLOWED, Grams.of(gramsPer60)));
        return this;
    }

    public Leaflet strandEvery(Duration plain, @Nullable Duration underHeat) {
        checks = new Checks(plain, underHeat, checks.scalpEvery(), checks.scalpEveryHeated());
        return this;
    }

    public Leaflet scalpEvery(Duration plain, @Nullable Duration underHeat) {
        checks = new Checks(checks.strandEvery(), checks.strandEveryHeated(), plain, underHeat);
        return this;
    }

    public Leaflet dye() {
        dye = true;
        return this;
    }

    /** @param percent w/w in the tub; null for not known */
    public Leaflet peroxide(@Nullable String percent) {
        peroxide = percent == null ? null : Percent.of(percent);
        return this;
    }

    public Leaflet peroxideOfVolumes(int volumes) {
        peroxide = Percent.ofVolumes(volumes);
        return this;
    }

    /** @param percent as NH3, w/w in the tub; null for not known */
    public Leaflet ammonia(@Nullable String percent) {
        ammonia = percent == null ? null : Percent.of(percent);
        return this;
    }

    /** The directions as the salon typed them in. */
    public Directions typedIn() {
        return new Directions(
                name,
                kind,
                new Times(active, development(), longestOn),
                new Limits(zone, covers, heats),
                new Mixing(mixtures, strengths, strengthsOnScalp, pairings),
                checks,
                new Contents(dye, peroxide, ammonia));
    }

    private @Nullable Develops development() {
        return counted == null || develops == null ? null : new Develops(counted, develops, heated);
    }
}
