package rinsebell.floor.salon;

/** Names a member of staff: the number of the fact that entered them. */
public record StaffId(long value) {}
