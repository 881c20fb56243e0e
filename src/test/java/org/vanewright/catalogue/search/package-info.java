@NullMarked
package org.vanewright.catalogue.search;

import org.jspecify.annotations.NullMarked;
