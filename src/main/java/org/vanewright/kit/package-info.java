/**
 * Kits: one archive of everything that a layout is built from, and taking such archives in. Features give the files of
 * their records by {@link org.vanewright.kit.KitFiles}; kits know records only. Owns {@code kit_import},
 * {@code kit_photograph} and {@code kit_provenance}.
 */
@NullMarked
package org.vanewright.kit;

import org.jspecify.annotations.NullMarked;
