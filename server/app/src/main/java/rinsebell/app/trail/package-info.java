/** Who did what, and who looked at whom: kept as it is answered, shown day by day, and given away as files. */
@org.jspecify.annotations.NullMarked
package rinsebell.app.trail;
