@NullMarked
package org.vanewright.device.web;

import org.jspecify.annotations.NullMarked;
