package rinsebell.db;

import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.Visit;

/** What was put on, and how it ended. */
final class ApplicationTable {

    private ApplicationTable() {}

    static void write(Handle handle, Visit visit) {
        PreparedBatch batch = handle.prepareBatch("""
                insert into application
                    (id, visit_id, bowl_id, area, zone, cover, first_on_ms, last_on_ms, ended_ms, ending)
                values
                    (:id, :visit_id, :bowl_id, :area, :zone, :cover, :first_on_ms, :last_on_ms, :ended_ms, :ending)
                """);
        visit.applications()
                .forEach(each -> add(batch.bind("visit_id", visit.id().value()), each));
        batch.execute();
    }

    private static void add(PreparedBatch row, Application application) {
        Ending ending = application.ending();
        row.bind("id", application.id().value())
                .bind("bowl_id", application.bowl().value())
                .bind("area", application.area().name())
                .bind("zone", application.zone().name())
                .bind("cover", application.cover().cover().name())
                .bind("first_on_ms", application.firstOn().toEpochMilli())
                .bind("last_on_ms", Columns.ms(application.lastOn()))
                .bind("ended_ms", ending == null ? null : Columns.ms(ending.at()))
                .bind("ending", ending == null ? null : ending.how().name())
                .add();
    }
}
