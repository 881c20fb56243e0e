/**
 * What others than people at a browser ask for: the feed of what is new, the map of all pages, and what machines read of one
 * record: a picture and metadata.
 */
@NullMarked
package org.vanewright.sharing;

import org.jspecify.annotations.NullMarked;
