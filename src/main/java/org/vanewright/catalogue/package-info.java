/** What spans the features: the home page, what is new, browsing and search. */
@NullMarked
package org.vanewright.catalogue;

import org.jspecify.annotations.NullMarked;
