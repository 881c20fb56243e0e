/** Pages, forms and API of print runs. */
@NullMarked
package org.vanewright.printrun.web;

import org.jspecify.annotations.NullMarked;
