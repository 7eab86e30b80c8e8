package rinsebell.app.api;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.app.privacy.Stays;
import rinsebell.db.ClientFile;
import rinsebell.floor.salon.KeptRecipe;
import rinsebell.web.board.Moment;
import rinsebell.web.form.EverythingPage;

/**
 * Everything that is kept about a client.
 *
 * @param madeAt when this was told
 * @param salon who keeps it
 * @param metAt by when the record was there; absent when nobody looked yet
 * @param recipes kept for them
 * @param visits all of them, the open ones too, newest first
 * @param looks who looked at the record, or did something to it, the newest first
 */
record ClientFileJson(
        String madeAt,
        String salon,
        long id,
        String label,
        @Nullable String metAt,
        List<ClientJson.Note> notes,
        List<Recipe> recipes,
        List<Stay> visits,
        List<TrailJson.StepJson> looks) {

    static ClientFileJson of(ClientFile file, Moment moment) {
        return new ClientFileJson(
                Json.instant(moment.now()),
                moment.salon(),
                file.id().value(),
                file.label(),
                Json.instantOrNull(file.met()),
                file.notes().stream().map(ClientJson.Note::of).toList(),
                moment.floor().salon().recipesOf(file.id()).stream()
                        .map(recipe -> Recipe.of(recipe, moment))
                        .toList(),
                Stays.of(file, moment).stream().map(Stay::of).toList(),
                file.looks().stream().map(TrailJson.StepJson::of).toList());
    }

    /** @param versions what it was and is, the newest last */
    record Recipe(long id, boolean dropped, List<Version> versions) {
        static Recipe of(KeptRecipe recipe, Moment moment) {
            return new Recipe(
                    recipe.id().value(),
                    recipe.dropped(),
                    recipe.versions().stream()
                            .map(version -> Version.of(version, moment))
                            .toList());
        }
    }

    record Version(String name, List<BowlJson.PortionJson> portions) {
        static Version of(KeptRecipe.Version version, Moment moment) {
            return new Version(
                    moment.texts().apply(version.name()),
                    version.portions().stream()
                            .map(portion -> BowlJson.PortionJson.of(portion, moment.floor()))
                            .toList());
        }
    }

    /**
     * A visit.
     *
     * @param servedBy names of who worked on it
     * @param log every fact about it and about its bowls, by number
     */
    record Stay(VisitJson visit, List<String> servedBy, List<BowlJson> bowls, List<FactJson> log) {
        static Stay of(EverythingPage.Stay stay) {
            var then = stay.moment();
            return new Stay(
                    VisitJson.of(stay.visit(), then),
                    Stream.of(stay.visit().stay().stylist(), stay.visit().stay().helper())
                            .map(then::name)
                            .filter(name -> !name.isEmpty())
                            .toList(),
                    Stays.bowls(then, stay.visit()).stream()
                            .map(bowl -> BowlJson.of(bowl, then.floor()))
                            .toList(),
                    stay.facts().stream().map(fact -> FactJson.of(fact, then)).toList());
        }
    }
}
