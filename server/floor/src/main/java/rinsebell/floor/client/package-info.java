/** What is remembered of people who come again. Records stand beside the facts, so that they can be erased. */
@NullMarked
package rinsebell.floor.client;

import org.jspecify.annotations.NullMarked;
