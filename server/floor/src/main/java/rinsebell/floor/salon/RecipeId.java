package rinsebell.floor.salon;

/** Names a kept recipe: the number of the fact that entered it. */
public record RecipeId(long value) {}
