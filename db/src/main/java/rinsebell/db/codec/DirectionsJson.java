package rinsebell.db.codec;

import rinsebell.floor.product.Allowance;
import rinsebell.floor.product.Checks;
import rinsebell.floor.product.Contents;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.Limits;
import rinsebell.floor.product.Zone;
import rinsebell.floor.unit.Percent;

/** What the leaflet of a product allows. */
final class DirectionsJson {

    private DirectionsJson() {}

    static void write(Directions directions, Writing out) {
        out.text("name", directions.name())
                .constant("kind", directions.kind())
                .object("times", directions.times(), TimesJson::write)
                .object("limits", directions.limits(), DirectionsJson::writeLimits)
                .object("mixing", directions.mixing(), MixingJson::write)
                .object("checks", directions.checks(), DirectionsJson::writeChecks)
                .object("contents", directions.contents(), DirectionsJson::writeContents);
    }

    static Directions read(Reading in) {
        return new Directions(
                in.text("name"),
                in.constant("kind", Kind.class),
                in.object("times", TimesJson::read),
                in.object("limits", DirectionsJson::readLimits),
                in.object("mixing", MixingJson::read),
                in.object("checks", DirectionsJson::readChecks),
                in.object("contents", DirectionsJson::readContents));
    }

    private static void writeLimits(Limits limits, Writing out) {
        out.constant("zone", limits.zone())
                .byConstant("covers", limits.covers(), DirectionsJson::writeAllowance)
                .byConstant("heats", limits.heats(), DirectionsJson::writeAllowance);
    }

    private static Limits readLimits(Reading in) {
        return new Limits(
                in.constant("zone", Zone.class),
                in.byConstant("covers", Cover.class, DirectionsJson::readAllowance),
                in.byConstant("heats", Heat.class, DirectionsJson::readAllowance));
    }

    private static void writeAllowance(Allowance allowance, Writing out) {
        out.flag("allowed", allowance.allowed()).duration("up_to", allowance.upTo());
    }

    private static Allowance readAllowance(Reading in) {
        return new Allowance(in.flag("allowed"), in.maybeDuration("up_to").orElse(null));
    }

    private static void writeChecks(Checks checks, Writing out) {
        out.duration("strand_every", checks.strandEvery())
                .duration("strand_every_heated", checks.strandEveryHeated())
                .duration("scalp_every", checks.scalpEvery())
                .duration("scalp_every_heated", checks.scalpEveryHeated());
    }

    private static Checks readChecks(Reading in) {
        return new Checks(
                in.maybeDuration("strand_every").orElse(null),
                in.maybeDuration("strand_every_heated").orElse(null),
                in.maybeDuration("scalp_every").orElse(null),
                in.maybeDuration("scalp_every_heated").orElse(null));
    }

    private static void writeContents(Contents contents, Writing out) {
        out.flag("dye", contents.dye());
        if (contents.peroxide() != null) {
            out.decimal("peroxide_percent", contents.peroxide().value());
        }
        if (contents.ammonia() != null) {
            out.decimal("ammonia_percent", contents.ammonia().value());
        }
    }

    private static Contents readContents(Reading in) {
        return new Contents(
                in.flag("dye"),
                in.maybeDecimal("peroxide_percent").map(Percent::new).orElse(null),
                in.maybeDecimal("ammonia_percent").map(Percent::new).orElse(null));
    }
}
