/** Classes that break rules on purpose. */
@NullMarked
package planted.record;

import org.jspecify.annotations.NullMarked;
