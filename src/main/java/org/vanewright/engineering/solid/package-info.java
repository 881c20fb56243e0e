/** Device solids: closed meshes from design parameters, STL and 3MF, mass properties, build plates. Millimetres. */
@NullMarked
package org.vanewright.engineering.solid;

import org.jspecify.annotations.NullMarked;
