/** Tests of the addresses of feeds, maps, pictures and metadata. */
@NullMarked
package org.vanewright.sharing.web;

import org.jspecify.annotations.NullMarked;
