/** Forms: what a person or a program typed, read into what is asked of the floor, or told back with what is wrong. */
@NullMarked
package rinsebell.web.form;

import org.jspecify.annotations.NullMarked;
