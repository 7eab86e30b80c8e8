package rinsebell.web;

import static rinsebell.web.Drawing.lane;
import static rinsebell.web.Drawing.whole;
import static rinsebell.web.Samples.at;
import static rinsebell.web.Samples.shell;

import java.util.List;
import rinsebell.web.view.BasinsPage;
import rinsebell.web.view.ChairPage;
import rinsebell.web.view.ChairPanel;
import rinsebell.web.view.Due;
import rinsebell.web.view.FirstAid;
import rinsebell.web.view.HeadCard;
import rinsebell.web.view.HeadList;
import rinsebell.web.view.Line;
import rinsebell.web.view.Look;
import rinsebell.web.view.Nav;
import rinsebell.web.view.PocketPage;
import rinsebell.web.view.Press;
import rinsebell.web.view.Press.Weight;
import rinsebell.web.view.Ribbon.BarKind;
import rinsebell.web.view.Ribbon.MarkKind;
import rinsebell.web.view.Ribbon.NotePlace;
import rinsebell.web.view.Rule;
import rinsebell.web.view.Rule.Kind;
import rinsebell.web.view.Troubles;
import rinsebell.web.view.Urgency;

/** The sample salon's heads, one by one: chair pages, basins, desk and pocket. */
final class HeadSamples {
    private static final List<String> CAUTIONS = List.of(
            "The leaflet in the box comes first.",
            "Gloves on. Keep it out of eyes: rinse them at once with plenty of water.",
            "Burning or severe itching: off at once.",
            "Open a window. Never close leftovers tightly.");

    private HeadSamples() {}

    static ChairPage calm() {
        var ribbon = whole(
                "powder lightener in foils: mixed 13:44, on 13:49, ready from 14:16, next check 14:30, rinse by 14:44",
                "13:41",
                "14:55",
                lane().bar(BarKind.MIXED, "13:44", "13:49")
                        .bar(BarKind.ON, "13:49", "14:44")
                        .mark(MarkKind.CHECKED, "13:59", "14:09", "14:19")
                        .mark(MarkKind.READY_FROM, "14:16")
                        .mark(MarkKind.NEXT_CHECK, "14:30")
                        .mark(MarkKind.RINSE_BY, "14:44")
                        .note("13:49", NotePlace.ABOVE, "on 13:49")
                        .note("14:16", NotePlace.BELOW_BEFORE, "ready from 14:16")
                        .note("14:30", NotePlace.ABOVE_MIDDLE, "check 14:30")
                        .note("14:44", NotePlace.BELOW, "rinse by 14:44"));
        return new ChairPage(
                shell("Chair 1", Nav.FLOOR, Look.LIGHT, "chair-1"),
                new ChairPanel(
                        "visit-71",
                        "1",
                        "M. A.",
                        "Odile",
                        "Powder lightener · foils, both sides · mixed 13:44, on 13:49",
                        List.of(),
                        new Due("Strand check in", at("14:30"), Urgency.CALM, ""),
                        ribbon,
                        List.of(
                                new Line("Rinse by", "14:44", at("14:44"), Urgency.CALM),
                                new Line("Ready from", "14:16"),
                                new Line("Basin A kept from", "14:38"),
                                new Line("Last check 14:19", "pale orange, stretches well, look again in 10 min")),
                        new ChairPanel.Rules(
                                List.of(
                                        new Rule(Kind.FORBIDDEN, "Keep it off the scalp", ""),
                                        new Rule(Kind.FORBIDDEN, "No dryer or hot cap", ""),
                                        new Rule(Kind.FORBIDDEN, "No plastic cover", ""),
                                        new Rule(Kind.ALLOWED, "Foil is fine", "")),
                                "From the directions entered for this product on 3 Nov. The leaflet in the box comes first.",
                                CAUTIONS),
                        null,
                        presses(),
                        discomfort()));
    }

