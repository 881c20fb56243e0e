@NullMarked
package org.vanewright.airframe.web;

import org.jspecify.annotations.NullMarked;
