package rinsebell.floor.product;

import rinsebell.floor.unit.Grams;

/**
 * A named mixture that the directions allow, with its ratio to developer. Additions are left out of the ratio.
 *
 * @param name the salon's word for it, such as "equal parts"
 * @param developerPer60 grams of developer for 60 g of the product
 * @param extraPer60 how many grams more than that are still allowed for 60 g of the product
 */
public record Mixture(String name, Grams developerPer60, Grams extraPer60) {}
