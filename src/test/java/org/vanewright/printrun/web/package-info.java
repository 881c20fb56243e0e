@NullMarked
package org.vanewright.printrun.web;

import org.jspecify.annotations.NullMarked;
