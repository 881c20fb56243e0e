/** Files made from revisions, kept in memory and on disk by what they depend on. */
@NullMarked
package org.vanewright.platform.files;

import org.jspecify.annotations.NullMarked;
