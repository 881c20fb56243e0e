/** What every page shares: the reader's units, the address of the page, the state of editing. */
@NullMarked
package org.vanewright.platform.page;

import org.jspecify.annotations.NullMarked;
