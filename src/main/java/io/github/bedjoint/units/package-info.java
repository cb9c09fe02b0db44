/** The inner units, the readers and printers of quantities, and the doors from and to JSR-385. */
@NullMarked
package io.github.bedjoint.units;

import org.jspecify.annotations.NullMarked;
