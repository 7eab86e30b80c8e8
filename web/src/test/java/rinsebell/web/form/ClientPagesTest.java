package rinsebell.web.form;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.web.form.Fields.NONE;

import java.util.List;
import org.junit.jupiter.api.Test;
import rinsebell.floor.client.ClientNote;
import rinsebell.floor.command.Report;
import rinsebell.floor.command.Welcome;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.visit.StayEvent;

class ClientPagesTest {
    private final PageTable pages = new PageTable();
    private final long visit = pages.table.visit.value();

    @Test
    void aRecordIsFoundByPartOfItsLabelAndLinkedInOnePress() {
        var html = pages.html("visits", "client", visit, Fields.of("letters", "Z"));
        assertThat(html)
                .contains("Q. &lt;i&gt;Z&lt;/i&gt;.")
                .contains("<input type=\"hidden\" name=\"client\" value=\"7\">")
                .contains("action=\"/visits/" + visit + "/client\"");
        assertThat(pages.html("visits", "client", visit, Fields.of("letters", "nobody")))
                .contains("No record found.")
                .doesNotContain("value=\"7\"");
    }

    @Test
    void aVisitCanBeginARecordThatItIsLinkedToAtOnce() {
        assertThat(pages.html("visits", "client", visit, NONE))
                .contains("action=\"/clients\"")
                .contains("<input type=\"hidden\" name=\"visit\" value=\"" + visit + "\">");
    }

    @Test
    void aRecordTellsTestsReactionsAndEarlierBowls() {
        assertThat(pages.html("clients", "card", 7, NONE))
                .contains("skin test: no reaction, 2026-05-12")
                .contains("62.5 g Powder &lt;1&gt;")
                .contains("regrowth, 35 min")
                .contains("Tingling")
                .contains("href=\"/welcome?client=7\"");
    }

    @Test
    void whatARecordKnowsIsNotAskedAgain() {
        var html = pages.html("visits", "", 0, Fields.of("client", "7"));
        assertThat(html)
                .contains("name=\"client\" value=\"7\"")
                .contains("value=\"2026-05-12\"")
                .contains("name=\"skinTest\" value=\"no-reaction\" checked");
        assertThat(pages.html("visits", "", 0, NONE)).doesNotContain("2026-05-12");
    }

    @Test
    void aVisitIsLinkedOnlyToARecordThatIsThere() {
        assertThat(PressTable.command(pages.table.onVisit("client", "client", "7")))
                .isEqualTo(Report.of(pages.table.visit, new StayEvent.ClientLinked(FewClients.KNOWN)));
        assertThat(pages.table.onVisit("client", "client", "8"))
                .isEqualTo(new Reading.Wrong(List.of(new FieldError("client", Fault.NOT_KNOWN, List.of()))));
        var welcome = pages.table.read("visits", "", 0, Fields.of("label", "x", "place", "bench", "client", "7"));
        assertThat(((Welcome) PressTable.command(welcome)).arrival().client()).isEqualTo(FewClients.KNOWN);
    }

    @Test
    void aTestOrReactionIsOfTodayOrEarlier() {
        var today = pages.table.floor().salon().dayOf(Saturday.TEN);
        assertThat(note("kind", "reaction").entry()).isEqualTo(new ClientNote(ClientNote.Kind.REACTION, today));
        assertThat(note("kind", "reaction", "on", today.toString()).errors()).isEmpty();
        assertThat(note("kind", "reaction", "on", today.plusDays(1).toString()).errors())
                .containsExactly(new FieldError("on", Fault.STILL_TO_COME, List.of()));
        assertThat(note("on", "tomorrow").errors())
                .extracting(FieldError::field)
                .containsExactlyInAnyOrder("kind", "on");
    }

    private Checked<ClientNote> note(String... typed) {
        return ClientForms.note(target(), Fields.of(typed));
    }

    @Test
    void aRecordNeedsALabel() {
        assertThat(ClientForms.begun(target(), Fields.of("label", " ", "visit", "999"))
                        .errors())
                .extracting(FieldError::field)
                .containsExactly("label", "visit");
        assertThat(ClientForms.begun(target(), Fields.of("label", " שרה ", "visit", String.valueOf(visit)))
                        .entry())
                .isEqualTo(new ClientForms.Begun("שרה", pages.table.visit));
    }

    private Target target() {
        return new Target(pages.table.floor(), id -> "", Saturday.TEN, 7, pages.table.clients);
    }
}
