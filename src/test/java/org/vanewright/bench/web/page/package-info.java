@NullMarked
package org.vanewright.bench.web.page;

import org.jspecify.annotations.NullMarked;
