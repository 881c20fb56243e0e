/** Where the figures of a record come from, and its history as W3C PROV-JSON. */
@NullMarked
package org.vanewright.record.provenance;

import org.jspecify.annotations.NullMarked;
