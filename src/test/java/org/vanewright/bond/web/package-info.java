@NullMarked
package org.vanewright.bond.web;

import org.jspecify.annotations.NullMarked;
