package rinsebell.floor.bowl;

import rinsebell.floor.product.ProductId;
import rinsebell.floor.unit.Grams;

/**
 * Grams of one product.
 *
 * @param product which
 * @param edition the edition of its directions that was in force at mixing, from 1
 * @param grams how much
 */
public record Portion(ProductId product, int edition, Grams grams) {}
