package rinsebell.floor;

/** Something somebody asks of the floor. */
public interface Command {
    /**
     * What the floor answers. Pure: the same floor and the same question give the same answer.
     *
     * @param floor as it stands
     * @param asked when, by whom, and whether it is a plan or a fact
     */
    Decision decide(Floor floor, Asked asked);
}
