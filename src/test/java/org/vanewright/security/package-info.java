/** Who gets in where, and what becomes of those who try otherwise; on both databases. */
@NullMarked
package org.vanewright.security;

import org.jspecify.annotations.NullMarked;
