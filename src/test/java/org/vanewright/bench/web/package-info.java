@NullMarked
package org.vanewright.bench.web;

import org.jspecify.annotations.NullMarked;
