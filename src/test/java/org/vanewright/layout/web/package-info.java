@NullMarked
package org.vanewright.layout.web;

import org.jspecify.annotations.NullMarked;
