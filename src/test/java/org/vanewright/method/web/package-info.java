@NullMarked
package org.vanewright.method.web;

import org.jspecify.annotations.NullMarked;
