/** Classes that break rules on purpose. */
@NullMarked
package planted.string;

import org.jspecify.annotations.NullMarked;
