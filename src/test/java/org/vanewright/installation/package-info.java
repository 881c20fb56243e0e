/** Tests of installations. */
@NullMarked
package org.vanewright.installation;

import org.jspecify.annotations.NullMarked;
