/** Directions: what a product's leaflet allows, as the salon typed it in. */
@NullMarked
package rinsebell.floor.product;

import org.jspecify.annotations.NullMarked;
