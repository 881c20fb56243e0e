/** Classes that break rules on purpose. */
@NullMarked
package planted.string.web;

import org.jspecify.annotations.NullMarked;
