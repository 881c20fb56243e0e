/** Classes that break rules on purpose. */
@NullMarked
package planted.engineering.air;

import org.jspecify.annotations.NullMarked;
