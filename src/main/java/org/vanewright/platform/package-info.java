/** What the whole service shares: settings, errors, limits, headers, files for download. */
@NullMarked
package org.vanewright.platform;

import org.jspecify.annotations.NullMarked;
