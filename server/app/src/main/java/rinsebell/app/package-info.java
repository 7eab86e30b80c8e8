/** The process: it starts, opens what was kept, and puts desk, pages, API and feed together. */
@NullMarked
package rinsebell.app;

import org.jspecify.annotations.NullMarked;
