/** Revisions as the API shows them, the same for every feature. */
@NullMarked
package org.vanewright.record.web;

import org.jspecify.annotations.NullMarked;