    static ChairPage rinseNow() {
        var ribbon = whole(
                "powder lightener in foils, on 13:26, rinse by 14:21, rinse now; cream lightener on the regrowth, on 13:40, rinse by 14:40",
                "13:18",
                "14:51",
                lane().bar(BarKind.MIXED, "13:21", "13:26")
                        .bar(BarKind.ON, "13:26", "14:21:36")
                        .bar(BarKind.OVER, "14:21:36", "20:21")
                        .mark(MarkKind.CHECKED, "13:38", "13:48", "13:58", "14:08", "14:17")
                        .mark(MarkKind.READY_FROM, "14:02")
                        .mark(MarkKind.RINSE_BY, Urgency.HIGH, "14:21:36")
                        .note("13:26", NotePlace.ABOVE, "Powder lightener · foils")
                        .note("14:21:36", NotePlace.BELOW, "rinse by 14:21"),
                lane().bar(BarKind.MIXED, "13:34", "13:40")
                        .bar(BarKind.ON, "13:40", "14:40")
                        .bar(BarKind.HEAT, "14:00", "14:30")
                        .mark(MarkKind.READY_FROM, "14:15")
                        .mark(MarkKind.RINSE_BY, "14:40")
                        .note("13:40", NotePlace.ABOVE, "Cream lightener · regrowth · gentle steam")
                        .note("14:40", NotePlace.BELOW, "rinse by 14:40"));
        return new ChairPage(
                shell("Chair 3", Nav.FLOOR, Look.LIGHT, "chair-3"),
                new ChairPanel(
                        "visit-88",
                        "3",
                        "J. W.",
                        "Pavel",
                        "Powder lightener · foils · 1 more on this head",
                        List.of("No chemical on this scalp again today", "Earlier reaction to hair dye"),
                        new Due(
                                "rinse now",
                                at("14:21:36"),
                                Urgency.HIGH,
                                "basin A · rinse by 14:21 · work at the basin takes about 6 min"),
                        ribbon,
                        List.of(
                                new Line("Foils: rinse by", "14:21", at("14:21:36"), Urgency.HIGH),
                                new Line("Regrowth: rinse by", "14:40", at("14:40"), Urgency.CALM),
                                new Line("Rinse together", "no time left that suits both: rinse the foils first")),
                        new ChairPanel.Rules(
                                List.of(
                                        new Rule(
                                                Kind.BROKEN,
                                                "Steam is on, and the powder allows no heat",
                                                "since 14:00 · directions of 3 Nov"),
                                        new Rule(Kind.FORBIDDEN, "No plastic cover", ""),
                                        new Rule(Kind.ALLOWED, "Foil is fine", "")),
                                "From the directions entered for these products on 3 Nov. The leaflet in the box comes first.",
                                CAUTIONS),
                        new FirstAid(
                                "Burning reported 14:21: off at once",
                                List.of(
                                        "Foils and heat off, and rinse with cool water for a long time.",
                                        "Look at the scalp and record what you see.",
                                        "No chemical on this scalp again today."),
                                "Trouble breathing, swelling of face or throat, or a burn that blisters: call emergency services now."),
                        List.of(
                                Press.sends("Water is on", "basin A · rinsed now", "/visits/88/rinses")
                                                .as(Weight.MAIN),
                                        Press.opens("Strand looks …", "level, tone, stretch", "/visits/88/check"),
                                Press.sends("Steam off", "on since 14:00", "/visits/88/heat/off"),
                                        Press.opens("More", "heat, cover, move, undo", "/visits/88/more")),
                        discomfort()));
    }

    static List<Press> presses() {
        return List.of(
                Press.opens("Strand looks …", "level, tone, stretch", "/visits/71/check")
                        .as(Weight.MAIN),
                Press.opens("Some foils out", "or all: rinse", "/visits/71/foils"),
                Press.sends("Water is on", "rinsed now", "/visits/71/rinses"),
                Press.opens("More", "heat, cover, move, undo", "/visits/71/more"));
    }

