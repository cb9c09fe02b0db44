/** Floor 13: the example app. It is not exported: whoever embeds Bedjoint calls {@code JobCost.of} instead. */
@NullMarked
package io.github.bedjoint.app;

import org.jspecify.annotations.NullMarked;
