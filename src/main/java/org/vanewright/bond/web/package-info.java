/** Pages, files and API of bonds and tape plans. */
@NullMarked
package org.vanewright.bond.web;

import org.jspecify.annotations.NullMarked;
