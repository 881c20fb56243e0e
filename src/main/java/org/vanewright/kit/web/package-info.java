/** Pages and API of kits. */
@NullMarked
package org.vanewright.kit.web;

import org.jspecify.annotations.NullMarked;
