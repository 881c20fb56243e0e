@NullMarked
package org.vanewright.record.provenance;

import org.jspecify.annotations.NullMarked;
