package rinsebell.floor.command;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Floor;
import rinsebell.floor.Stream;
import rinsebell.floor.salon.SalonEvent;

/**
 * Sets up the salon.
 *
 * @param event what changes
 * @param text a name that goes with it; null for none
 */
public record Arrange(SalonEvent event, @Nullable String text) implements Command {
    @Override
    public Decision decide(Floor floor, Asked asked) {
        return new Verdict(asked)
                .objections(event.objections(floor, asked.now()))
                .decide(() -> List.of(new Draft(Stream.SALON, asked.now(), event, text)));
    }
}
