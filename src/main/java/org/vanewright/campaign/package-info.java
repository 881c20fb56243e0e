/** Flight campaigns: what is to be found out, which configurations are compared, what was recorded, and what follows. */
@NullMarked
package org.vanewright.campaign;

import org.jspecify.annotations.NullMarked;
