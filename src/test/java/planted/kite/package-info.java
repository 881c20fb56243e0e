/** Classes that break rules on purpose. */
@NullMarked
package planted.kite;

import org.jspecify.annotations.NullMarked;
