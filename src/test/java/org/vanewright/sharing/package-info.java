/** Tests of feeds, maps, pictures and metadata. */
@NullMarked
package org.vanewright.sharing;

import org.jspecify.annotations.NullMarked;