    static List<Press> discomfort() {
        return List.of(
                Press.sends(
                                "Tingling",
                                "look at the scalp now",
                                "/visits/71/discomfort",
                                new Press.Hidden("grade", "tingling"))
                        .as(Weight.CARE),
                Press.sends(
                                "Burning, swelling, severe itch",
                                "off at once, tell everyone",
                                "/visits/71/discomfort",
                                new Press.Hidden("grade", "severe"))
                        .as(Weight.DANGER),
                Press.sends(
                                "Hot foil",
                                "off at once, tell everyone",
                                "/visits/71/discomfort",
                                new Press.Hidden("grade", "hot-foil"))
                        .as(Weight.DANGER));
    }

    static BasinsPage basins() {
        var cards = List.of(
                card(
                        "3",
                        "J. W.",
                        "Pavel",
                        new Due("rinse now · basin A", at("14:21:36"), Urgency.HIGH, "rinse by 14:21"),
                        List.of("no hot water", "scalp is pink: tell Pavel", "foils out first"),
                        List.of(Press.sends("Water is on", "basin A", "/visits/88/rinses")
                                .as(Weight.MAIN)),
                        "88"),
                card(
                        "1",
                        "M. A.",
                        "Odile",
                        new Due(
                                "start at 14:38 · basin A",
                                at("14:38"),
                                Urgency.CALM,
                                "rinse by 14:44 · ready from 14:16"),
                        List.of("keep it off the scalp", "foils out at the basin"),
                        List.of(Press.sends("Water is on", "basin A", "/visits/71/rinses")),
                        "71"),
                card(
                        "6",
                        "L. S.",
                        "Amara",
                        new Due(
                                "start at 14:44 · basin B",
                                at("14:44"),
                                Urgency.CALM,
                                "rinse by 14:52 · ready from 14:24"),
                        List.of(),
                        List.of(Press.sends("Water is on", "basin B", "/visits/61/rinses")),
                        "61"));
        return new BasinsPage(
                shell("Basins", Nav.BASINS, Look.LIGHT, "basins"),
                Samples.axis(),
                new Troubles(List.of(
                        "Chairs 3 and 6 must both be rinsed by 14:44 and share basin A: take chair 3 at 14:33, it"
                                + " is ready from 14:30.")),
                new HeadList("basin-next", "Whom to rinse next", cards, "Nobody needs a basin yet."),
                Samples.basins());
    }

    private static HeadCard card(
            String place,
            String who,
            String staff,
            Due due,
            List<String> forbidden,
            List<Press> presses,
            String visit) {
        return new HeadCard(
                "card-" + visit, place, who, staff, due, forbidden, presses, discomfort(), "/chairs/" + place);
    }

    static PocketPage pocket() {
        var cards = List.of(
                card(
                        "6",
                        "L. S.",
                        "at chair 6",
                        new Due("strand check", at("14:18:38"), Urgency.MEDIUM, "14:18 · rinse by 14:52"),
                        List.of(),
                        List.of(Press.opens("Strand looks …", "", "/visits/61/check")
                                .as(Weight.MAIN)),
                        "61"),
                card(
                        "7",
                        "B. N.",
                        "at chair 7",
                        new Due("is it on?", at("14:15:20"), Urgency.ASKED, "toner mixed 14:15"),
                        List.of(),
                        List.of(
                                Press.sends("Put on", "now", "/applications").as(Weight.MAIN),
                                Press.opens("Earlier", "minutes ago", "/visits/64/put-on")),
                        "64"));
        var people = List.of(
                Press.opens("Everybody", "", "/pocket?staff="),
                Press.opens("Amara", "", "/pocket?staff=4").as(Weight.MAIN),
                Press.opens("Odile", "", "/pocket?staff=2"),
                Press.opens("Pavel", "", "/pocket?staff=3"),
                Press.opens("Jo", "", "/pocket?staff=5"));
        return new PocketPage(
                shell("My clients", Nav.POCKET, Look.LIGHT, "pocket-4"),
                people,
                new HeadList("pocket", "Amara’s clients", cards, "Nobody is yours just now."));
    }
}
