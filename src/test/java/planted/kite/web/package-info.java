/** Classes that break rules on purpose. */
@NullMarked
package planted.kite.web;

import org.jspecify.annotations.NullMarked;
