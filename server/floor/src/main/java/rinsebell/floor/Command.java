package rinsebell.floor;

import rinsebell.floor.command.Acknowledge;
import rinsebell.floor.command.Announce;
import rinsebell.floor.command.Arrange;
import rinsebell.floor.command.CatchUp;
import rinsebell.floor.command.DivideBowl;
import rinsebell.floor.command.EndDay;
import rinsebell.floor.command.FillRecipe;
import rinsebell.floor.command.KeepRecipes;
import rinsebell.floor.command.MissTime;
import rinsebell.floor.command.Mix;
import rinsebell.floor.command.OnDay;
import rinsebell.floor.command.PutAlready;
import rinsebell.floor.command.Report;
import rinsebell.floor.command.Rinse;
import rinsebell.floor.command.SetFactBack;
import rinsebell.floor.command.Shelve;
import rinsebell.floor.command.Stock;
import rinsebell.floor.command.ThrowAway;
import rinsebell.floor.command.Welcome;
import rinsebell.floor.command.WithdrawFact;

/** Something somebody asks of the floor. */
public sealed interface Command
        permits Arrange,
                Stock,
                KeepRecipes,
                Welcome,
                Report,
                Rinse,
                Mix,
                FillRecipe,
                DivideBowl,
                ThrowAway,
                PutAlready,
                OnDay,
                MissTime,
                CatchUp,
                SetFactBack,
                WithdrawFact,
                Acknowledge,
                Shelve,
                Announce,
                EndDay {
    /**
     * What the floor answers. Pure: the same floor and the same question give the same answer.
     *
     * @param floor as it stands
     * @param asked when, by whom, and whether it is a plan or a fact
     */
    Decision decide(Floor floor, Asked asked);
}
