/** Pages and API of adhesives. */
@NullMarked
package org.vanewright.adhesive.web;

import org.jspecify.annotations.NullMarked;
