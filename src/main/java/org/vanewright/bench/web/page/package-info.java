/** The calculators as pages: forms whose address holds the whole input, so that it can be shared. */
@NullMarked
package org.vanewright.bench.web.page;

import org.jspecify.annotations.NullMarked;
