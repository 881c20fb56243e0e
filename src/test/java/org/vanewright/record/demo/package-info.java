@NullMarked
package org.vanewright.record.demo;

import org.jspecify.annotations.NullMarked;
