/** Classes that break rules on purpose. */
@NullMarked
package planted.engineering.flow;

import org.jspecify.annotations.NullMarked;
