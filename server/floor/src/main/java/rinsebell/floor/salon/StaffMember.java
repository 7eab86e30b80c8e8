package rinsebell.floor.salon;

import rinsebell.floor.TextId;

/**
 * Somebody who works here.
 *
 * @param id their name in facts
 * @param role what they do
 * @param name where their name stands
 * @param working whether they still work here
 */
public record StaffMember(StaffId id, Role role, TextId name, boolean working) {}
