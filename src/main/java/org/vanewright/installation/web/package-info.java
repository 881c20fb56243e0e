/** Pages and API of installations. */
@NullMarked
package org.vanewright.installation.web;

import org.jspecify.annotations.NullMarked;
